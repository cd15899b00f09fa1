import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { w } from '../../src/words';
import { shortRound } from '../files/shortRound';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { stepsFor, zoneHeading } from './walkRound';
import { watch } from './watch';

const words = w.round;
const survey = shortRound();
let host: Host;
let tablet: Tablet;
let faults: string[];
let page: Page;

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await carryIn(page, fileOf(survey));
  await goTo(page, 'sculptures');
});

afterAll(async () => {
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
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      words.zone.title(zone.letter, zone.name),
    );
    expect(await page.title()).toContain(words.zone.title(zone.letter, zone.name));
    const lines = await heard(page.getByRole('main'));
    const at = (part: string) => lines.findIndex((line) => line.includes(part));
    expect(at('heading')).toBeLessThan(at('status'));
    expect(at('status')).toBeLessThan(at(words.zone.answers));
    expect(nameless(await heard()), zone.letter).toEqual([]);

    for (const { on, shows } of stepsFor(page, survey, zone, true)) {
      const [before, title] = [await readBack.textContent(), await page.title()];
      await press(on);
      await shows.first().waitFor();
      await page.waitForTimeout(60);
      expect(nameless(await heard()), `${zone.letter}, after ${on}`).toEqual([]);
      // What the touch did is read out: as the sentence of the zone, as the question that has the focus, or as the next zone.
      const after = (await readBack.isVisible()) ? await readBack.textContent() : '';
      const focus = await page.evaluate(() => document.activeElement?.tagName ?? 'BODY');
      if (before === after && title === (await page.title()) && focus === 'BODY') silent.push(`${zone.letter}: ${on}`);
    }
  }
  expect(silent, 'a touch of which nothing is heard').toEqual([]);

  const summary = page.getByRole('heading', { name: words.end.missing });
  await summary
    .or(page.getByRole('heading', { level: 2, name: /^Once more/ }))
    .first()
    .waitFor();
  for (let asked = 0; asked < 12 && !(await summary.isVisible()); asked += 1) {
    await press(page.getByRole('button', { name: words.end.againSkip, exact: true }));
    await page.waitForTimeout(100);
  }
  await page.getByText(words.end.seenShare('100 %'), { exact: true }).waitFor();
  expect(nameless(await heard())).toEqual([]);
  await press(page.getByRole('button', { name: words.end.close, exact: true }));
  await page.getByRole('link', { name: words.end.carry, exact: true }).waitFor();
  expect(faults).toEqual([]);
});

test('one level-one heading, a main part and a banner stand on every screen of the round', async () => {
  for (const hash of [await page.evaluate(() => location.hash), '#/ready', '#/walk', '#/']) {
    await page.evaluate((to) => {
      location.hash = to;
    }, hash);
    await page.waitForFunction(() => document.querySelector('.reading') === null);
    await expect.poll(() => page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await page.getByRole('main').count(), hash).toBe(1);
    expect(await page.getByRole('banner').count(), hash).toBe(1);
  }
  expect(faults).toEqual([]);
});
