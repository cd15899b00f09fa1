import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import sharp, { type Sharp } from 'sharp';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import type { MaskTold, PixelsAsked } from '../../src/device/pixels/asked';
import type { Outline, Rgb } from '../../src/engine/photo';
import { idPart } from '../../src/engine/record';
import { kindOf } from '../../src/engine/trade';
import { w } from '../../src/words';
import { type LargePhoto, largePhoto } from '../files/largePhoto';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { longestTask } from './longestTask';
import { type Answered, askWorker, handPhotos, pageOfWorker } from './pixelsAsked';
import { gardenFile } from './screensOfGarden';
import { type Host, startHost } from './server';
import { stillBox } from './still';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let photo: LargePhoto;

beforeAll(async () => {
  photo = await largePhoto();
});

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const green: Rgb = [110, 150, 128];
const sound: Rgb = [92, 70, 50];
const taps = { green: [green, green, green], sound: [sound, sound, sound] };

const told = (answer: Answered | undefined): MaskTold => {
  if (!answer || !('told' in answer.said) || !('share' in answer.said.told))
    throw new Error(`no mask: ${JSON.stringify(answer)}`);
  return answer.said.told;
};

test('a photo is worked as it is seen: all eight ways a camera lays it down give the same mask and the same colour at a tap', async () => {
  // Green in the upper left: 240 by 120 pixels of 640 by 480.
  const upright = await sharp({ create: { width: 640, height: 480, channels: 3, background: `rgb(${sound.join()})` } })
    .composite([
      {
        input: { create: { width: 240, height: 120, channels: 3, background: `rgb(${green.join()})` } },
        left: 0,
        top: 0,
      },
    ])
    .png()
    .toBuffer();
  const laid: readonly ((one: Sharp) => Sharp)[] = [
    (one) => one,
    (one) => one.flop(),
    (one) => one.rotate(180),
    (one) => one.flip(),
    (one) => one.flip().rotate(90),
    (one) => one.rotate(270),
    (one) => one.flop().rotate(90),
    (one) => one.rotate(90),
  ];
  const photos: Record<string, Uint8Array> = {};
  for (const [i, lay] of laid.entries()) {
    const lying = await lay(sharp(upright)).png().toBuffer();
    photos[`${i + 1}`] = await sharp(lying)
      .withMetadata({ orientation: i + 1 })
      .jpeg({ quality: 95 })
      .toBuffer();
  }
  const page = await pageOfWorker(tablet, host);
  await handPhotos(page, photos);
  const part: Outline = [
    [
      [0, 0],
      [0.75, 0],
      [0.75, 0.5],
      [0, 0.5],
    ],
  ];
  const asks = Object.keys(photos).flatMap((sha256): PixelsAsked[] => {
    const photo = { sha256, size: { width: 640, height: 480 } };
    return [
      { do: 'mask', photo, part, taps, seed: 1 },
      { do: 'colour', photo, at: [0.1, 0.1] },
      { do: 'colour', photo, at: [0.9, 0.9] },
    ];
  });
  const answers = await askWorker(page, asks);
  for (let i = 0; i < 8; i++) {
    expect(told(answers[3 * i]).share, `orientation ${i + 1}`).toBeCloseTo(0.25, 2);
    const colours = answers.slice(3 * i + 1, 3 * i + 3).map(({ said }) => 'told' in said && said.told);
    for (const [colour, asked] of [
      [colours[0], green],
      [colours[1], sound],
    ] as const)
      for (const c of [0, 1, 2])
        expect(Math.abs(((colour as { colour: Rgb }).colour[c] as number) - (asked[c] as number))).toBeLessThan(4);
  }
});

/** Memory of the browser and all its processes, megabytes. */
const resident = (group: number): number => {
  let pages = 0;
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      const fields = readFileSync(`/proc/${pid}/stat`, 'utf8')
        .replace(/^.*\) /, '')
        .split(' ');
      if (Number(fields[2]) === group) pages += Number(readFileSync(`/proc/${pid}/statm`, 'utf8').split(' ')[1]);
    } catch {
      // It ended while it was looked at.
    }
  }
  return (pages * 4096) / 1e6;
};

/** As a tablet of some years ago. */
const slowed = async (page: Page): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
};

