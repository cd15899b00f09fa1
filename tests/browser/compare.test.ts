import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Camera, sameSpot, shownAt } from '../../src/demo/drawing/camera';
import { photosOfGarden } from '../../src/demo/garden/photos';
import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Finger } from './finger';
import { gardenFile } from './screensOfGarden';
import { built, type Host, startHost } from './server';
import { watch } from './watch';

const words = w.compare;
type Place = readonly [number, number];

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

const garden = gardenFile();
const work = garden.entries.find(({ body }) => body.number === 'SW-02')!.thing;
const photos = garden.entries.filter((e) => e.kind === 'photo' && e.within === work && !e.gone);
const station = garden.entries.find((e) => e.kind === 'station' && e.within === work && e.body.letter === 'A')!.thing;
const roundOf = new Map(garden.entries.filter((e) => e.kind === 'round').map((e) => [e.thing, String(e.body.date)]));

/** The photo of station A of a year, the side's own photo among them. */
const photoOf = (year: number): Entry => {
  const own = new Set(garden.entries.filter((e) => e.kind === 'elevation').map(({ body }) => body.photo));
  const found = photos.find(
    ({ thing, body }) =>
      (body.station === station || own.has(thing)) &&
      `${body.taken ?? roundOf.get(String(body.round)) ?? ''}`.startsWith(String(year)),
  );
  if (!found) throw new Error(`The garden holds no photo of ${year}.`);
  return found;
};
const camera = (year: number): Camera => photosOfGarden['SW-02']?.years[year - 2021] ?? sameSpot;

/** Where a place of the drawing comes to lie on a photo, in fractions of it: the camera's own rule, turned round by steps. */
const onPhoto = (year: number, [x, y]: Place): Place => {
  let [u, v] = [x, y];
  for (let i = 0; i < 60; i++) {
    const [sx, sy] = shownAt(camera(year), [u, v]);
    [u, v] = [u + x - sx, v + y - sy];
  }
  return [u / 100, v / 125];
};

/** In hundredths of the picture's width: far apart, off one line. */
const spots: readonly Place[] = [
  [30, 25],
  [72, 30],
  [22, 100],
  [78, 104],
];

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const radio = (page: Page, name: string) => page.getByRole('radio', { name, exact: true });

async function open(page: Page, one: number, other: number): Promise<void> {
  const address = `#/sculpture/${idPart(work)}/compare/${idPart(photoOf(one).thing)}/${idPart(photoOf(other).thing)}`;
  await page.goto(host.url + address);
  await button(page, words.layAgain).or(button(page, words.lay)).first().waitFor();
}

/** Places of a colour on a drawn photo, each with its like all round it. */
async function placesOf(year: number, is: (r: number, g: number, b: number) => boolean): Promise<Place[]> {
  const list = JSON.parse(readFileSync(join(built, 'demo', 'photos.json'), 'utf8')) as {
    sha256: string;
    file: string;
  }[];
  const file = list.find(({ sha256 }) => sha256 === photoOf(year).body.sha256)!.file;
  const { data, info } = await sharp(join(built, 'demo', file))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => {
    const i = (y * info.width + x) * 3;
    return is(data[i]!, data[i + 1]!, data[i + 2]!);
  };
  const reach = Math.round(info.width / 60);
  const found: Place[] = [];
  for (let y = reach; y < info.height * 0.8; y += reach)
    for (let x = reach; x < info.width - reach; x += reach) {
      const near = [-1, 0, 1].flatMap((i) => [-1, 0, 1].map((j) => at(x + (i * reach) / 2, y + (j * reach) / 2)));
      if (near.every(Boolean)) found.push([(x + 0.5) / info.width, (y + 0.5) / info.height]);
    }
  const third = Math.floor(found.length / 3);
  return [found[0]!, found[third]!, found[2 * third]!];
}
const isGreen = (r: number, g: number) => g > r + 15;
const isSound = (r: number, g: number, b: number) => r > g + 10 && r < 130 && b < 100;

