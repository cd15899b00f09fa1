import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { sidePng } from '../files/drawnSide';
import { type YearlyZone, yearlyRound } from '../files/yearlyRound';
import { carryIn, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Finger } from './finger';
import { type Host, startHost } from './server';
import { watch } from './watch';

const survey = yearlyRound();
const words = w.zoneMap;
const side = 'from the weir';
const columns = 4;
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

/** The zones lie in rows of four over the picture, a little apart. */
const cornersOf = (i: number): readonly (readonly [number, number])[] => {
  const [column, row] = [i % columns, Math.floor(i / columns)];
  const [left, top] = [0.06 + column * 0.23, 0.05 + row * 0.155];
  return [
    [left, top],
    [left + 0.19, top],
    [left + 0.19, top + 0.12],
    [left, top + 0.12],
  ];
};

const corner = (page: Page) => page.getByRole('button', { name: words.outline.touchCorner, exact: true });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const told = (page: Page, text: string) => page.getByRole('status').filter({ hasText: text });
const titled = (zone: YearlyZone) => words.outline.zone(zone.letter, zone.name);

/** One corner after the other, each seen to be kept before the next. */
async function touchCorners(page: Page, finger: Finger, i: number, many: number, from = 0): Promise<void> {
  for (const [n, [x, y]] of cornersOf(i).slice(from, many).entries()) {
    await finger.touchAt(corner(page), x, y);
    await told(page, words.outline.corners(from + n + 1)).waitFor();
  }
}

async function addSide(page: Page, finger: Finger): Promise<void> {
  await page.goto(`${host.url}#/sculpture/${idPart(survey.sculpture)}`);
  await finger.touch(button(page, w.sculptures.work.elevationAdd));
  await page.getByLabel(w.sculptures.work.elevationOwn).fill(side);
  const choose = page.getByRole('button', { name: w.sculptures.work.elevationChoose });
  const [asked] = await Promise.all([page.waitForEvent('filechooser'), finger.touch(choose)]);
  const buffer = sidePng({ width: 600, height: 800 });
  await asked.setFiles({ name: 'side.png', mimeType: 'image/png', buffer });
  await button(page, w.sculptures.work.elevationFull(side)).waitFor();
}

/** The shape of each zone on the map, by its letter. */
const shapes = async (page: Page): Promise<Map<string, string>> => {
  const links = page.locator('a.map-zone');
  await links.nth(survey.zones.length - 1).waitFor();
  return new Map(
    await links.evaluateAll((all) =>
      all.map((link): [string, string] => [
        /^Zone (\S+),/.exec(link.getAttribute('aria-label') ?? '')?.[1] ?? '',
        link.querySelector('path')?.getAttribute('d') ?? '',
      ]),
    ),
  );
};

test('a map of 24 zones is drawn by a finger alone, left in the middle of a zone by a kill, and is there again', async () => {
  const faultsBefore = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  const finger = await Finger.on(page);
  await addSide(page, finger);
  await finger.touch(page.getByRole('link', { name: new RegExp(`^${words.link}`) }).first());
  await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
  await finger.touch(page.getByRole('link', { name: words.draw, exact: true }));

  const last = survey.zones.length - 1;
  const before = finger.touches;
  for (const [i, zone] of survey.zones.entries()) {
    const { begin, next } = words.outline;
    await finger.touch(button(page, (i === 0 ? begin : next)(zone.letter, zone.name)));
    await told(page, titled(zone)).waitFor();
    if (i === last) break;
    await touchCorners(page, finger, i, 4);
    await finger.touch(button(page, words.outline.close));
    await page.getByRole('heading', { level: 2, name: titled(zone) }).waitFor();
  }
  const touches = finger.touches - before;
  process.stdout.write(`  ${last} zones of four corners: ${touches} touches\n`);
  // Begin, four corners, close; and the last one begun.
  expect(touches).toBe(last * 6 + 1);
  await touchCorners(page, finger, last, 2);
  expect(await finger.notTouched()).toEqual([]);
  expect(faultsBefore).toEqual([]);
  const address = page.url();
  await tablet.kill();

  tablet = await startTablet({ profile: tablet.profile });
  const faults = await watch(tablet.context, host.url);
  const again = await openApp(tablet, host);
  const thumb = await Finger.on(again);
  await again.goto(address);
  await told(again, words.outline.corners(2)).waitFor();
  await touchCorners(again, thumb, last, 4, 2);
  // A touch on the first corner closes the outline as well.
  const [x, y] = cornersOf(last)[0]!;
  await thumb.touchAt(corner(again), x, y);
  await again.getByRole('heading', { level: 2, name: titled(survey.zones[last]!) }).waitFor();

  await thumb.touch(button(again, words.outline.waterDraw));
  const zoneHere = again.getByRole('button', { name: words.outline.touchZone, exact: true });
  const middle = (i: number) => [cornersOf(i)[0]![0] + 0.09, cornersOf(i)[0]![1] + 0.06] as const;
  await thumb.touchAt(zoneHere, ...middle(0));
  await told(again, words.outline.waterTo('A')).waitFor();
  await thumb.touchAt(zoneHere, ...middle(8));
  await told(again, words.outline.waterFrom).waitFor();
  await thumb.touch(button(again, words.outline.waterDone));
  await thumb.touch(again.getByRole('link', { name: words.outline.done }));

  await again.getByRole('heading', { level: 1, name: words.title }).waitFor();
  const drawn = await shapes(again);
  expect([...drawn.keys()].sort()).toEqual(survey.zones.map(({ letter }) => letter).sort());
  for (const [i, { letter }] of survey.zones.entries()) {
    const numbers = (drawn.get(letter) ?? '').match(/[\d.]+/g)?.map(Number) ?? [];
    const asked = cornersOf(i).flatMap(([cx, cy]) => [cx * 1000, (cy * 4000) / 3]);
    expect(numbers, letter).toHaveLength(8);
    // Two pixels of the glass, at most.
    for (const [n, value] of numbers.entries()) expect(Math.abs(value - asked[n]!), letter).toBeLessThan(5);
  }
  await again.getByText(words.waterRow(titled(survey.zones[0]!), titled(survey.zones[8]!))).waitFor();

  await again.reload();
  expect(await shapes(again)).toEqual(drawn);
  const second = await Finger.on(again);
  await second.touch(again.locator('a.map-zone').first());
  await again.getByRole('heading', { level: 1, name: new RegExp(survey.zones[0]!.name.slice(0, 4)) }).waitFor();
  expect(again.url()).toContain('/round/');
  expect(await second.notTouched()).toEqual([]);
  expect(faults).toEqual([]);
});
