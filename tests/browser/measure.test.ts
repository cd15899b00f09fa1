import type { Locator, Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Entry, idPart } from '../../src/engine/record';
import { kindOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { measure as measured } from './measure';
import { gardenFile } from './screensOfGarden';
import { type Host, startHost } from './server';
import { watch } from './watch';

const words = w.measure;

let host: Host;
let tablet: Tablet;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const openDemo = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
};

/** A zone the map outlines, its photo, and what the eye said there that counts as green. */
const outlinedZone = (entries: readonly Entry[]) => {
  const outlines = entries.filter(({ kind }) => kind === 'outline');
  for (const { body } of outlines) {
    const { source } = body.target as { source: string };
    const found = entries.find(
      (e) => e.kind === 'finding' && e.body.zone === body.zone && kindOf(String(e.body.kind))?.countsAs === 'green',
    );
    if (found) return `#/measure/${idPart(source)}/zone/${idPart(String(body.zone))}`;
  }
  throw new Error('No zone of the garden is outlined and green.');
};

const button = (page: Page | Locator, name: string): Locator => page.getByRole('button', { name, exact: true });

/** On the measuring screen, with a kind chosen that is counted as green. */
const onMeasuring = async (page: Page, at: string): Promise<void> => {
  await page.goto(host.url + at);
  await page.getByRole('heading', { level: 2, name: words.kind }).waitFor();
};

const dot = (page: Page, n: number): Locator => page.getByRole('region', { name: words.dot(n, 49) });

const judge = async (page: Page, hand: Hand, from: number, to: number): Promise<void> => {
  for (let n = from; n <= to; n++) {
    const asked = dot(page, n);
    await asked.waitFor();
    await hand.touch(
      asked
        .locator('.dot-answers')
        .getByRole('button')
        .nth(n % 5 === 0 ? 0 : 1),
    );
  }
};

test('forty-nine dots, one touch each, without a network; killed after twenty, none is lost', async () => {
  const at = outlinedZone(gardenFile().entries);
  const page = await openApp(tablet, host);
  await openDemo(page);
  await onMeasuring(page, at);
  const hand = new Hand();
  await hand.touch(button(page, words.open.dots));
  await hand.touch(button(page, words.dotsLay));
  await judge(page, hand, 1, 20);
  await dot(page, 21).waitFor();
  await tablet.kill();

  tablet = await startTablet({ profile: tablet.profile });
  const faults = await watch(tablet.context, host.url);
  const again = await openApp(tablet, host);
  await openDemo(again);
  await again.goto(host.url + at);
  await dot(again, 21).waitFor();
  await host.stop();
  await judge(again, hand, 21, 49);
  await again.getByText(words.allJudged, { exact: false }).first().waitFor();
  await hand.touch(button(again, words.back));
  process.stdout.write(`  49 dots: ${hand.touches} touches\n`);
  expect(hand.touches).toBeLessThanOrEqual(52);
  const row = again.getByRole('row', { name: /^dots / });
  expect(await row.textContent()).toContain('18 %');
  expect(await again.getByRole('row', { name: /^by eye / }).count()).toBeGreaterThan(0);
  expect(faults).toEqual([]);
});

test('the pad of the dots is hit with a thumb, in three sizes and in the sun', async () => {
  const page = await openApp(tablet, host);
  await openDemo(page);
  await onMeasuring(page, outlinedZone(gardenFile().entries));
  await button(page, words.open.dots).click();
  await button(page, words.dotsLay).click();
  await dot(page, 1).waitFor();
  for (const [width, height] of [
    [820, 1180],
    [1180, 820],
    [390, 844],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const theme of ['light', 'sun']) {
      await page.evaluate((to) => {
        document.documentElement.dataset.theme = to;
      }, theme);
      const answers = await page.locator('.dot-answers').getByRole('button').all();
      const boxes = await Promise.all(answers.map((one) => one.boundingBox()));
      for (const box of boxes) {
        expect(box?.height).toBeGreaterThanOrEqual(80);
        expect((box?.y ?? 0) + (box?.height ?? 0), `${width} ${theme}`).toBeLessThan(height);
      }
      expect(await measured(page, { control: 48, main: 80, apart: 4 }), `${width} ${theme}`).toEqual([]);
    }
  }
});

test('a patch traced by touches on the picture is where it was touched, and its corners outlive a reload', async () => {
  const page = await openApp(tablet, host);
  await openDemo(page);
  const at = outlinedZone(gardenFile().entries);
  await onMeasuring(page, at);
  await button(page, words.partDrawAnew).click();
  await button(page, words.partWhole).click();
  await button(page, words.partDone).click();
  await button(page, words.open.traced).click();
  const surface = button(page, words.corner);
  await surface.scrollIntoViewIfNeeded();
  const box = await surface.boundingBox();
  if (!box) throw new Error('The picture is not shown.');
  // A quarter of the picture: half of it each way.
  for (const [x, y] of [
    [0.25, 0.25],
    [0.75, 0.25],
    [0.75, 0.75],
  ] as const)
    await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
  await page.getByText(words.corners(3)).waitFor();
  await page.goto(host.url);
  await page.reload();
  await openDemo(page);
  await page.goto(host.url + at);
  await page.getByText(words.corners(3)).waitFor();
  const after = await surface.boundingBox();
  if (!after) throw new Error('The picture is not shown.');
  await page.mouse.click(after.x + 0.25 * after.width, after.y + 0.75 * after.height);
  await button(page, words.close).click();
  await button(page, words.traceAll).click();
  const row = page.getByRole('row', { name: /^traced / });
  expect(await row.textContent()).toContain('25 %');
});
