// @vitest-environment jsdom
import { afterEach, describe, expect, test, vi } from 'vitest';
import { davFolder } from '../../../src/device/folder/davFolder';
import { StoreProblem } from '../../../src/device/storeProblem';
import { sayReason } from '../../../src/words/en/reasons';
import '../../../src/words/pastStart';

// A server of statuses: what a real one says is asked of Apache in tests/outside; some answers only others give.
type Answering = (method: string, path: string, request: RequestInit) => Response | Promise<Response>;
const served = (answering: Answering) => {
  const asked: { method: string; path: string; request: RequestInit }[] = [];
  vi.stubGlobal('fetch', (address: URL, request: RequestInit) => {
    const method = request.method ?? '';
    const path = address.pathname;
    asked.push({ method, path, request });
    return answering(method, path, request);
  });
  return asked;
};
const always = (status: number, headers: Record<string, string> = {}) =>
  served(() => new Response(status === 204 ? null : '<html>…</html>', { status, headers }));
const sentOn = { type: 'opaqueredirect', status: 0, body: null } as Response;

const folder = () => davFolder({ root: './folder/', name: 'anna', password: 'größer' });
const bytes = new Uint8Array([1, 2, 3]);
const deeds = {
  list: () => folder().list(''),
  get: () => folder().get('a/1.json'),
  put: () => folder().put('a/1.json', bytes),
  remove: () => folder().remove('a/1.json'),
} satisfies Record<string, () => Promise<unknown>>;
const names = Object.keys(deeds) as (keyof typeof deeds)[];

const saidOf = async (deed: () => Promise<unknown>): Promise<string> => {
  const error = await deed().then(
    () => 'no fault',
    (fault: unknown) => fault,
  );
  if (!(error instanceof StoreProblem)) throw new Error(`not a sentence: ${error}`);
  return sayReason(error.reason);
};

afterEach(() => vi.unstubAllGlobals());

describe.each(names)('%s', (name) => {
  test.each([
    [401, 'did not take this name and password'],
    [403, 'does not let this name do that'],
    [405, 'keeps no folder at http'],
    [423, 'has locked'],
    [501, 'keeps no folder at http'],
    [507, 'no room left'],
    [500, 'answer 500'],
    [502, 'answer 502'],
    [429, 'answer 429'],
  ])('says what the answer %i means', async (status, sentence) => {
    always(status);
    expect(await saidOf(deeds[name])).toContain(sentence);
  });

  test('takes the page of a network that wants her to sign in for no folder, whether it answers or sends on', async () => {
    always(200, { 'Content-Type': 'text/html; charset=utf-8' });
    expect(await saidOf(deeds[name])).toContain('is a page and not a folder');
    served(() => sentOn);
    expect(await saidOf(deeds[name])).toContain('is a page and not a folder');
  });

  test('says that nothing came back, and otherwise that there is no network', async () => {
    served(() => Promise.reject(new TypeError('Failed to fetch')));
    expect(await saidOf(deeds[name])).toContain('The server did not answer');
    vi.spyOn(navigator, 'onLine', 'get').mockReturnValue(false);
    expect(await saidOf(deeds[name])).toContain('There is no network');
  });

  test('lets the browser add nothing, follow nothing, keep nothing and tell nobody where it was', async () => {
    const asked = always(500);
    await saidOf(deeds[name]);
    expect(asked[0]!.request).toMatchObject({
      credentials: 'omit',
      redirect: 'manual',
      cache: 'no-store',
      referrerPolicy: 'no-referrer',
      headers: { Authorization: `Basic ${Buffer.from('anna:größer').toString('base64')}` },
    });
  });
});

test('a file larger than the server takes is said with its size, and stays here', async () => {
  always(413);
  expect(await saidOf(() => folder().put('a/1.json', new Uint8Array(2_500_000)))).toContain('(2.5 MB). It stays here');
});

test('a file is written only where there is none, and one that is there is left', async () => {
  const asked = always(412);
  expect(await folder().put('a/1.json', bytes)).toBe('there already');
  expect(asked.map(({ method, path, request }) => [method, path, request.headers])).toEqual([
    ['PUT', '/folder/a/1.json', expect.objectContaining({ 'If-None-Match': '*' })],
  ]);
});

// Measured of nginx 1.22: If-None-Match is not known for what is written.
test('a server that writes over what is there is found out, and not taken for one that keeps', async () => {
  always(204);
  expect(await saidOf(() => folder().put('a/1.json', bytes))).toContain('wrote over “a/1.json”');
});

