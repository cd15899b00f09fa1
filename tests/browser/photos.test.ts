import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { reasonsOfDevice } from '../../src/words/en/reasonsOfDevice';
import { bodies } from '../files/entries';
import { grainyJpeg, hashOf, heic, heldAs, lyingPng, orientations, svg, withComment } from '../files/pictures';
import { smallSurvey } from '../files/smallSurvey';
import { carryIn, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { longestTask } from './longestTask';
import { gardenFile } from './screensOfGarden';
import { type Host, startHost } from './server';
import { settled } from './showScreen';
import { standing } from './still';
import { watch } from './watch';

const words = w.photos;
const folder = join(tmpdir(), `patina-round-photos-${process.pid}`);

let host: Host;
let tablet: Tablet;

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** The invented garden, on the photos of a work that has stations. */
const onPhotos = async (
  flags: readonly string[] = [],
): Promise<{ page: Page; faults: string[]; photographed: Entry }> => {
  host = await startHost();
  tablet = await startTablet({ flags });
  const faults = await watch(tablet.context, host.url);
  const page = await openApp(tablet, host);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.sculptures.title }).waitFor();
  const photographed = gardenFile().entries.find(({ kind }) => kind === 'station')!;
  await page.goto(`${host.url}#/sculpture/${idPart(photographed.within)}/photos`);
  await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
  return { page, faults, photographed };
};

/** Chooses files by their paths, as large as they like. */
const choose = async (page: Page, session: CDPSession, files: readonly string[]): Promise<void> => {
  await page.locator('input[type=file][multiple]').waitFor({ state: 'attached' });
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector: 'input[multiple]' });
  await session.send('DOM.setFileInputFiles', { files: [...files], nodeId });
};

const written = (name: string, bytes: Uint8Array): string => {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
};

const nameOfStation = ({ body }: Entry): string => words.station(String(body.letter), String(body.aim));
const takeOf = (page: Page, what: string) => page.getByRole('button', { name: w.round.photo.takeOf(what) });

/** Hashed anew from what lies in the database: name it is kept under, and the hash of its bytes. */
const keptBytes = (page: Page): Promise<[name: string, hash: string][]> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const found: [string, string][] = [];
    for (const { name } of await indexedDB.databases()) {
      const database = await done(indexedDB.open(name!));
      if (!database.objectStoreNames.contains('photoBytes')) continue;
      const table = () => database.transaction('photoBytes').objectStore('photoBytes');
      for (const key of await done(table().getAllKeys())) {
        const row = await done(table().get(key));
        const digest = await crypto.subtle.digest('SHA-256', row.bytes);
        const hash = Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
        found.push([String(row.sha256), hash]);
      }
      database.close();
    }
    return found;
  });

/** Megabytes of the page's own process that are its alone, once what is not needed any more was thrown away. */
const memoryOf = async (page: Page, session: CDPSession): Promise<number> => {
  for (let round = 0; round < 3; round++) {
    await session.send('HeapProfiler.collectGarbage');
    // Pictures unpacked for the screen are thrown away like this when a tablet runs short.
    await session.send('Memory.simulatePressureNotification', { level: 'critical' });
    await page.waitForTimeout(300);
  }
  const browser = await tablet.browser.newBrowserCDPSession();
  const { processInfo } = await browser.send('SystemInfo.getProcessInfo');
  const own = processInfo.filter(({ type }) => type === 'renderer').map(({ id }) => aloneIn(id));
  return Math.max(...own);
};

/** Without what it shares by way of files: its own pages, and pictures it hands to the screen. */
const aloneIn = (pid: number): number => {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  return (
    [...status.matchAll(/^Rss(?:Anon|Shmem):\s+(\d+) kB/gm)].reduce((sum, found) => sum + Number(found[1]), 0) / 1000
  );
};

