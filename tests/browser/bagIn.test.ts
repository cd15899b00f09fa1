import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { nameOf } from '../../src/engine/record';
import { w } from '../../src/words';
import { asZipped, bagged, hashOf, payloadOf, picture } from '../files/bags';
import { first } from '../files/entries';
import { seededSurvey } from '../files/seededSurvey';
import { zipOf } from '../files/zipped';
import { goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { longestTask } from './longestTask';
import { type Host, startHost } from './server';
import { watch } from './watch';

/** By hand with more: WORKS=50 ROUNDS=20 (100,000 entries). */
const works = Number(process.env.WORKS ?? 5);
const rounds = Number(process.env.ROUNDS ?? 8);
const photos = 12;
const megabytes = 2;
/** A finger must not wait longer for the page. Milliseconds. */
const longest = 50;

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

/** A survey of some years with large photos, as a bag on the disk; its third photo altered where asked for. */
const bagOn = (path: string, altered = false): readonly string[] => {
  const survey = seededSurvey({ works, zonesEach: 40, rounds, photos: 0, seed: 20261015 });
  const work = survey.entries.find(({ kind }) => kind === 'sculpture')?.thing ?? '';
  const pictures = Array.from({ length: photos }, (_, n) => picture(n, megabytes * 1e6));
  const said = pictures.map((bytes, n) => {
    const sha256 = hashOf(bytes);
    const body = { sculpture: work, sha256, mime: 'image/jpeg', bytes: bytes.length, role: 'other' as const };
    return first(900_000 + n, nameOf.photo(sha256), 'photo', body, { within: work });
  });
  const contents = bagged(payloadOf(survey.collection, [...survey.entries, ...said], pictures));
  if (altered) contents.set(`data/photos/${hashOf(pictures[2] ?? picture(0))}.jpg`, picture(77, megabytes * 1e6));
  writeFileSync(path, zipOf(asZipped(contents, 'bag/')));
  return pictures.map(hashOf).sort();
};

const keptHere = (): Promise<string[]> =>
  page.evaluate(
    () =>
      new Promise<string[]>((done) => {
        const asked = indexedDB.open('patina-round');
        asked.onsuccess = () => {
          const keys = asked.result.transaction('photoBytes').objectStore('photoBytes').getAllKeys();
          keys.onsuccess = () => {
            asked.result.close();
            done((keys.result as string[]).sort());
          };
        };
      }),
  );

const choose = async (path: string): Promise<void> => {
  const session = await page.context().newCDPSession(page);
  const { root } = await session.send('DOM.getDocument');
  const { nodeId } = await session.send('DOM.querySelector', { nodeId: root.nodeId, selector: 'input[type=file]' });
  await session.send('DOM.setFileInputFiles', { files: [path], nodeId });
};

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  page.setDefaultTimeout(300_000);
  await goTo(page, 'carry');
  await page.locator('input[type=file]').waitFor({ state: 'attached' });
});

afterEach(async () => {
  await tablet?.close();
  await host?.stop();
  expect(faults).toEqual([]);
});

test('one altered photo of a bag is found out and named, and nothing of the bag is stored', async () => {
  const path = join(tablet.profile, 'altered.survey.zip');
  bagOn(path, true);
  await choose(path);
  const said = page.getByRole('alert').filter({ hasText: w.carry.cannot });
  await said.waitFor();
  expect(await said.textContent()).toMatch(/data\/photos\/[0-9a-f]{64}\.jpg/);
  expect(await keptHere()).toEqual([]);
});

test('a bag is looked through beside the page, its photos come with it, and all of it goes again', async () => {
  const path = join(tablet.profile, 'whole.survey.zip');
  const hashes = bagOn(path);
  const browser = await tablet.context.browser()?.newBrowserCDPSession();
  if (!browser) throw new Error('No session of the browser.');
  const accept = page.getByRole('button', { name: w.carry.accept, exact: true });
  const reading = await longestTask(browser, async () => {
    await choose(path);
    await accept.waitFor();
  });
  if (process.env.TOLD) writeFileSync(process.env.TOLD, JSON.stringify({ reading }));
  const taking = await longestTask(browser, async () => {
    await accept.click();
    await page.getByRole('button', { name: w.carry.undo, exact: true }).waitFor();
  });
  if (process.env.TOLD) writeFileSync(process.env.TOLD, JSON.stringify({ reading, taking }));
  expect(reading.worked).toBeLessThan(longest);
  await expect.poll(keptHere).toEqual(hashes);
  await page.getByRole('button', { name: w.carry.undo, exact: true }).click();
  await page.getByRole('note').filter({ hasText: w.carry.undone }).waitFor();
  await expect.poll(keptHere).toEqual([]);
});
