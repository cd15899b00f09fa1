import { existsSync, mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openApp } from '../browser/app';
import { findChromium, startTablet, type Tablet } from '../browser/chromium';
import { addFolderCode, folderInPage } from '../browser/folderInPage';
import { watch } from '../browser/watch';
import { folderContract } from '../device/folder/contract';
import { type Apache, anna, startApache } from './apache';

const bytes = (text: string) => new TextEncoder().encode(text);
const text = (given: Uint8Array | undefined) => given && new TextDecoder().decode(given);
const root = './folder/';

let apache: Apache;
let tablet: Tablet;
let page: Page;
let faults: string[];

beforeAll(async () => {
  findChromium();
  apache = await startApache();
  await addFolderCode(apache.app);
  tablet = await startTablet({ flags: [apache.trust] });
  faults = await watch(tablet.context, apache.url);
  page = await openApp(tablet, apache);
}, 300_000);

afterAll(async () => {
  await tablet?.close();
  await apache?.close();
}, 300_000);

/** A refused answer is what some tests ask for; the browser's own line about it is no fault of the page. */
const faultsOfPage = () => faults.filter((fault) => !fault.includes('Failed to load resource'));

describe('the folder on the server, asked by a page of the app under its own policy and worker', () => {
  const folder = () => folderInPage(page, { root, ...anna });

  folderContract(() => {
    for (const name of readdirSync(apache.kept)) rmSync(join(apache.kept, name), { recursive: true });
    return folder();
  });

  test('all of that is asked under the page’s own policy', () => expect(faultsOfPage()).toEqual([]));

  test('what others left in the folder and this app never writes is passed over', async () => {
    mkdirSync(join(apache.kept, 'four', 'a b'), { recursive: true });
    for (const name of ['.davfs.tmp12', 'Thumbs db', 'ü.json', '1.json'])
      writeFileSync(join(apache.kept, 'four', name), 'x');
    expect(await folder().list('four')).toEqual([{ name: '1.json', isFolder: false, bytes: 1 }]);
  });

  test('a thousand names in one folder are listed in one answer', async () => {
    mkdirSync(join(apache.kept, 'many'));
    for (let at = 0; at < 1000; at++) writeFileSync(join(apache.kept, 'many', `${at}.jpg`), 'x');
    expect((await folder().list('many')).length).toBe(1000);
  });

  test('a place on the server that is no folder is said, and not taken for an empty one', async () => {
    const elsewhere = folderInPage(page, { root: './elsewhere/', ...anna });
    await expect(elsewhere.list('')).rejects.toThrow('keeps no folder at https://localhost');
    await expect(elsewhere.put('1.json', bytes('x'))).rejects.toThrow('keeps no folder at https://localhost');
  });
});

test('a wrong password is said at once, and no window of the browser’s own asks for it', async () => {
  const session = await tablet.context.newCDPSession(page);
  const windows: string[] = [];
  session.on('Fetch.requestPaused', ({ requestId }) => session.send('Fetch.continueRequest', { requestId }));
  session.on('Fetch.authRequired', ({ requestId, request }) => {
    windows.push(`${request.method} ${request.url}`);
    void session.send('Fetch.continueWithAuth', { requestId, authChallengeResponse: { response: 'CancelAuth' } });
  });
  await session.send('Fetch.enable', { handleAuthRequests: true });
  const wrong = folderInPage(page, { root, ...anna, password: 'wrong' });
  const deeds = [
    wrong.list(''),
    wrong.list('x'),
    wrong.get('1.json'),
    wrong.put('x/1.json', bytes('x')),
    wrong.remove('1.json'),
  ];
  for (const { reason } of (await Promise.allSettled(deeds)) as PromiseRejectedResult[])
    expect(String(reason)).toContain('did not take this name and password');
  expect(windows).toEqual([]);
  // That the watching would have seen one: the same question by the way the browser reads XML.
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = new XMLHttpRequest();
        request.open('PROPFIND', './folder/');
        request.setRequestHeader('Authorization', 'Basic bm9ib2R5Ong=');
        request.onloadend = resolve;
        request.send();
      }),
  );
  expect(windows).toEqual([`PROPFIND ${apache.url}folder/`]);
  await session.detach();
});

test('the worker that keeps the app leaves the folder to the server, opened as a page too', async () => {
  expect(await folderInPage(page, { root, ...anna }).put('page.html', bytes('<h1>taken over</h1>'))).toBe('put');
  for (const path of ['folder/', 'folder', 'folder/page.html']) {
    const other = await tablet.context.newPage();
    const answered = other.waitForResponse((response) => response.url().startsWith(`${apache.url}folder`));
    await other.goto(apache.url + path).catch(() => undefined);
    const response = await answered;
    expect({ path, worker: response.fromServiceWorker() }).toEqual({ path, worker: false });
    await other.close();
  }
  expect(apache.asked()).toContain('GET /folder/page.html 401');
  const kept = await tablet.context.newPage();
  expect((await kept.goto(`${apache.url}folders/`))?.fromServiceWorker()).toBe(true);
  await kept.close();
});

test('a server gone in the middle of a file is said, nothing of the file is there, and it goes when the server is back', async () => {
  const folder = folderInPage(page, { root, ...anna });
  const large = new Uint8Array(4_000_000).fill(7);
  const session = await tablet.context.newCDPSession(page);
  const upTo = (uploadThroughput: number) =>
    session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency: 0,
      downloadThroughput: -1,
      uploadThroughput,
    });
  await upTo(1_000_000);
  const writing = folder.put('five/large.jpg', large).then(
    (told) => told,
    (error: Error) => error.message,
  );
  const begun = () => {
    const at = join(apache.kept, 'five');
    return existsSync(at) && readdirSync(at).some((name) => statSync(join(at, name)).size > 0);
  };
  await expect.poll(begun, { timeout: 30_000, interval: 20 }).toBe(true);
  await apache.end();
  expect(await writing).toContain('The server did not answer');
  await expect(folder.list('')).rejects.toThrow('The server did not answer');

  await apache.start();
  await upTo(-1);
  expect(await folder.list('five')).toEqual([]);
  expect(await folder.get('five/large.jpg')).toBeUndefined();
  expect(await folder.put('five/large.jpg', large)).toBe('put');
  expect(Buffer.compare(Buffer.from((await folder.get('five/large.jpg'))!), Buffer.from(large))).toBe(0);
  await session.detach();
});

test('a server without room says so, and takes again what is smaller or when there is room', async () => {
  const full = await startApache({ room: 256 });
  const other = await startTablet({ flags: [full.trust] });
  try {
    await addFolderCode(full.app);
    const folder = folderInPage(await openApp(other, full), { root, ...anna });
    expect(await folder.put('one/1.json', bytes('x'))).toBe('put');
    await expect(folder.put('photos/large.jpg', new Uint8Array(1_000_000))).rejects.toThrow('has no room left');
    expect(await folder.list('photos')).toEqual([]);
    expect(await folder.put('one/2.json', bytes('y'))).toBe('put');
    expect(text(await folder.get('one/1.json'))).toBe('x');
  } finally {
    await other.close();
    await full.close();
  }
});
