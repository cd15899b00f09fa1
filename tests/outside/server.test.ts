import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Apache, anna, startApache } from './apache';

let apache: Apache;

beforeAll(async () => {
  apache = await startApache();
}, 300_000);

afterAll(() => apache?.close(), 300_000);

const fresh = { 'If-None-Match': '*' };
const put = (path: string, body = 'x', headers: Record<string, string> = fresh) =>
  apache.ask(path, { method: 'PUT', as: anna, headers, body });

test('the app comes with the headers the page cannot give itself, and only what never changes may be kept by the browser', async () => {
  const [asset] = readdirSync(join(apache.app, 'assets'));
  const cache = {
    '/': 'no-cache',
    '/index.html': 'no-cache',
    '/sw.js': 'no-cache',
    [`/assets/${asset}`]: 'max-age=31536000, immutable',
  };
  for (const [path, kept] of Object.entries(cache)) {
    const { status, headers } = await apache.ask(path);
    expect({ path, status, kept: headers['cache-control'] }).toEqual({ path, status: 200, kept });
    expect(headers).toMatchObject({
      'content-security-policy': "frame-ancestors 'none'",
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
      'strict-transport-security': 'max-age=31536000',
    });
  }
  expect((await apache.ask('/manifest.webmanifest')).headers['content-type']).toBe('application/manifest+json');
});

test('an address without https is sent on to the one with it, before any password is asked', async () => {
  const answer = await fetch(`${apache.plain}folder/`, { redirect: 'manual' });
  expect(answer.status).toBe(301);
  expect(answer.headers.get('location')).toBe('https://localhost/folder/');
  expect(answer.headers.get('www-authenticate')).toBeNull();
});

test.each(['GET', 'OPTIONS', 'PROPFIND', 'PUT', 'MKCOL', 'DELETE'])(
  '%s in the folder is refused without a name, with a wrong password and to another name',
  async (method) => {
    for (const as of [undefined, { ...anna, password: 'wrong' }, { name: 'berta', password: anna.password }])
      expect((await apache.ask('/folder/', { method, as, headers: fresh })).status).toBe(401);
  },
);

test('what was written is never written over, moved, copied, locked or altered, whatever is asked for', async () => {
  expect((await apache.ask('/folder/kept/', { method: 'MKCOL', as: anna })).status).toBe(201);
  expect((await put('/folder/kept/1.json', 'first')).status).toBe(201);
  expect((await put('/folder/kept/1.json', 'second')).status).toBe(412);
  expect((await put('/folder/kept/1.json', 'second', {})).status).toBe(403);
  expect((await put('/folder/kept/1.json', 'second', { 'If-None-Match': '"another"' })).status).toBe(403);
  const headers = { Destination: `${apache.url}folder/kept/2.json`, Overwrite: 'T' };
  for (const method of ['MOVE', 'COPY', 'LOCK', 'PROPPATCH', 'POST', 'PATCH', 'TRACE'])
    expect((await apache.ask('/folder/kept/1.json', { method, as: anna, headers })).status, method).toBeOneOf([
      403, 405,
    ]);
  expect((await apache.ask('/folder/kept/1.json', { as: anna })).body).toBe('first');
  expect(readdirSync(join(apache.kept, 'kept'))).toEqual(['1.json']);
});

test.each([
  ['page.html', '<script>alert(1)</script>'],
  ['worker.js', 'self.onfetch = () => undefined'],
  ['drawing.svg', '<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'],
  ['program.shtml', '<!--#exec cmd="id" -->'],
])('%s put into the folder is never shown or run as a part of the app', async (name, text) => {
  expect((await put(`/folder/${name}`, text)).status).toBe(201);
  const { headers, body } = await apache.ask(`/folder/${name}`, { as: anna });
  expect(body).toBe(text);
  expect(headers).toMatchObject({
    'content-type': 'application/octet-stream',
    'content-disposition': 'attachment',
    'content-security-policy': "default-src 'none'; frame-ancestors 'none'; sandbox",
    'x-content-type-options': 'nosniff',
    'cache-control': 'no-store',
  });
});

test('nobody can write a rule for the server into the folder, nor anything beside it', async () => {
  expect((await put('/folder/.htaccess', 'Require all granted')).status).toBe(403);
  writeFileSync(join(apache.kept, '.htaccess'), 'Require all granted');
  expect((await apache.ask('/folder/', { method: 'PROPFIND', headers: { Depth: '0' } })).status).toBe(401);
  for (const path of ['/taken.html', '/folder/../taken.html', '/folder/%2e%2e/taken.html', '/assets/taken.js'])
    expect((await put(path)).status, path).toBeGreaterThanOrEqual(400);
  expect((await apache.ask('/', { method: 'PROPFIND', as: anna, headers: { Depth: '1' } })).status).toBe(405);
  expect(readdirSync(apache.app)).not.toContain('taken.html');
});

test('the folder shows no list to a browser, and the whole tree to no one at once', async () => {
  expect((await apache.ask('/folder/', { as: anna })).status).toBe(403);
  expect((await apache.ask('/folder/', { method: 'PROPFIND', as: anna, headers: { Depth: 'infinity' } })).status).toBe(
    403,
  );
});