test('a hundred photos of 12 megapixels in a row, the page slowed four times: memory stays, no touch waits, every byte is there after a reload', async () => {
  const { page, faults } = await onPhotos();
  const session = await page.context().newCDPSession(page);
  const whole = await grainyJpeg(4000, 3000, 80);
  const files = Array.from({ length: 100 }, (_, i) => withComment(whole, `photo ${i}`));
  const paths = files.map((bytes, i) => written(`photo-${i}.jpg`, bytes));
  // Chromium slows the page's own thread; the worker beside it runs at the machine's speed.
  await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
  const browser = await tablet.browser.newBrowserCDPSession();
  const take = (some: readonly string[]) =>
    longestTask(browser, async () => {
      await choose(page, session, some);
      await page.getByText(words.keptMany(some.length), { exact: true }).first().waitFor({ timeout: 200_000 });
      await page.getByRole('button', { name: words.closeResult }).click();
    });
  const first = await take(paths.slice(0, 10));
  const atTen = await memoryOf(page, session);
  const started = performance.now();
  const rest = await take(paths.slice(10));
  const each = (performance.now() - started) / 90;
  const atHundred = await memoryOf(page, session);
  const worked = Math.max(first.worked, rest.worked);
  process.stdout.write(
    `  ${(whole.length / 1e6).toFixed(1)} MB each, ${each.toFixed(0)} ms a photo; ${atTen.toFixed(0)} MB at photo 10, ${atHundred.toFixed(0)} MB at photo 100; longest task ${worked.toFixed(0)} ms (${Math.max(first.byTheClock, rest.byTheClock).toFixed(0)} by the clock of this machine)\n`,
  );
  expect(atHundred).toBeLessThan(atTen * 1.2);
  expect(worked).toBeLessThanOrEqual(200);

  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  const kept = new Map(await keptBytes(page));
  for (const bytes of files) expect(kept.get(hashOf(bytes))).toBe(hashOf(bytes));
  expect(faults).toEqual([]);
}, 600_000);

test('of five bad files each says in a sentence what is wrong with it; nothing is lost and nothing falls', async () => {
  const { page, faults } = await onPhotos();
  const session = await page.context().newCDPSession(page);
  const before = new Set((await keptBytes(page)).map(([name]) => name));
  const large = await grainyJpeg(8000, 6000, 75);
  const whole = await grainyJpeg(4000, 3000, 80);
  const bad = {
    'heic.jpg': heic(),
    'cut.jpg': whole.subarray(0, Math.floor(whole.length / 2)),
    'large.jpg': large,
    'lying.png': await lyingPng(30_000, 20_000),
    'drawing.svg': svg(),
  };
  await choose(
    page,
    session,
    Object.entries(bad).map(([name, bytes]) => written(name, bytes)),
  );
  await page.getByText(words.keptMany(4), { exact: true }).waitFor({ timeout: 60_000 });
  const said = async (name: string) =>
    (await page.locator('.taken-files li', { hasText: name }).textContent())?.replace(`${name}: `, '');
  const params = { text: () => 'drawing.svg' } as never;
  expect(await said('heic.jpg')).toBe(reasonsOfDevice['HEIC not shown']());
  expect(await said('cut.jpg')).toBe(reasonsOfDevice['picture cut']());
  expect(await said('lying.png')).toBe(reasonsOfDevice['picture size untrue']());
  expect(await said('drawing.svg')).toBe(reasonsOfDevice['drawing not taken'](params));
  expect(await page.locator('.taken-files li', { hasText: 'large.jpg' }).count()).toBe(0);
  for (const flaw of [words.flaw['cut short'], words.flaw['size untrue'], words.flaw['not shown']])
    await expect.poll(() => page.locator('.photo-flaw', { hasText: flaw }).count()).toBe(1);
  const kept = (await keptBytes(page)).filter(([name]) => !before.has(name));
  const { 'drawing.svg': _, ...four } = bad;
  expect(kept.map(([name]) => name).sort()).toEqual(Object.values(four).map(hashOf).sort());
  expect(kept.every(([name, hash]) => name === hash)).toBe(true);
  // The two that can be shown are: 48 megapixels small, and the cut one as far as it goes.
  const shown = () =>
    page
      .locator('.photo-tile img')
      .evaluateAll((pictures) => pictures.slice(0, 2).map((p) => (p as HTMLImageElement).naturalWidth));
  await expect.poll(shown).toEqual([480, 480]);
  expect(faults).toEqual([]);
});

