import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Entry, idPart } from '../../src/engine/record';
import { kindOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { measure as measured } from './measure';
import { gardenFile } from './screensOfGarden';
import { built, type Host, startHost } from './server';
import { stillBox } from './still';
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

/** The drawn photo of an address, to be looked at without the app: what is green in it has more green than red. */
const drawnPhoto = async (at: string) => {
  const rows: { sha256: string; file: string }[] = JSON.parse(readFileSync(join(built, 'demo', 'photos.json'), 'utf8'));
  const file = rows.find(({ sha256 }) => at.includes(sha256))?.file ?? '';
  const { data, info } = await sharp(join(built, 'demo', file))
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  const isGreen = (x: number, y: number): boolean => {
    const i = (y * width + x) * 3;
    return (data[i + 1] as number) > (data[i] as number) + 8;
  };
  const all = Array.from({ length: width * height }, (_, i) => [i % width, Math.floor(i / width)] as const);
  /** A place with nothing else for some pixels around it, the first below a height. */
  const inside = (green: boolean, from: number) => {
    const found = all.find(
      ([x, y]) =>
        y > from * height &&
        [-6, 0, 6].every((dx) =>
          [-6, 0, 6].every((dy) => {
            const [nx, ny] = [x + dx, y + dy];
            return nx >= 0 && ny >= 0 && nx < width && ny < height && isGreen(nx, ny) === green;
          }),
        ),
    );
    return found ? ([(found[0] + 0.5) / width, (found[1] + 0.5) / height] as const) : undefined;
  };
  return {
    share: all.filter(([x, y]) => isGreen(x, y)).length / all.length,
    greenAt: (x: number, y: number) => isGreen(Math.floor(x * width), Math.floor(y * height)),
    spots: (green: boolean) => [0.1, 0.3, 0.5].map((from) => inside(green, from)),
    aspect: height / width,
  };
};

/** Judges the dot that is asked by what is drawn there. */
const judgeTruly = async (asked: Locator, photo: Awaited<ReturnType<typeof drawnPhoto>>): Promise<void> => {
  await asked.waitFor();
  const now = asked.locator('.spot-now');
  const [x, y] = await Promise.all(['cx', 'cy'].map(async (name) => Number(await now.getAttribute(name))));
  const green = photo.greenAt((x ?? 0) / 1000, (y ?? 0) / (1000 * photo.aspect));
  await asked.getByRole('button', { name: words.answer.green[green ? 'y' : 'n'], exact: true }).click();
};

/** The share and its range, as the table tells them. */
const told = async (page: Page, way: string): Promise<readonly [number, number, number]> => {
  const text = (await page.getByRole('row', { name: new RegExp(`^${way} `) }).textContent()) ?? '';
  const [share, low, high] = [...text.matchAll(/(\d+) %/g)].map(([, n]) => Number(n) / 100);
  return [share ?? -1, low ?? -1, high ?? -1];
};

const wholePicture = async (page: Page): Promise<void> => {
  await button(page, words.partDrawAnew).click();
  await button(page, words.partWhole).click();
  await button(page, words.partDone).click();
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
  await again
    .getByRole('row', { name: /^dots / })
    .filter({ hasText: '18 %' })
    .waitFor();
  await again
    .getByRole('row', { name: /^by eye / })
    .first()
    .waitFor();
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
  await wholePicture(page);
  await button(page, words.open.traced).click();
  const surface = button(page, words.corner);
  await surface.scrollIntoViewIfNeeded();
  const box = await stillBox(surface);
  // A quarter of the picture: half of it each way.
  for (const [x, y] of [
    [0.25, 0.25],
    [0.75, 0.25],
    [0.75, 0.75],
  ] as const)
    await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
  await page.getByText(words.corners(3)).waitFor();
  await page.goto(host.url);
  // Loaded anew in the demo, the tab stays in it.
  await page.reload();
  await page.getByText(w.shell.inventedWhat).waitFor();
  await page.goto(host.url + at);
  await page.getByText(words.corners(3)).waitFor();
  const after = await stillBox(surface);
  await page.mouse.click(after.x + 0.25 * after.width, after.y + 0.75 * after.height);
  await button(page, words.close).click();
  await button(page, words.traceAll).click();
  await page
    .getByRole('row', { name: /^traced / })
    .filter({ hasText: '25 %' })
    .waitFor();
});

test('dots and pixels of a photo of known coverage come near what is drawn, and the pixels alone make no figure', async () => {
  const at = outlinedZone(gardenFile().entries);
  const photo = await drawnPhoto(at);
  const page = await openApp(tablet, host);
  await openDemo(page);
  const faults = await watch(tablet.context, host.url);
  await onMeasuring(page, at);
  await wholePicture(page);
  await button(page, words.open.dots).click();
  await button(page, words.dotsLay).click();
  for (let n = 1; n <= 49; n++) await judgeTruly(dot(page, n), photo);
  await button(page, words.back).click();

  await button(page, words.open.photo).click();
  for (const green of [true, false]) {
    const name = words.spotTap(words.sorts.green[green ? 'green' : 'sound']);
    for (const [n, spot] of photo.spots(green).entries()) {
      const surface = button(page, name);
      await surface.scrollIntoViewIfNeeded();
      const box = await stillBox(surface);
      if (!spot) throw new Error('There is no such place on the photo.');
      await page.mouse.click(box.x + spot[0] * box.width, box.y + spot[1] * box.height);
      await page
        .getByText(words.spots(words.sorts.green[green ? 'green' : 'sound'], n + 1, 3), { exact: true })
        .waitFor();
    }
  }
  await page.getByText(/^The mask takes in \d+ %/).waitFor();
  expect(await page.getByRole('row', { name: /^pixels/ }).count()).toBe(0);
  await button(page, words.checkLay).click();
  for (let n = 1; n <= 30; n++)
    await judgeTruly(page.getByRole('region', { name: words.checkDot(n, 30), exact: true }), photo);
  await button(page, words.back).click();

  for (const way of ['dots', 'pixels, checked']) {
    await expect.poll(() => told(page, way)).not.toContain(-1);
    const [share, low, high] = await told(page, way);
    process.stdout.write(`  ${way}: ${share} (${low} to ${high}), drawn ${photo.share.toFixed(3)}\n`);
    expect([low, share, high].toSorted((a, b) => a - b)).toEqual([low, share, high]);
    // Four standard deviations of 49 dots: they lie elsewhere each time.
    expect(Math.abs(share - photo.share), way).toBeLessThan(0.12);
  }
  expect(faults).toEqual([]);
});
