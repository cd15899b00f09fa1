import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { nameOf } from '../../src/engine/record';
import { w } from '../../src/words';
import { grainyJpeg, hashOf } from '../files/pictures';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, carryOut, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

const survey = yearlyRound();
const words = w.inStep;
const folder = 'shared';
let host: Host;
let tablets: readonly [Tablet, Tablet];
let faults: string[][];

beforeEach(async () => {
  host = await startHost();
  tablets = [await startTablet(), await startTablet()];
  faults = await Promise.all(tablets.map(({ context }) => watch(context, host.url)));
  // No machine can answer the window in which a person picks a folder: one of the browser's own stands in.
  for (const { context } of tablets)
    await context.addInitScript((name) => {
      const pick = async () => (await navigator.storage.getDirectory()).getDirectoryHandle(name, { create: true });
      Object.assign(globalThis, { showDirectoryPicker: pick });
    }, folder);
});

afterEach(async () => {
  for (const tablet of tablets) await tablet.close();
  await host?.stop();
});

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const toInStep = async (page: Page) => {
  await goTo(page, 'carry');
  await page.getByRole('link', { name: words.title, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
};
const switchOn = async (page: Page) => {
  await toInStep(page);
  await button(page, words.pick).click();
  await button(page, words.stepNow).waitFor();
  await page.getByText(words.nothingWaits).waitFor();
};
const addWork = async (page: Page, title: string) => {
  await goTo(page, 'sculptures');
  await page.getByRole('link', { name: w.sculptures.add, exact: true }).click();
  await page.getByLabel(w.sculptures.form.title, { exact: true }).fill(title);
  await button(page, w.sculptures.form.add).click();
  await page.getByRole('heading', { level: 1, name: title }).waitFor();
};

type Files = Record<string, string>;
const filesOf = (page: Page): Promise<Files> =>
  page.evaluate(async (name) => {
    const files: Files = {};
    const walk = async (at: FileSystemDirectoryHandle, path: string) => {
      const each = (
        at as unknown as { values(): AsyncIterable<FileSystemDirectoryHandle | FileSystemFileHandle> }
      ).values();
      for await (const one of each)
        if (one.kind === 'directory') await walk(one, `${path}${one.name}/`);
        else {
          const bytes = new Uint8Array(await (await one.getFile()).arrayBuffer());
          files[path + one.name] = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
        }
    };
    await walk(await (await navigator.storage.getDirectory()).getDirectoryHandle(name, { create: true }), '');
    return files;
  }, folder);
const lay = (to: Page, files: Files) =>
  to.evaluate(
    async ({ name, files }) => {
      const root = await (await navigator.storage.getDirectory()).getDirectoryHandle(name, { create: true });
      for (const [path, text] of Object.entries(files)) {
        const [above = '', file = ''] = path.split('/');
        const handle = await (await root.getDirectoryHandle(above, { create: true })).getFileHandle(file, {
          create: true,
        });
        const stream = await handle.createWritable();
        await stream.write(Uint8Array.from(text, (letter) => letter.charCodeAt(0)));
        await stream.close();
      }
    },
    { name: folder, files },
  );
/** What a program does that keeps a folder the same on two devices. */
const sameFolder = async (from: Page, to: Page) => {
  const [files, there] = [await filesOf(from), await filesOf(to)];
  await lay(to, Object.fromEntries(Object.entries(files).filter(([path]) => !(path in there))));
};

/** Rows of a table of the app's own database. */
const count = (page: Page, table: string): Promise<number> =>
  page.evaluate(async (table) => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await done(indexedDB.open('patina-round'));
    const found = await done(database.transaction(table).objectStore(table).count());
    database.close();
    return found;
  }, table);

/** The yearly survey, and a photo of it whose bytes lie in the folder only. */
const withPhoto = async () => {
  const bytes = await grainyJpeg(1200, 900);
  const sha256 = hashOf(bytes);
  const last = survey.entries.at(-1)!;
  const body = { sculpture: survey.sculpture, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' };
  const id = `${last.id.slice(0, -4)}ffff`;
  const photo = {
    ...last,
    id,
    n: last.n + 1,
    thing: nameOf.photo(sha256),
    kind: 'photo',
    within: survey.sculpture,
    body,
  };
  const entries = [...survey.entries, { ...photo, replaces: [] }];
  return { file: fileOf({ ...survey, entries }), files: { [`photos/${sha256}.jpg`]: bytes.toString('latin1') } };
};

test('two tablets and a folder that is the same on both: the second begins with it, both go on by themselves, and end with equal bytes', async () => {
  const [a, b] = await Promise.all(tablets.map((tablet) => openApp(tablet, host)));
  if (!a || !b) throw new Error('no page');
  const { file, files } = await withPhoto();
  await carryIn(a, file);
  await lay(a, files);
  await switchOn(a);
  await sameFolder(a, b);
  await switchOn(b);
  await goTo(b, 'sculptures');
  await b
    .getByRole('link', { name: new RegExp(survey.title) })
    .first()
    .waitFor();

  // Each enters something while the other is away; the network comes back, and nobody taps anything.
  await addWork(a, 'Heron at the Lock');
  await addWork(b, 'Deer by the Wall');
  for (const page of [a, b]) {
    await page.evaluate(() => dispatchEvent(new Event('online')));
    const own = page === a ? 'Heron at the Lock' : 'Deer by the Wall';
    const written = async () => JSON.stringify(await filesOf(page)).includes(own);
    await expect.poll(written, { timeout: 30_000 }).toBe(true);
  }
  await sameFolder(a, b);
  await sameFolder(b, a);

  // Opened anew, the app finds the folder again and steps by itself.
  for (const page of [a, b]) await page.reload();
  await goTo(a, 'sculptures');
  await a.getByRole('link', { name: /Deer by the Wall/ }).waitFor();
  await goTo(b, 'sculptures');
  await b.getByRole('link', { name: /Heron at the Lock/ }).waitFor();
  expect((await carryOut(a)).equals(await carryOut(b))).toBe(true);

  // The photo came out of the folder onto both, each with a small copy of its own making.
  const photosOn = async (page: Page) => [await count(page, 'photoBytes'), await count(page, 'thumbs')];
  for (const page of [a, b]) await expect.poll(() => photosOn(page)).toEqual([1, 1]);

  // What came by the folder is not what Undo offers to take back.
  expect(await b.getByRole('button', { name: /^Undo/ }).textContent()).toContain('Deer by the Wall');

  // A second tab only reads: it says so, and leaves the folder as it is.
  const before = await filesOf(a);
  const second = await openApp(tablets[0], host);
  await toInStep(second);
  await button(second, words.stepNow).click();
  await second.getByRole('alert').filter({ hasText: 'tab' }).waitFor();
  expect(await filesOf(a)).toEqual(before);
  expect(faults).toEqual([[], []]);
}, 300_000);
