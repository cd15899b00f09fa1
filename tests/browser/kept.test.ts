import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { startTablet, type Tablet } from './chromium';
import { built, type Host, startHost } from './server';

let host: Host;
let tablet: Tablet;

beforeEach(async () => {
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet.close();
  await host.stop();
});

test('every file of the build is given by the tablet itself once the host is gone', async () => {
  const files = readdirSync(built, { recursive: true, withFileTypes: true })
    .filter((f) => f.isFile() && f.name !== 'sw.js')
    .map((f) => relative(built, join(f.parentPath, f.name)));
  const page = await tablet.context.newPage();
  await page.goto(host.url);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  await host.stop();

  const missing = await page.evaluate(async (asked) => {
    const answers = await Promise.all(asked.map((f) => fetch(`./${f}`).catch(() => undefined)));
    return asked.filter((_, i) => !answers[i]?.ok);
  }, files);
  expect(files.length).toBeGreaterThan(5);
  expect(missing).toEqual([]);
});

test('the first screen of a first visit loads no more than 180 kB, lazy parts of that screen included', async () => {
  const page = await tablet.context.newPage();
  const loaded = new Map<string, number>();
  const read: Promise<void>[] = [];
  page.on('response', (answer) => {
    const { pathname } = new URL(answer.url());
    if (answer.ok() && /(?:\/|\.(?:html|js|css))$/.test(pathname) && answer.request().serviceWorker() === null) {
      read.push(answer.body().then((body) => void loaded.set(pathname, gzipSync(body).length)));
    }
  });
  await page.goto(host.url);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.waitForLoadState('networkidle');
  await Promise.all(read);
  const total = [...loaded.values()].reduce((sum, size) => sum + size, 0);
  expect(loaded.size).toBeGreaterThan(1);
  // 170 kB until the choice of a language, units, help and the modes of the field came: 5 kB of it is on this screen.
  expect(total, `bytes, gzip: ${[...loaded].map((l) => l.join(' ')).join(', ')}`).toBeLessThanOrEqual(180_000);
});
