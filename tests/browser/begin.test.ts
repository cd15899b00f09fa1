import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { w } from '../../src/words';
import { notLoaded } from '../../src/words/notLoaded';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';

let host: Host;
let tablet: Tablet;

beforeAll(async () => {
  host = await startHost();
});

afterEach(() => tablet?.close());
afterAll(() => host?.stop());

test('a piece of the app that does not come is asked for once more; where it stays away, that is said and nothing goes round in circles', async () => {
  tablet = await startTablet();
  const page = tablet.context.pages()[0] ?? (await tablet.context.newPage());
  let asked = 0;
  let lost = 1;
  await page.route(/\/assets\/start-[^/]+\.js$/, (route) => {
    asked++;
    return asked <= lost ? route.abort() : route.continue();
  });
  await page.goto(host.url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  expect(asked).toBeGreaterThan(1);

  asked = 0;
  lost = 1000;
  await tablet.context.setOffline(false);
  await page.evaluate(async () => {
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
  });
  await page.reload();
  await page.getByText(notLoaded.en).waitFor();
  const then = asked;
  await page.waitForTimeout(2500);
  expect(asked).toBe(then);
});

/** From here on no file of the app comes, for so many ms after the first was asked for. Gives how often each was asked for. */
async function nothingComes(page: Page, ms: number): Promise<Map<string, number>> {
  const asked = new Map<string, number>();
  let until: number | undefined;
  await page.unroute(assets);
  await page.route(assets, (route) => {
    const url = route.request().url();
    asked.set(url, (asked.get(url) ?? 0) + 1);
    until ??= Date.now() + ms;
    return Date.now() < until ? route.abort() : route.continue();
  });
  return asked;
}

const assets = /\/assets\//;

test('a screen whose code or looks do not come is asked for again; one that never comes says so, and can be loaded again', async () => {
  tablet = await startTablet();
  // Without the worker, which would have every file ahead: here each comes from the host when it is needed.
  await tablet.context.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
  });
  const page = await tablet.context.newPage();
  await page.goto(host.url);
  await page.getByRole('button', { name: w.sculptures.welcome.demo, exact: true }).click();
  await page.getByText(w.shell.inventedWhat).waitFor();

  const asked = await nothingComes(page, 300);
  await page.evaluate(() => {
    location.hash = '#/papers';
  });
  await page.getByRole('heading', { level: 1, name: w.paperHub.title }).waitFor();
  expect([...asked.values()].filter((times) => times > 1).length).toBeGreaterThan(0);
  const looks = await page.locator('link[rel=stylesheet]').evaluateAll((links) =>
    links.map((link) => {
      try {
        return (link as HTMLLinkElement).sheet!.cssRules.length > 0;
      } catch {
        return false;
      }
    }),
  );
  expect(looks.length).toBeGreaterThan(5);
  expect(looks).not.toContain(false);

  await nothingComes(page, Number.POSITIVE_INFINITY);
  await page.evaluate(() => {
    location.hash = '#/method';
  });
  await page.getByRole('heading', { level: 1, name: w.shell.broken }).waitFor();
  // What surrounds the screen is still there, and so is the way out of it.
  await expect.poll(() => page.getByRole('navigation', { name: w.shell.nav.label }).isVisible()).toBe(true);
  await page.unroute(assets);
  await page.getByRole('button', { name: w.shell.brokenAgain }).click();
  await page.getByRole('heading', { level: 1, name: w.method.title }).waitFor();
});