test('two photos are laid on each other by four touches on each, wiped in place, and what turned green is drawn', async () => {
  const page = await openApp(tablet, host, '#/welcome');
  const faults = await watch(tablet.context, host.url);
  await page.getByRole('button', { name: w.sculptures.welcome.demo }).click();
  await page.getByText('Half-Tide Stair').first().waitFor();
  await open(page, 2021, 2026);
  const finger = await Finger.on(page);

  if (await button(page, words.layAgain).isVisible()) {
    await finger.touch(button(page, words.layAgain));
    for (let left = 6; left > 0; left--) {
      await finger.touch(button(page, words.remove(1)));
      await button(page, words.remove(left)).waitFor({ state: 'detached' });
    }
  } else await finger.touch(button(page, words.lay));
  for (const [i, spot] of spots.entries()) {
    await finger.touchAt(button(page, words.place(i + 1, 'earlier')), ...onPhoto(2021, spot));
    await page
      .getByRole('status')
      .filter({ hasText: words.next.later(i + 1) })
      .waitFor();
    await finger.touchAt(button(page, words.place(i + 1, 'later')), ...onPhoto(2026, spot));
    await page
      .getByRole('status')
      .filter({ hasText: words.next.either(i + 2) })
      .waitFor();
  }
  await page.getByText(words.verdicts.same).waitFor();
  await finger.touch(button(page, words.layDone));

  // Wiped: a place of the earlier photo stands on the screen where the same place of the later one does.
  await finger.touch(radio(page, words.ways.wipe));
  await page.locator('.stage-over image').waitFor();
  for (const spot of [...spots, [50, 62] as const]) {
    const off = await page.evaluate(
      ([[x, y], [u, v]]) => {
        const image = document.querySelector('.stage-over image') as SVGImageElement;
        const photo = document.querySelector('.stage-picture img')!.getBoundingClientRect();
        const there = new DOMPoint(x, y).matrixTransform(image.getScreenCTM()!);
        return Math.hypot(
          (there.x - photo.left) / photo.width - u,
          (there.y - photo.top) / photo.width - (v * photo.height) / photo.width,
        );
      },
      [onPhoto(2021, spot), onPhoto(2026, spot)] as const,
    );
    expect(off).toBeLessThan(0.01);
  }

  await finger.touch(radio(page, words.ways.change));
  const again = button(page, words.editSpots);
  await again
    .or(page.locator('figure').filter({ hasText: words.tapOn('earlier') }))
    .first()
    .waitFor();
  if (await again.isVisible()) {
    // While the map is worked out the page still grows.
    await page.getByRole('table', { name: words.map }).waitFor();
    await finger.touch(again);
    const clear = button(page, words.clearSpots).first();
    await clear.waitFor();
    const clears = button(page, words.clearSpots);
    for (let left = await clears.count(); left > 0; left--) {
      await finger.touch(clear);
      await expect.poll(() => clears.count()).toBe(left - 1);
    }
  }
  for (const which of ['earlier', 'later'] as const) {
    const part = page.locator('figure').filter({ hasText: words.tapOn(which) });
    const year = which === 'earlier' ? 2021 : 2026;
    for (const sort of ['green', 'sound'] as const) {
      await finger.touch(part.getByRole('radio', { name: words.sorts[sort], exact: true }));
      const places = await placesOf(year, sort === 'green' ? isGreen : isSound);
      for (const [n, place] of places.entries()) {
        await finger.touchAt(part.getByRole('button', { name: words.tapDoes(sort, which) }), ...place);
        await part.getByText(sort === 'green' ? words.tapped(n + 1, 0) : words.tapped(3, n + 1)).waitFor();
      }
    }
  }
  const table = page.getByRole('table', { name: words.map });
  await table.waitFor();
  const shareOf = async (kind: keyof typeof words.kindsOfChange) => {
    const row = table.getByRole('row').filter({ hasText: words.kindsOfChange[kind] });
    return Number.parseFloat((await row.getByRole('cell').first().textContent()) ?? '');
  };
  const kinds = ['newly', 'noLonger', 'still', 'neither', 'leftOut'] as const;
  const shares = async () => {
    const [newly, noLonger, ...rest] = await Promise.all(kinds.map(shareOf));
    const all = [newly, noLonger, ...rest].reduce<number>((sum, share) => sum + (share ?? Number.NaN), 0);
    // The green of the garden's stair grew every year, on every zone.
    return { whole: Math.abs(all - 100) < 0.5, grown: newly! > 5, gone: noLonger! >= 2 };
  };
  // A map of fewer spots may stand until that of the last one comes.
  await expect.poll(shares).toEqual({ whole: true, grown: true, gone: false });
  const drawn = await page.locator('.change-shown .stage-over image').evaluate(async (image) => {
    const shown = new Image();
    shown.src = image.getAttribute('href') ?? '';
    await shown.decode();
    return shown.naturalWidth;
  });
  expect(drawn).toBeGreaterThan(100);
  expect(await finger.notTouched()).toEqual([]);
  expect(faults).toEqual([]);
});

test('a photo taken from a step aside is said to lie only roughly, and no change map is offered of it', async () => {
  const page = await openApp(tablet, host, '#/welcome');
  await page.getByRole('button', { name: w.sculptures.welcome.demo }).click();
  await page.getByText('Half-Tide Stair').first().waitFor();
  await open(page, 2024, 2026);
  await page.getByText(words.verdicts['blink only']).waitFor();
  await radio(page, words.ways.blink).waitFor();
  expect(await radio(page, words.ways.change).count()).toBe(0);
});
