import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { w } from '../../src/words';
import { yearlyRound } from '../files/yearlyRound';
import { carryIn, fileOf, goTo, openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

const survey = yearlyRound();
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

const onlyReads = (page: Page) => page.getByText(w.shell.readingOnly).first();
const takeOver = (page: Page) => page.getByRole('button', { name: w.shell.takeOver, exact: true });

test('a second tab only reads and offers to take over; then the first one only reads, and both see what is written', {
  retry: 0,
}, async () => {
  const first = await openApp(tablet, host);
  await carryIn(first, fileOf(survey));
  const second = await openApp(tablet, host);
  await onlyReads(second).waitFor();
  expect(await onlyReads(first).isVisible()).toBe(false);
  expect(await second.getByRole('button', { name: /^Undo/ }).count()).toBe(0);

  await takeOver(second).click();
  await onlyReads(second).waitFor({ state: 'hidden' });
  await onlyReads(first).waitFor();
  await takeOver(first).waitFor();

  await goTo(second, 'sculptures');
  await second.getByRole('link', { name: w.sculptures.add, exact: true }).click();
  await second.getByLabel(w.sculptures.form.title, { exact: true }).fill('Heron at the Lock');
  await second.getByRole('button', { name: w.sculptures.form.add, exact: true }).click();
  await second.getByRole('heading', { level: 1, name: 'Heron at the Lock' }).waitFor();
  await goTo(first, 'sculptures');
  await first.getByRole('link', { name: /Heron at the Lock/ }).waitFor();

  await takeOver(first).click();
  await onlyReads(first).waitFor({ state: 'hidden' });
  await onlyReads(second).waitFor();
  expect(faults).toEqual([]);
});

test('the tab that is left writes again once the other one is closed', { retry: 0 }, async () => {
  const first = await openApp(tablet, host);
  await carryIn(first, fileOf(survey));
  const second = await openApp(tablet, host);
  await onlyReads(second).waitFor();

  await first.close();
  await onlyReads(second).waitFor({ state: 'hidden' });
  expect(faults).toEqual([]);
});
