import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { seededSurvey } from '../files/seededSurvey';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

const words = w.nextSteps;
let host: Host;
let tablet: Tablet;
let faults: string[];

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
});

afterEach(async () => {
  await tablet.close();
  await host.stop();
});

/** Workers started by a page from here on. */
const workersOf = (page: Page): string[] => {
  const started: string[] = [];
  page.on('worker', (worker) => started.push(worker.url()));
  return started;
};

const redrawn = (page: Page) => page.getByText(/The order was drawn 1,000 times anew/);

test('figures come from a worker, are kept over a restart, and after a change come again', async () => {
  const page = await openApp(tablet, host);
  const started = workersOf(page);
  await carryIn(page, fileOf(seededSurvey({ works: 4, zonesEach: 8, rounds: 5, photos: 0, seed: 6, care: true })));
  await goTo(page, 'nextSteps');
  await redrawn(page).waitFor();
  expect(await page.getByText(/of 100 redraws\./).count()).toBeGreaterThan(10);
  expect(started.length).toBeGreaterThanOrEqual(2);
  // The file was read in a worker of its own.
  expect(new Set(started)).toEqual(new Set([`${host.url}bag.js`, `${host.url}figures.js`]));
  const shown = await page.locator('.needs').first().textContent();

  started.length = 0;
  await page.reload();
  await redrawn(page).waitFor();
  expect(await page.locator('.needs').first().textContent()).toBe(shown);
  await goTo(page, 'sculptures');
  await page.locator('ol.works a').first().waitFor();
  expect(started, 'nothing is worked out a second time').toEqual([]);

  await goTo(page, 'nextSteps');
  await page
    .getByRole('button', { name: /^Set a class of zone/ })
    .first()
    .click();
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('group', { name: words.className.urgency }).getByRole('radio', { name: /^UC0/ }).check();
  await sheet.getByLabel(words.setName, { exact: true }).fill('E. Marsh');
  await sheet.getByRole('button', { name: words.setDo, exact: true }).click();
  await page
    .getByText(/set by E\. Marsh; the rule proposes/)
    .first()
    .waitFor({ state: 'attached' });
  await redrawn(page).waitFor();
  expect(started.length).toBeGreaterThan(0);
  expect(faults).toEqual([]);
});

test('the work beside the page says how far it is, leaves off at a touch and goes on where it was', async () => {
  const page = await openApp(tablet, host);
  page.setDefaultTimeout(200_000);
  await carryIn(page, fileOf(seededSurvey({ works: 20, zonesEach: 20, rounds: 8, photos: 0, seed: 5, care: true })));
  await goTo(page, 'nextSteps');
  await page.getByRole('progressbar', { name: words.underWay.figures }).waitFor();
  await page.getByText(/ of 20 sculptures/).waitFor();
  await page.getByRole('button', { name: words.leaveOff, exact: true }).click();
  await page.getByText(words.leftOff.figures).waitFor();
  expect(await page.getByRole('progressbar').count()).toBe(0);
  expect(await page.getByRole('article').count(), 'half of an order is none').toBe(0);
  await page.getByRole('button', { name: words.goOn, exact: true }).click();
  await redrawn(page).waitFor();
  expect(await page.getByRole('article').count()).toBeGreaterThan(0);
  expect(faults).toEqual([]);
}, 600_000);
