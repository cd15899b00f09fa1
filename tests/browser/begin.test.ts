import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
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
