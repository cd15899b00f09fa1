import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { steps } from '../../src/screens/tour/steps';
import { w } from '../../src/words';
import { openApp } from './app';
import { startTablet, type Tablet } from './chromium';
import { measure } from './measure';
import { type Host, startHost } from './server';
import { goToHash, settled } from './showScreen';
import { standing } from './still';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let faults: string[];
let page: Page;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await openApp(tablet, host);
  await page.setViewportSize({ width: 390, height: 844 });
});
afterEach(async () => {
  await tablet?.close();
  await host?.stop();
});

const strip = () => page.getByRole('region', { name: w.tour.label });

test('the tour leads a visitor through the whole demo on a phone, covers nothing, and is there after a reload', async () => {
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByRole('button', { name: w.shell.tour }).click();
  const wrong: string[] = [];
  for (const [i, { key }] of steps.entries()) {
    await strip().getByText(w.tour.steps[key]).waitFor();
    const title = await settled(page);
    if (title === '' || title === w.shell.lost) wrong.push(`${key}: leads to no screen`);
    const away = strip().getByRole('button', { name: w.tour.goThere });
    await away.waitFor({ state: 'detached' }).catch(() => wrong.push(`${key}: is not where it points to`));
    wrong.push(...(await measure(page, { control: 48, main: 48, apart: 0 })).map((fault) => `${key}: ${fault}`));
    const under = await page.evaluate(() => {
      const head = document.querySelector('.shell-head')!.getBoundingClientRect();
      const title = document.querySelector('h1')!.getBoundingClientRect();
      return { head: head.height / innerHeight, hidden: title.top < head.bottom, top: scrollY };
    });
    if (under.hidden || under.top > 0) wrong.push(`${key}: its title lies under the strip`);
    if (under.head > 0.3) wrong.push(`${key}: the head takes ${Math.round(under.head * 100)} % of the screen`);
    if (i === 5) {
      await page.reload();
      await page.getByText(w.shell.inventedWhat).waitFor();
      await strip().getByText(w.tour.steps[key]).waitFor();
    }
    await strip()
      .getByRole('button', { name: i === steps.length - 1 ? w.tour.end : w.tour.next })
      .click();
  }
  await strip().waitFor({ state: 'hidden' });
  expect(wrong).toEqual([]);
  expect(faults).toEqual([]);
});

test('a screen opens at its top, and the one gone back to where it was left', async () => {
  const at = () => page.evaluate(() => Math.round(scrollY));
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();
  await goToHash(page, '#/plan');
  await settled(page);
  await standing(page, () => page.evaluate(() => document.body.scrollHeight));
  await page.evaluate(() => scrollTo(0, 700));
  const link = page.getByRole('link', { name: new RegExp(w.plan.incidents) }).first();
  await link.scrollIntoViewIfNeeded();
  const left = await at();
  expect(left).toBeGreaterThan(100);
  await link.click();
  await page.getByRole('heading', { level: 1, name: w.incidents.title }).waitFor();
  await expect.poll(at).toBe(0);
  await page.goBack();
  await page.getByRole('heading', { level: 1, name: w.plan.title }).waitFor();
  // What was worked out meanwhile no longer takes room: the page may end a little higher up.
  const lowest = () => page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
  await expect.poll(async () => (await at()) - Math.min(left, await lowest())).toBe(0);
  expect(await at()).toBeGreaterThan(left - 150);
  await expect.poll(() => link.evaluate((one) => one.getBoundingClientRect().top < innerHeight)).toBe(true);
});