test('photos of 12 megapixels one after the other: the page is never held up, the memory does not grow, and leaving off is heard', async () => {
  const page = await pageOfWorker(tablet, host);
  const names = Array.from({ length: 6 }, (_, i) => `photo ${i}`);
  await handPhotos(page, Object.fromEntries(names.map((name) => [name, photo.jpeg])));
  await slowed(page);
  const browser = await tablet.browser.newBrowserCDPSession();
  const whole: Outline = [
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
  ];
  const ask = (sha256: string): PixelsAsked => ({
    do: 'mask',
    photo: { sha256, size: photo.size },
    part: whole,
    taps: { green: photo.green, sound: photo.sound },
    seed: 4,
  });
  let most = 0;
  const watching = setInterval(() => {
    most = Math.max(most, resident(tablet.pid));
  }, 50);
  let few: Answered[] = [];
  let many: Answered[] = [];
  let afterTwo = 0;
  const task = await longestTask(browser, async () => {
    few = await askWorker(page, names.slice(0, 2).map(ask));
    afterTwo = most;
    many = await askWorker(page, names.slice(2).map(ask));
  });
  clearInterval(watching);
  expect(many.map((answer) => told(answer).share)).toEqual(Array.from({ length: 4 }, () => told(few[0]).share));
  expect(many[0]?.steps, 'it says how far it is').toBeGreaterThan(8);
  // A photo of this size takes 50 MB unpacked: were each kept, four more would take 200.
  expect(most - afterTwo).toBeLessThan(100);
  expect(task.worked).toBeLessThan(200);

  const [left, again] = await askWorker(
    page,
    [ask('photo 0'), { do: 'colour', photo: { sha256: 'photo 0' }, at: [0.5, 0.5] }],
    3,
  );
  expect(left?.said).toMatchObject({ leftOff: true });
  expect(left?.steps).toBeLessThan(6);
  expect(again?.said, 'and the next question is answered').toMatchObject({ told: { colour: expect.anything() } });
});

test('six spots tapped on a photo of 12 megapixels make a mask over it, under the policy of the page, which is never held up', async () => {
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  page.setDefaultTimeout(60_000);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  const { entries } = gardenFile();
  const found = entries.find((e) => e.kind === 'finding' && kindOf(String(e.body.kind))?.countsAs === 'green')!;
  await page.goto(`${host.url}#/sculpture/${idPart(found.within)}/photos`);
  const file = { name: 'large.jpg', mimeType: 'image/jpeg', buffer: photo.jpeg };
  await page.locator('input[type=file][multiple]').setInputFiles(file);
  await page.getByText(w.photos.keptMany(1), { exact: true }).first().waitFor();
  const name = createHash('sha256').update(photo.jpeg).digest('hex');
  await page.goto(`${host.url}#/measure/${name}/zone/${idPart(String(found.body.zone))}`);
  const button = (called: string) => page.getByRole('button', { name: called, exact: true });
  await button(w.measure.partDraw).click();
  await button(w.measure.partWhole).click();
  await button(w.measure.partDone).click();
  await button(w.measure.open.photo).click();
  const names = w.measure.sorts.green;
  // Opening the screen is not what is timed here.
  await button(w.measure.spotTap(names.green)).waitFor();
  await page.locator('.stage-picture img').evaluate((img: HTMLImageElement) => img.decode());
  await page.waitForTimeout(1000);
  await slowed(page);
  let said: string | null = null;
  const task = await longestTask(await tablet.browser.newBrowserCDPSession(), async () => {
    for (const sort of ['green', 'sound'] as const)
      for (const [i, [x, y]] of photo.at[sort].entries()) {
        const surface = button(w.measure.spotTap(names[sort]));
        await surface.scrollIntoViewIfNeeded();
        const box = await stillBox(surface);
        await page.mouse.click(box.x + x * box.width, box.y + y * box.height);
        await page
          .getByText(w.measure.spots(names[sort], i + 1, 3))
          .first()
          .waitFor();
      }
    said = await page.getByText(/^The mask takes in/).textContent();
  });
  const share = Number(/(\d+) %/.exec(said ?? '')?.[1]) / 100;
  expect(share).toBeGreaterThan(0.05);
  await expect.poll(() => page.locator('.stage-over image').count()).toBe(1);
  expect(task.worked).toBeLessThan(200);
  expect(faults).toEqual([]);
});
