import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { shortRound } from '../files/shortRound';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { goToHash } from './showScreen';
import { startRound, stepsFor, untilSummary, zoneHeading } from './walkRound';
import { watch } from './watch';

const words = w.round;
const survey = shortRound();
let host: Host;
let tablet: Tablet;
let faults: string[];
let page: Page;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await carryIn(page, fileOf(survey));
  await goTo(page, 'sculptures');
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

/** As a screen reader or a switch presses: by role and name, without a place on the screen, without keys. */
const press = async (control: Locator): Promise<void> => {
  await control.waitFor();
  await control.evaluate((el: HTMLElement) => el.click());
};

/** What is read out of the page, line by line: role and name. */
const heard = async (of: Locator = page.locator('body')): Promise<string[]> =>
  (await of.ariaSnapshot()).split('\n').map((line) => line.trim());

/** Controls and pictures that are read out as nothing but what they are. */
const nameless = (lines: readonly string[]): string[] =>
  lines.filter((line) => /^- (?:button|link|radio|checkbox|textbox|img|group|dialog)(?: \[[^\]]*\])*:?$/.test(line));

test('a whole round is made by roles and names alone, and every step of it is read out', async () => {
  await press(page.getByRole('link', { name: new RegExp(survey.title) }));
  await press(page.getByRole('link', { name: words.start.title, exact: true }));
  await page.getByRole('heading', { level: 1, name: words.start.title }).waitFor();
  await press(page.getByRole('radio', { name: words.start.wetName.dry, exact: true }));
  await press(page.getByRole('radio', { name: words.start.washedName['before wash'], exact: true }));
  await press(page.getByRole('button', { name: /^Start the round/ }));

  const silent: string[] = [];
  const readBack = page.getByRole('main').getByRole('status').first();
  for (const zone of survey.zones) {
    await zoneHeading(page, zone).waitFor();
    // The zone's name is where the reader stands, and what is answered comes before the answers for the whole zone.
    const title = words.zone.title(zone.letter, zone.name);
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(title);
    await expect.poll(() => page.title()).toContain(title);
    await page.getByRole('group', { name: words.zone.answers }).waitFor();
    const lines = await heard(page.getByRole('main'));
    const at = (part: string) => lines.findIndex((line) => line.includes(part));
    expect(at('heading')).toBeLessThan(at('status'));
    expect(at('status')).toBeLessThan(at(words.zone.answers));
    expect(nameless(await heard()), zone.letter).toEqual([]);

    for (const { on, shows } of stepsFor(page, survey, zone, true)) {
      const [before, title] = [await readBack.textContent(), await page.title()];
      await press(on);
      await shows.first().waitFor();
      // What the touch did is read out: as the sentence of the zone, as the question that has the focus, or as the next zone.
      const isSilent = async () => {
        const after = (await readBack.isVisible()) ? await readBack.textContent() : '';
        const focus = await page.evaluate(() => document.activeElement?.tagName ?? 'BODY');
        return before === after && title === (await page.title()) && focus === 'BODY';
      };
      // The question it stood in goes a moment before the next one has the focus.
      let looks = 50;
      while (looks > 0 && (await isSilent())) {
        await page.waitForTimeout(100);
        looks -= 1;
      }
      if (looks === 0) silent.push(`${zone.letter}: ${on}`);
      expect(nameless(await heard()), `${zone.letter}, after ${on}`).toEqual([]);
    }
  }
  expect(silent, 'a touch of which nothing is heard').toEqual([]);

  await untilSummary(page, () => press(page.getByRole('button', { name: words.end.againSkip, exact: true })));
  await page.getByText(words.end.seenShare('100 %'), { exact: true }).waitFor();
  expect(nameless(await heard())).toEqual([]);
  await press(page.getByRole('button', { name: words.end.close, exact: true }));
  await page.getByRole('link', { name: words.end.carry, exact: true }).waitFor();
  expect(faults).toEqual([]);
});

test('one level-one heading, a main part and a banner stand on every screen of the round', async () => {
  await startRound(page, survey, true);
  const zone = await page.evaluate(() => location.hash);
  for (const hash of [
    zone,
    zone.replace(/\/zone\/.*/, '/end'),
    zone.replace(/\/zone\/.*/, ''),
    '#/ready',
    '#/walk',
    '#/',
  ]) {
    await goToHash(page, hash);
    await page.waitForFunction(() => document.querySelector('.reading') === null);
    await expect.poll(() => page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await page.getByRole('main').count(), hash).toBe(1);
    expect(await page.getByRole('banner').count(), hash).toBe(1);
  }
  expect(faults).toEqual([]);
});
