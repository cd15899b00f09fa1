import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { shortRound } from '../files/shortRound';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Keys } from './keys';
import { type Host, startHost } from './server';
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

/** Keys that look where they are after each: a frame is drawn round the control, and it is not under a bar. */
class SeenKeys extends Keys {
  readonly unseen: string[] = [];

  override async press(control: Parameters<Keys['press']>[0], key = 'Enter'): Promise<void> {
    await this.reach(control);
    const fault = await control.evaluate((el) => {
      const drawn = el.matches('input') ? (el.closest('label') ?? el) : el;
      const { outlineStyle, outlineWidth } = getComputedStyle(drawn);
      const own = getComputedStyle(el);
      const framed =
        (outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2) ||
        (own.outlineStyle !== 'none' && Number.parseFloat(own.outlineWidth) >= 2);
      const { left, top, width, height } = drawn.getBoundingClientRect();
      const at = document.elementFromPoint(left + width / 2, top + Math.min(height / 2, 20));
      const covered = at !== null && !drawn.contains(at) && !at.contains(drawn);
      return [framed ? '' : 'no frame', covered ? 'covered' : ''].filter(Boolean).join(', ');
    });
    if (fault) this.unseen.push(`${control}: ${fault}`);
    await this.page.keyboard.press(key);
  }
}

test('a whole round is made with keys alone, always with a visible focus, and closed', async () => {
  const keys = new SeenKeys(page);
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
  // Any click that came of a pointer would tell that a hand was needed.
  await page.evaluate(() => {
    const byHand: string[] = [];
    Object.assign(globalThis, { byHand });
    document.addEventListener('pointerdown', (e) => byHand.push(String(e.target)), true);
  });

  await keys.press(page.getByRole('link', { name: new RegExp(survey.title) }));
  await keys.press(page.getByRole('link', { name: w.sculptures.work.startRound, exact: true }));
  await page.getByRole('heading', { level: 1, name: words.start.title }).waitFor();
  await keys.choose(page.getByRole('radio', { name: words.start.wetName.dry, exact: true }));
  await keys.choose(page.getByRole('radio', { name: words.start.washedName['before wash'], exact: true }));
  await keys.press(page.getByRole('button', { name: /^Start the round/ }));

  const lost: string[] = [];
  for (const zone of survey.zones) {
    await zoneHeading(page, zone).waitFor();
    for (const { on, shows } of stepsFor(page, survey, zone, true)) {
      await keys.press(on);
      await shows.first().waitFor();
      // What was touched may go from the page a moment before the focus is set anew.
      const held = page.waitForFunction(() => document.activeElement?.tagName !== 'BODY', undefined, { timeout: 5000 });
      if (!(await held.catch(() => undefined))) lost.push(`${zone.letter}, after ${on}`);
    }
  }
  expect(lost, 'the focus is lost after a touch').toEqual([]);

  await page.getByRole('heading', { level: 2, name: /^Once more/ }).waitFor();
  await untilSummary(page, () => keys.press(button(words.end.againSkip)));
  await keys.press(button(words.end.close));
  await page.getByRole('link', { name: words.end.carry, exact: true }).waitFor();
  await keys.press(button(words.walk.reopen));
  await button(words.end.close).waitFor();
  await keys.press(page.getByRole('link', { name: words.walk.zones, exact: true }));
  await keys.press(page.getByRole('link', { name: new RegExp(`^A ?${survey.zones[0]!.name}`) }));
  await zoneHeading(page, survey.zones[0]!).waitFor();

  expect(keys.unseen).toEqual([]);
  expect(await page.evaluate(() => (globalThis as unknown as { byHand: string[] }).byHand)).toEqual([]);
  expect(faults).toEqual([]);
});

test('arrows, Escape and undo work on the pad as the list of keys says', async () => {
  const keys = new Keys(page);
  await startRound(page, survey, true);

  const notReached = page.getByRole('button', { name: words.zone.notReached, exact: true });
  await keys.reach(page.getByRole('button', { name: words.zone.nothing, exact: true }));
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => notReached.evaluate((el) => el === document.activeElement)).toBe(true);
  await page.keyboard.press('Enter');
  const why = page.getByRole('group', { name: words.ask.why });
  await why.waitFor();
  await page.keyboard.press('Escape');
  await why.waitFor({ state: 'hidden' });
  await page.keyboard.press('Control+z');
  await why.waitFor();
  expect(faults).toEqual([]);
});