test.each([409, 404])(
  'where the folder on the way is missing (%i) it is made, and the file is written again',
  async (status) => {
    const made = new Set<string>();
    const asked = served((method, path) => {
      if (method === 'MKCOL') made.add(path);
      return new Response(null, { status: method === 'MKCOL' || made.has('/folder/a/b/') ? 201 : status });
    });
    expect(await folder().put('a/b/1.json', bytes)).toBe('put');
    expect(asked.map(({ method, path }) => `${method} ${path}`)).toEqual([
      'PUT /folder/a/b/1.json',
      'MKCOL /folder/a/',
      'MKCOL /folder/a/b/',
      'PUT /folder/a/b/1.json',
    ]);
  },
);

// Apache says 403 where two make one folder at once, others 405 or 301.
test.each([403, 405, 301])('a folder another tablet made in the same moment (%i) is no fault', async (status) => {
  let puts = 0;
  served((method) => new Response(null, { status: method === 'MKCOL' ? status : puts++ === 0 ? 409 : 201 }));
  expect(await folder().put('a/1.json', bytes)).toBe('put');
});

test('where the folder on the way may not be made, that is what is said', async () => {
  served((method) => new Response(null, { status: method === 'MKCOL' ? 403 : 409 }));
  expect(await saidOf(() => folder().put('a/1.json', bytes))).toContain('does not let this name do that');
});

test('a server whose folder itself is missing is asked once more and then said', async () => {
  const asked = always(404);
  expect(await saidOf(() => folder().put('a/1.json', bytes))).toContain('keeps no folder');
  expect(asked.length).toBeLessThanOrEqual(3);
});

test('a file that is not there is undefined to get and nothing to take away', async () => {
  always(404);
  expect(await folder().get('a/1.json')).toBeUndefined();
  await folder().remove('a/1.json');
});

test('a folder that is not there holds nothing, but the whole folder must be there', async () => {
  always(404);
  expect(await folder().list('a')).toEqual([]);
  expect(await saidOf(() => folder().list(''))).toContain('keeps no folder');
});

test('a file larger than anything this app writes is left unread', async () => {
  let read = 0;
  const endless = new ReadableStream<Uint8Array>({
    pull(to) {
      read += 1;
      to.enqueue(new Uint8Array(2 ** 23));
    },
  });
  served(() => new Response(endless));
  expect(await saidOf(() => folder().get('a/1.json'))).toContain('larger than anything this app writes');
  expect(read).toBeLessThan(20);
});

test('what is called off ends with the reason it was called off for, and is no fault of the server', async () => {
  const cut = new AbortController();
  served(
    (_, __, { signal }) =>
      new Promise((_, reject) => signal?.addEventListener('abort', () => reject(new Error('cut')))),
  );
  const got = folder().get('a/1.json', cut.signal);
  cut.abort('no longer wanted');
  await expect(got).rejects.toBe('no longer wanted');
  await expect(folder().list('', cut.signal)).rejects.toBe('no longer wanted');
});

test('a server that keeps silent is given up, a file later than a question', async () => {
  vi.useFakeTimers();
  try {
    served(
      (_, __, { signal }) =>
        new Promise((_, reject) => signal?.addEventListener('abort', () => reject(new Error('cut')))),
    );
    const said: string[] = [];
    const asked = [deeds.list, deeds.get].map((deed) => saidOf(deed).then((sentence) => said.push(sentence)));
    await vi.advanceTimersByTimeAsync(59_000);
    expect(said).toEqual([]);
    await vi.advanceTimersByTimeAsync(2000);
    expect(said).toEqual([expect.stringContaining('within 60 seconds')]);
    await vi.advanceTimersByTimeAsync(600_000);
    await Promise.all(asked);
    expect(said[1]).toContain('within 600 seconds');
  } finally {
    vi.useRealTimers();
  }
});

test('a name with a colon would be taken for a part of the password, so it is refused at once', () => {
  expect(() => davFolder({ root: './folder/', name: 'an:na', password: 'x' })).toThrow(StoreProblem);
});

test.each(['../sw.js', 'a/../../sw.js', '/sw.js', 'https://example.org/x', 'a b', 'a/', '.hidden', 'a?b', 'a%2fb'])(
  'the path “%s” leaves the folder or is none of ours, so nothing is asked',
  async (path) => {
    const asked = always(201);
    await expect(folder().put(path, bytes)).rejects.toThrow('Not a path');
    expect(asked).toEqual([]);
  },
);
