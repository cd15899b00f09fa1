import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { asZipped, bagged, hashOf, payloadOf, picture } from '../files/bags';
import { smallSurvey } from '../files/smallSurvey';
import { zipOf } from '../files/zipped';
import { carryIn, fileOf, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];
const photo = picture(1);
/** The small survey, speaking of this very photo. */
const survey: ReturnType<typeof smallSurvey> = JSON.parse(
  JSON.stringify(smallSurvey()).replaceAll('ab'.repeat(32), hashOf(photo)),
);

beforeAll(async () => {
  host = await startHost();
});
beforeEach(async () => {
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await carryIn(page, fileOf(survey));
  // As after the last bag left, of all but two entries of it.
  await page.evaluate((row) => localStorage.setItem('patina-round.carried', JSON.stringify([row])), {
    what: 'bag',
    name: 'last.survey.zip',
    at: '2026-10-12T17:00:00.000+01:00',
    device: 'd',
    made: 1,
    entries: survey.entries.length - 2,
    photos: 1,
  });
});
afterEach(async () => {
  await tablet?.close();
});
afterAll(async () => {
  await host?.stop();
});

/** As the browser does it when space is short: by itself, without asking the page. */
const clear = async (storageTypes: string): Promise<void> => {
  const session = await tablet.context.newCDPSession(page);
  await session.send('Storage.clearDataForOrigin', { origin: new URL(host.url).origin, storageTypes });
};

const saysRemoved = async (): Promise<void> => {
  await page.getByRole('heading', { level: 1, name: w.shell.removed }).waitFor();
  await page.getByText(`${survey.entries.length} entries were here`).waitFor();
  await page.getByText('last.survey.zip').waitFor();
  await page.getByText(/Up to 2 entries were made after it/).waitFor();
};

test('cleared while the app is closed, it says so in the place of an empty list, and the last bag brings everything back, photo too', {
  retry: 0,
}, async () => {
  await page.goto('about:blank');
  await clear('indexeddb');
  await page.goto(host.url);
  await saysRemoved();
  await page.getByRole('button', { name: w.shell.openLast, exact: true }).click();
  await page.getByRole('heading', { level: 1, name: w.carry.title }).waitFor();
  const zip = zipOf(asZipped(bagged(payloadOf(survey.collection, survey.entries, [photo])), 'bag/'));
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: 'last.survey.zip', mimeType: 'application/zip', buffer: Buffer.from(zip) });
  await page.getByRole('button', { name: w.carry.accept, exact: true }).click();
  await page.getByRole('button', { name: w.carry.undo, exact: true }).waitFor();
  await page.reload();
  await page.evaluate(() => {
    location.hash = '#/keeping';
  });
  await page.getByText(new RegExp(`${survey.entries.length} entries, 1 photo`)).waitFor();
  expect(faults).toEqual([]);
});

test('cleared while the app is open, the next deed is refused and said, and after loading again the last bag is named', {
  retry: 0,
}, async () => {
  await page.evaluate(() => {
    location.hash = '#/settings';
  });
  const name = page.getByRole('textbox', { name: w.settings.collectionName });
  await name.waitFor();
  await clear('indexeddb');
  await name.fill('Written into nothing');
  await page.getByRole('button', { name: w.settings.rename, exact: true }).click();
  await page.getByText(w.shell.removed).first().waitFor();
  // What was typed stands still, and nothing was written into an empty database.
  expect(await name.inputValue()).toBe('Written into nothing');
  await page.getByRole('button', { name: w.shell.loadAgain, exact: true }).click();
  await saysRemoved();
});

test('where everything of the site went, marker too, it begins as new and claims nothing', { retry: 0 }, async () => {
  await page.goto('about:blank');
  await clear('all');
  await page.goto(host.url);
  await page.getByRole('heading', { level: 1, name: w.sculptures.welcome.title }).waitFor();
  expect(await page.getByText(w.sculptures.welcome.hadFiles).count()).toBe(0);
  expect(faults).toEqual([]);
});
