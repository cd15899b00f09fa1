import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, carryOut, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { Hand } from './hand';
import { type Host, startHost } from './server';
import { answerZone, startRound, stepsFor, zoneHeading } from './walkRound';
import { watch } from './watch';

const survey = yearlyRound();
const lastYear = fileOf(survey);
let host: Host;
let first: Tablet;
let second: Tablet;
let faults: readonly string[][];

beforeEach(async () => {
  host = await startHost();
  first = await startTablet();
  second = await startTablet();
  faults = [await watch(first.context, host.url), await watch(second.context, host.url)];
});

afterEach(async () => {
  await first.close();
  await second.close();
  await host.stop();
  expect(faults).toEqual([[], []]);
});

/** A few zones of this year, one answer taken back and given anew: entries, replacements and an undo of this tablet's own. */
async function walkABit(page: Page): Promise<void> {
  const hand = new Hand();
  await startRound(page, survey, true);
  for (const zone of survey.zones.slice(0, 4)) await answerZone(hand, stepsFor(page, survey, zone, true));
  const [, , , fourth] = survey.zones;
  await hand.touch(page.getByRole('button', { name: /^Undo/ }));
  await zoneHeading(page, fourth!).waitFor();
  await answerZone(hand, stepsFor(page, survey, fourth!, true).slice(-1));
  await page.getByRole('link', { name: w.product }).click();
}

test('what goes from tablet to tablet comes out of the second as the same bytes', async () => {
  const here = await openApp(first, host);
  await carryIn(here, lastYear);
  await walkABit(here);
  const out = await carryOut(here);
  expect(out.length).toBeGreaterThan(lastYear.length);

  const there = await openApp(second, host);
  await carryIn(there, out);
  expect((await carryOut(there)).equals(out)).toBe(true);
});

test('an import taken back leaves the store as it was, to the byte of the next file', async () => {
  const here = await openApp(first, host);
  await carryIn(here, lastYear);
  await walkABit(here);
  const thisYear = await carryOut(here);

  const there = await openApp(second, host);
  await carryIn(there, lastYear);
  const before = await recordIn(there);
  await carryIn(there, thisYear);
  expect(await recordIn(there)).not.toEqual(before);
  await there.getByRole('button', { name: w.carry.undo, exact: true }).click();
  await there.getByText(w.carry.undone).first().waitFor();
  await expect.poll(() => recordIn(there)).toEqual(before);
  await goTo(there, 'sculptures');
  expect((await carryOut(there)).equals(Buffer.from(lastYear))).toBe(true);
});

test('the invented garden comes out of the demo and is not let into a real collection', async () => {
  const here = await openApp(first, host);
  await here.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await here.getByText(w.shell.inventedWhat).waitFor();
  const garden = await carryOut(here);

  const there = await openApp(second, host);
  await goTo(there, 'carry');
  const file = { name: 'garden.survey.json', mimeType: 'application/json', buffer: garden };
  await there.locator('input[type=file]').setInputFiles(file);
  await there.getByText(w.carry.inventedIn).waitFor();
  await expect.poll(() => there.getByRole('button', { name: w.carry.accept, exact: true }).isDisabled()).toBe(true);
  expect(await recordIn(there)).toEqual({ entries: [], current: [] });
});

/** What lies in the store, read past the app. */
const recordIn = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const names = await indexedDB.databases();
    const own = names.find(({ name }) => name?.endsWith('own'))?.name ?? names[0]?.name ?? '';
    const db = await done(indexedDB.open(own));
    const all = db.transaction(['entries', 'current']);
    const [entries, current] = await Promise.all(
      ['entries', 'current'].map((table) => done(all.objectStore(table).getAll())),
    );
    db.close();
    return { entries, current };
  });
