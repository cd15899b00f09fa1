import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { startTablet, type Tablet } from './chromium';
import { type Host, startHost } from './server';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let page: Page;
let faults: string[];

beforeAll(async () => {
  host = await startHost();
  tablet = await startTablet();
  faults = await watch(tablet.context, host.url);
  page = await tablet.context.newPage();
});

beforeEach(async () => {
  await page.goto(host.url);
  faults.length = 0;
});

afterAll(async () => {
  await tablet?.close();
  await host?.stop();
});

test.each<[deed: string, directive: string, attempt: () => unknown]>([
  [
    'text written into the page as markup',
    'require-trusted-types-for',
    () => {
      document.body.innerHTML = '<b>a note that came in a file</b>';
    },
  ],
  [
    'a script written into the page',
    'require-trusted-types-for',
    () => {
      const script = document.createElement('script');
      script.append('document.title = "taken over"');
      document.body.append(script);
    },
  ],
  [
    'a style element',
    'style-src',
    () => {
      const style = document.createElement('style');
      style.append('body { display: none }');
      document.body.append(style);
    },
  ],
  ['a request to another host', 'connect-src', () => fetch('https://example.org/')],
  [
    'a frame',
    'frame-src',
    () => {
      const frame = document.createElement('iframe');
      frame.src = 'https://example.org/';
      document.body.append(frame);
    },
  ],
])('%s is refused by the page, and the watcher of these tests hears it', async (_, directive, attempt) => {
  await page.evaluate(attempt).catch(() => undefined);
  await expect
    .poll(() => faults.filter((f) => f.includes(`page policy broken: ${directive}`)).length, { timeout: 10_000 })
    .toBeGreaterThan(0);
});

test('no other page may show ours in a frame, and the host says so', async () => {
  const answer = await fetch(host.url);
  expect(answer.headers.get('content-security-policy')).toBe("frame-ancestors 'none'");
});

test('the built page has no script or style of its own text', async () => {
  const html = await (await fetch(host.url)).text();
  expect(html).not.toMatch(/<style|style=|<script(?![^>]*\bsrc=)|\son\w+=/);
});