test('in whatever of the eight ways the camera was held, the small copy and the whole one stand upright', async () => {
  const { page, faults } = await onPhotos();
  const before = new Set((await keptBytes(page)).map(([name]) => name));
  const files = await Promise.all(
    orientations.map(async (o) => ({ name: `${o}.jpg`, mimeType: 'image/jpeg', buffer: await heldAs(o) })),
  );
  await page.locator('input[multiple]').setInputFiles(files);
  await page.getByText(words.keptMany(8), { exact: true }).waitFor();
  const corners = (known: readonly string[]) =>
    page.evaluate(async (known) => {
      const done = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const found: string[] = [];
      for (const { name } of await indexedDB.databases()) {
        const database = await done(indexedDB.open(name!));
        for (const table of ['thumbs', 'photoBytes'].filter((t) => database.objectStoreNames.contains(t)))
          for (const row of await done(database.transaction(table).objectStore(table).getAll())) {
            if (known.includes(row.sha256)) continue;
            const bitmap = await createImageBitmap(new Blob([row.bytes], { type: row.mime }));
            const { width, height } = bitmap;
            const pen = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })!;
            pen.drawImage(bitmap, 0, 0);
            const at = (x: number, y: number) =>
              [...pen.getImageData(width * x, height * y, 1, 1).data.slice(0, 3)]
                .map((c) => (c > 127 ? 1 : 0))
                .join('');
            found.push(`${width > height} ${at(0.25, 0.25)} ${at(0.75, 0.25)} ${at(0.25, 0.75)} ${at(0.75, 0.75)}`);
          }
        database.close();
      }
      return found;
    }, known);
  // Red, green over blue, white: as it was painted, sixteen times.
  await expect.poll(() => corners([...before])).toEqual(Array.from({ length: 16 }, () => 'true 100 010 001 111'));
  expect(faults).toEqual([]);
});

test('the browser is killed behind the camera: opened again, it asks for that photo and puts it where it belongs', async () => {
  host = await startHost();
  tablet = await startTablet();
  const survey = smallSurvey();
  const station = survey.entries.find(({ kind }) => kind === 'station')!;
  const address = `${host.url}#/sculpture/${idPart(station.within)}`;
  const name = nameOfStation(station);
  const page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  await page.goto(`${address}/viewfinder/${idPart(station.thing)}`);
  await Promise.all([page.waitForEvent('filechooser'), takeOf(page, name).click()]);
  await tablet.kill();
  tablet = await startTablet({ profile: tablet.profile });
  const again = await openApp(tablet, host);
  await again.getByRole('link', { name: words.expectedLink(bodies.sculpture.title) }).click();
  const asks = again.getByText(w.round.photo.expected(name));
  await asks.waitFor();
  const tiles = again.getByRole('button', { name: new RegExp(`${name} `) });
  await settled(again);
  const before = await standing(again, () => tiles.count());
  const [asked] = await Promise.all([again.waitForEvent('filechooser'), takeOf(again, name).click()]);
  await asked.setFiles({ name: 'IMG.jpg', mimeType: 'image/jpeg', buffer: await grainyJpeg(800, 600) });
  await asks.waitFor({ state: 'detached' });
  await expect.poll(() => tiles.count()).toBe(before + 1);
  await again.reload();
  await tiles.first().waitFor();
  expect(await asks.count()).toBe(0);
});

test('the viewfinder shows the camera with the last photo over it and keeps what it takes', async () => {
  const { page, faults, photographed } = await onPhotos([
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
  ]);
  const before = (await keptBytes(page)).length;
  await page.goto(`${host.url}#/sculpture/${idPart(photographed.within)}/viewfinder/${idPart(photographed.thing)}`);
  await page.getByRole('button', { name: words.viewfinder.start }).click();
  const video = page.locator('video');
  await expect.poll(() => video.evaluate((seen) => (seen as HTMLVideoElement).currentTime)).toBeGreaterThan(0);
  await page.locator('img.seen-over.half').waitFor();
  await page.getByRole('radio', { name: words.viewfinder.overs.lines }).click();
  await page.locator('img.seen-over.lines').waitFor();
  await page.getByRole('radio', { name: words.viewfinder.overs.none }).click();
  await page.locator('img.seen-over').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: words.viewfinder.take, exact: true }).click();
  await page.getByText(words.viewfinder.keptWhat(nameOfStation(photographed))).waitFor();
  await expect.poll(async () => (await keptBytes(page)).length).toBe(before + 1);
  const kept = await keptBytes(page);
  expect(kept.every(([name, hash]) => name === hash)).toBe(true);
  // Left, the camera is let go of.
  await page.getByRole('link', { name: words.viewfinder.back }).click();
  await video.waitFor({ state: 'detached' });
  expect(faults).toEqual([]);
});

test('where there is no camera, or none is allowed, the viewfinder says so and offers the tablet’s own', async () => {
  const { page, faults, photographed } = await onPhotos();
  await page.goto(`${host.url}#/sculpture/${idPart(photographed.within)}/viewfinder/${idPart(photographed.thing)}`);
  await page.getByRole('button', { name: words.viewfinder.start }).click();
  await page.getByText(words.viewfinder.noCamera).waitFor();
  const name = nameOfStation(photographed);
  await takeOf(page, name).waitFor();
  expect(faults).toEqual([]);
});
