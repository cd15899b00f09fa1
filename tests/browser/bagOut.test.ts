import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, openAsBlob, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkedBag } from '../../src/device/bag/checkedBag';
import { unpackedFile } from '../../src/device/bag/unpackedFile';
import { zipDirectory } from '../../src/device/bag/zipDirectory';
import { bagPaths } from '../../src/engine/bag';
import { nameOf } from '../../src/engine/record';
import { w } from '../../src/words';
import { hashOf, picture } from '../files/bags';
import { first } from '../files/entries';
import { smallSurvey } from '../files/smallSurvey';
import { carriedOut, carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { longestTask } from './longestTask';
import { memoryWatched } from './memoryOf';
import { built, type Host, startHost } from './server';
import { watch } from './watch';

/** By hand 2,000: npx vitest run --project browser tests/browser/bagOut.test.ts with BAG_MEGABYTES=2000. */
const megabytes = Number(process.env.BAG_MEGABYTES ?? 200);
const each = 5;
const photos = Math.round(megabytes / each);
/** What writing and reading back may take beside what the browser holds already, whatever the size of the bag. Bytes. */
const mostMemory = 300e6;

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];
const folder = mkdtempSync(join(tmpdir(), 'patina-round-bag-'));

/** Puts pictures under their hashes into the store, made in the page itself by the rule of tests/files/bags.ts. */
const putPictures = (hashes: readonly string[], length: number): Promise<void> =>
  page.evaluate(
    async ({ hashes, length }) => {
      const db = await new Promise<IDBDatabase>((done) => {
        const asked = indexedDB.open('patina-round');
        asked.onsuccess = () => done(asked.result);
      });
      for (const [n, sha256] of hashes.entries()) {
        // Each of another length: their bytes come round again after 256.
        const bytes = new Uint8Array(length + n);
        for (let i = 0; i < bytes.length; i++) bytes[i] = [0xff, 0xd8, 0xff, 0xe0][i] ?? (i * 7 + n * 31) & 0xff;
        await new Promise<void>((done, fail) => {
          const t = db.transaction('photoBytes', 'readwrite');
          t.objectStore('photoBytes').put({ sha256, mime: 'image/jpeg', bytes: bytes.buffer });
          t.oncomplete = () => done();
          t.onabort = () => fail(t.error);
        });
      }
      db.close();
    },
    { hashes, length },
  );

/** What lies in the app's own files. */
const lying = (): Promise<string[]> =>
  page.evaluate(async () => {
    const found: string[] = [];
    const bags = await (await navigator.storage.getDirectory()).getDirectoryHandle('bags').catch(() => undefined);
    if (bags) for await (const name of (bags as unknown as { keys(): AsyncIterable<string> }).keys()) found.push(name);
    return found;
  });

const wanted = Array.from({ length: photos }, (_, n) => hashOf(picture(n, each * 1e6 + n)));
const gone = hashOf(picture(9999));

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  page.setDefaultTimeout(600_000);
  const { collection, entries } = smallSurvey();
  const work = entries.find(({ kind }) => kind === 'sculpture')?.thing ?? '';
  const said = [...wanted, gone].map((sha256, n) => {
    const body = { sculpture: work, sha256, mime: 'image/jpeg', bytes: each * 1e6, role: 'other' as const };
    return first(900_000 + n, nameOf.photo(sha256), 'photo', body, { within: work });
  });
  await carryIn(page, fileOf({ collection, entries: [...entries, ...said] }));
  await putPictures(wanted, each * 1e6);
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
  rmSync(folder, { recursive: true, force: true });
});

test(`a bag with ${megabytes} MB of photos leaves through the screen, whole, in little memory, and no finger waits`, async () => {
  const browser = await tablet.context.browser()?.newBrowserCDPSession();
  if (!browser) throw new Error('No session of the browser.');
  // A second try begins where the first one did: with nothing prepared.
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
  const memory = memoryWatched(tablet.pid);
  const began = performance.now();
  let path = '';
  const longest = await longestTask(browser, async () => {
    path = await carriedOut(page, 'bag');
  });
  const seconds = (performance.now() - began) / 1000;
  const peak = memory.peak() - memory.before;
  const size = statSync(path).size;
  process.stdout.write(
    `bag of ${(size / 1e6).toFixed(0)} MB: ${seconds.toFixed(1)} s with reading back and download, memory +${(peak / 1e6).toFixed(0)} MB on ${(memory.before / 1e6).toFixed(0)}, longest task ${longest.worked.toFixed(0)} ms\n`,
  );
  const bag = await openAsBlob(path);
  const read = await checkedBag(bag);
  if (!read.ok) throw new Error(JSON.stringify(read.reasons));
  expect(read.photos.map(({ sha256 }) => sha256).sort()).toEqual([...wanted].sort());
  expect(read.info.photos).toBe(photos);
  expect(read.info.missing).toContain(gone);
  expect(peak).toBeLessThan(mostMemory);
  expect(longest.worked).toBeLessThan(50);

  if (megabytes <= 200) {
    const files = await zipDirectory(bag);
    if (!files.ok) throw new Error(files.reason.code);
    for (const file of files.value) {
      mkdirSync(dirname(join(folder, file.name)), { recursive: true });
      writeFileSync(join(folder, file.name), await unpackedFile(bag, file));
    }
    const base = execFileSync('ls', [folder], { encoding: 'utf8' }).trim();
    for (const manifest of ['manifest-sha256.txt', 'tagmanifest-sha256.txt'])
      execFileSync('sha256sum', ['--strict', '--quiet', '-c', manifest], { cwd: join(folder, base) });
    const schema = JSON.parse(readFileSync(join(folder, base, bagPaths.schema), 'utf8'));
    expect(schema).toEqual(JSON.parse(gunzipSync(readFileSync(join(built, 'survey.schema.json.bin'))).toString()));
  }
  expect(faults).toEqual([]);
});

test('left off in the middle nothing of it stays, and one that a killed page left is swept at the next start', async () => {
  const prepare = page.getByRole('button', { name: w.carry.prepares.bag, exact: true });
  await page.reload();
  await goTo(page, 'carry');
  await expect.poll(lying).toEqual([]);
  await prepare.click();
  await page.getByRole('button', { name: w.parts.leaveOff, exact: true }).click();
  await expect.poll(lying).toEqual([]);
  await page.getByRole('heading', { name: w.carry.preparedBag, exact: true }).waitFor({ state: 'detached' });

  await prepare.click();
  await expect.poll(lying).toHaveLength(1);
  await tablet.kill();
  tablet = await startTablet({ profile: tablet.profile });
  page = await openApp(tablet, host);
  await expect.poll(lying, { timeout: 15_000 }).toEqual([]);
});
