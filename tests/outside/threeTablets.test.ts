import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeSurvey } from '../../src/engine/exchange';
import { type Entry, idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { carryIn, fileOf, goTo, openApp } from '../browser/app';
import { findChromium, startTablet, type Tablet } from '../browser/chromium';
import { watch } from '../browser/watch';
import { grainyJpeg, hashOf } from '../files/pictures';
import { type Apache, anna, startApache } from './apache';
import { smallRounds, walkSmallRound } from './smallRounds';

const survey = smallRounds();
const words = w.inStep;
let apache: Apache;
const tablets: Tablet[] = [];
let pages: readonly [Page, Page, Page];
let photo: Buffer;
const faults: string[][] = [];

beforeAll(async () => {
  findChromium();
  apache = await startApache();
}, 300_000);

afterAll(async () => {
  await Promise.all(tablets.map((tablet) => tablet.close()));
  await apache?.close();
}, 300_000);

const newTablet = async (): Promise<Page> => {
  const tablet = await startTablet({ flags: [apache.trust] });
  tablets.push(tablet);
  faults.push(await watch(tablet.context, apache.url));
  return openApp(tablet, apache);
};

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const toInStep = async (page: Page) => {
  await page.goto(`${apache.url}#/carry/in-step`);
  await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
};
const switchOn = async (page: Page, { name, password } = anna) => {
  await page.getByLabel(words.account, { exact: true }).fill(name);
  await page.getByLabel(words.password, { exact: true }).fill(password);
  await button(page, words.switchOn).click();
};
const inStep = async (page: Page) => {
  await button(page, words.stepNow).waitFor();
  await page.getByText(words.nothingWaits).waitFor();
};
/** By the button, and until that step is over: while one is under way, by itself or by a tap, there is no button. */
const stepNow = async (page: Page) => {
  await toInStep(page);
  const before = askedOfFolder().length;
  await button(page, words.stepNow).click();
  await expect.poll(() => askedOfFolder().length, { timeout: 30_000 }).toBeGreaterThan(before);
  await inStep(page);
};
const filesOfFolder = () =>
  (readdirSync(apache.kept, { recursive: true }) as string[]).filter((name) => name.includes('.'));
const askedOfFolder = () => apache.asked().filter((line) => /^[A-Z]+ \/folder(\/| )/.test(line));
/** A table of the collection's database: its keys or its rows. */
const stored = <T>(page: Page, table: string, ask: 'getAllKeys' | 'getAll'): Promise<T[]> =>
  page.evaluate(
    async ({ table, ask }) => {
      const answered = <R>(request: IDBRequest<R>) =>
        new Promise<R>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const { name } = (await indexedDB.databases()).find(({ name }) => name && !name.includes('demo'))!;
      const opened = await answered(indexedDB.open(name!));
      const rows = await answered(opened.transaction(table).objectStore(table)[ask]() as IDBRequest<unknown[]>);
      opened.close();
      return rows as T[];
    },
    { table, ask },
  );
const photosHere = (page: Page) => stored<string>(page, 'photoBytes', 'getAllKeys');
/** The survey as this tablet would carry it out. */
const surveyOf = async (page: Page): Promise<Buffer> => {
  const entries = await stored<Entry>(page, 'entries', 'getAll');
  const [collection] = entries.filter(({ kind }) => kind === 'collection');
  return Buffer.from(writeSurvey(collection!.thing, entries));
};

test('three tablets keep in step through the server, one of them two rounds without a network: all end with the same bytes and the same photo', async () => {
  pages = [await newTablet(), await newTablet(), await newTablet()];
  const [first, second, third] = pages;
  await carryIn(first, fileOf(survey));
  await carryIn(third, fileOf(survey));
  expect(askedOfFolder(), 'nothing is asked of the folder before it is switched on').toEqual([]);

  await toInStep(first);
  await switchOn(first, { ...anna, password: 'wrong' });
  await first.getByText('did not take this name and password').waitFor();
  await switchOn(first);
  await inStep(first);
  // The second tablet has nothing yet: the collection comes to it by the folder.
  await toInStep(second);
  await switchOn(second);
  await inStep(second);
  await toInStep(third);
  await switchOn(third);
  await inStep(third);

  const atSwitch = filesOfFolder();
  await tablets[2]!.context.setOffline(true);
  await goTo(third, 'sculptures');
  await walkSmallRound(third, survey, '2026-07-12', 2, 0.4);
  await walkSmallRound(third, survey, '2026-08-12', 0, 0.15);
  expect(filesOfFolder(), 'without a network nothing is written').toEqual(atSwitch);

  await walkSmallRound(first, survey, '2026-05-12', 0, 0.4);
  await stepNow(first);
  await goTo(second, 'sculptures');
  photo = await grainyJpeg(640, 480);
  await second.goto(`${apache.url}#/sculpture/${idPart(survey.sculpture)}/photos`);
  await second
    .locator('input[type=file][multiple]')
    .setInputFiles({ name: 'pond.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(photo) });
  await expect.poll(() => photosHere(second), { timeout: 30_000 }).toEqual([hashOf(photo)]);
  await goTo(second, 'sculptures');
  await walkSmallRound(second, survey, '2026-06-12', 1, 0.4);
  await stepNow(second);

  await toInStep(third);
  await third.getByText(/^Waiting here: \d\d entries/).waitFor();
  await button(third, words.stepNow).click();
  await third.getByText('There is no network').first().waitFor();
  expect(filesOfFolder().filter((name) => !atSwitch.includes(name)).length, 'two others wrote').toBeGreaterThan(1);
  // The network is back: what waited goes by itself.
  await tablets[2]!.context.setOffline(false);
  await inStep(third);

  // The server goes away under the next step; what waits, waits.
  await apache.end();
  await toInStep(first);
  await button(first, words.stepNow).click();
  await first.getByText('The server did not answer').first().waitFor();
  await apache.start();
  for (const page of [first, second, third]) await stepNow(page);

  const bytes = [await surveyOf(first), await surveyOf(second), await surveyOf(third)];
  expect(Buffer.compare(bytes[0]!, bytes[1]!)).toBe(0);
  expect(Buffer.compare(bytes[0]!, bytes[2]!)).toBe(0);
  const days = (JSON.parse(bytes[0]!.toString()) as { entries: { kind: string; body: { date?: string } }[] }).entries
    .filter(({ kind }) => kind === 'round')
    .map(({ body }) => body.date);
  for (const day of ['2026-05-12', '2026-06-12', '2026-07-12', '2026-08-12']) expect(days).toContain(day);
  for (const page of [first, second, third]) expect(await photosHere(page)).toEqual([hashOf(photo)]);
  expect(readdirSync(join(apache.kept, 'photos'))).toEqual([`${hashOf(photo)}.jpg`]);

  // A step that finds nothing new writes nothing.
  const written = filesOfFolder();
  await stepNow(first);
  expect(filesOfFolder()).toEqual(written);
  expect(askedOfFolder().some((line) => line.startsWith('PUT') && line.endsWith('412'))).toBe(false);
  const real = faults.flat().filter((fault) => !fault.includes('Failed to load resource'));
  expect(real).toEqual([]);
}, 300_000);

test('a photo erased on one of them goes from the folder and from the other two, and no one brings it back', async () => {
  const [first, second, third] = pages;
  const erasing = w.erasing;
  await first.goto(`${apache.url}#/sculpture/${idPart(survey.sculpture)}/photos`);
  await first.locator('button.photo-tile').click();
  await button(first, erasing.photoOpen).click();
  await first.getByLabel(erasing.reason, { exact: true }).fill('a passer-by');
  await button(first, erasing.ask).click();
  await button(first, erasing.yes).click({ delay: 700 });
  await expect.poll(() => photosHere(first)).toEqual([]);
  for (const page of [first, second, third]) await stepNow(page);

  for (const page of pages) expect(await photosHere(page)).toEqual([]);
  expect(readdirSync(join(apache.kept, 'photos'))).toEqual([]);
  for (const page of [third, second, first]) await stepNow(page);
  expect(readdirSync(join(apache.kept, 'photos'))).toEqual([]);
  const [one, two, three] = [await surveyOf(first), await surveyOf(second), await surveyOf(third)];
  expect(Buffer.compare(one, two)).toBe(0);
  expect(Buffer.compare(one, three)).toBe(0);
  expect(one.toString()).toContain('a passer-by');
  expect(one.toString()).not.toContain(`"thing":"photo/${hashOf(photo)}"`);
}, 120_000);
