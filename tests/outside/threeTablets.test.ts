import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { idPart } from '../../src/engine/record';
import { w } from '../../src/words';
import { carryIn, carryOut, fileOf, goTo, openApp } from '../browser/app';
import { findChromium, startTablet, type Tablet } from '../browser/chromium';
import { watch } from '../browser/watch';
import { grainyJpeg, hashOf } from '../files/pictures';
import { type Apache, anna, startApache } from './apache';
import { smallRounds, walkSmallRound } from './smallRounds';

const survey = smallRounds();
const words = w.inStep;
let apache: Apache;
const tablets: Tablet[] = [];
const faults: string[][] = [];

beforeAll(async () => {
  findChromium();
  apache = await startApache();
}, 300_000);

afterAll(async () => {
  for (const tablet of tablets) await tablet.close();
  await apache?.close();
});

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
const photosHere = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const { name } = (await indexedDB.databases()).find(({ name }) => name && !name.includes('demo'))!;
    const opened = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open(name!);
      request.onsuccess = () => resolve(request.result);
    });
    const keys = await new Promise<IDBValidKey[]>((resolve) => {
      const request = opened.transaction('photoBytes').objectStore('photoBytes').getAllKeys();
      request.onsuccess = () => resolve(request.result);
    });
    opened.close();
    return keys.map(String);
  });

test('three tablets keep in step through the server, one of them two rounds without a network: all end with the same bytes and the same photo', async () => {
  const [first, second, third] = [await newTablet(), await newTablet(), await newTablet()];
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
  const photo = await grainyJpeg(640, 480);
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

  const bytes = [await carryOut(first), await carryOut(second), await carryOut(third)];
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
