import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { pathTo } from '../../src/screens/shell/paths';
import { w } from '../../src/words';
import { startTablet, type Tablet } from './chromium';
import { built, type Host, startHost } from './server';
import { watch } from './watch';

let host: Host;
let tablet: Tablet;
let newer: string;

beforeEach(async () => {
  newer = mkdtempSync(join(tmpdir(), 'patina-round-newer-'));
  host = await startHost();
  tablet = await startTablet();
});

afterEach(async () => {
  await tablet.close();
  await host.stop();
  rmSync(newer, { recursive: true });
});

/** The same app under a new title, as the next version would lie on the host. */
function makeNewerVersion(): void {
  cpSync(built, newer, { recursive: true });
  const change = (file: string, from: string | RegExp, to: string) => {
    const text = readFileSync(join(newer, file), 'utf8');
    const changed = text.replace(from, to);
    expect(changed, `${file} was to be changed`).not.toBe(text);
    writeFileSync(join(newer, file), changed);
  };
  change('index.html', '<title>', '<title>Newer ');
  change('sw.js', /("revision":")[0-9a-f]+(","url":"index\.html")/, '$1newer$2');
}

/** A page with the app in it, kept by the worker, that counts how often it was loaded from now on. */
async function open(): Promise<{ page: Page; loads: () => number }> {
  const page = await tablet.context.newPage();
  await page.goto(host.url);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
  let loads = 0;
  page.on('load', () => loads++);
  return { page, loads: () => loads };
}

test('a newer version waits for a word, then every tab changes to it once', { retry: 0 }, async () => {
  const faults = await watch(tablet.context, host.url);
  const first = await open();
  const second = await open();
  makeNewerVersion();
  await host.stop();
  host = await startHost({ port: host.port, folder: newer });

  await first.page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r?.update()));
  const button = first.page.getByRole('button', { name: 'Start it now' });
  await button.waitFor();
  expect(await first.page.title()).not.toContain('Newer');
  expect([first.loads(), second.loads()]).toEqual([0, 0]);

  await button.click();
  for (const { page } of [first, second]) await expect.poll(() => page.title(), { timeout: 30_000 }).toContain('Newer');
  await first.page.waitForTimeout(1000);
  expect([first.loads(), second.loads()]).toEqual([1, 1]);
  expect(faults).toEqual([]);
});

test('the worker file is asked for anew even where the host lets it be cached', { retry: 0 }, async () => {
  const { page } = await open();
  const asked = await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.updateViaCache);
  expect(asked).toBe('none');
});

test('a form that is half filled when the newer version takes over is filled in again in it', {
  retry: 0,
}, async () => {
  const { page } = await open();
  await page.goto(`${host.url}#${pathTo.newSculpture()}`);
  const title = page.getByRole('textbox', { name: w.sculptures.form.title });
  const note = page.getByRole('textbox', { name: w.sculptures.form.note });
  await title.fill('Sitting heron');
  await note.pressSequentially('Found behind the glasshouse');
  makeNewerVersion();
  await host.stop();
  host = await startHost({ port: host.port, folder: newer });
  await page.evaluate(() => navigator.serviceWorker.getRegistration().then((r) => r?.update()));
  await page.getByRole('button', { name: 'Start it now' }).click();
  await expect.poll(() => page.title(), { timeout: 30_000 }).toContain('Newer');
  await page.getByText(/^Not yet kept: what you typed on .+ is here again\.$/).waitFor();
  expect([await title.inputValue(), await note.inputValue()]).toEqual(['Sitting heron', 'Found behind the glasshouse']);
});
