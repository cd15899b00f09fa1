import sharp from 'sharp';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { workPixels } from '../../../src/device/pixels';
import type { Post, Said } from '../../../src/device/pixels/asked';
import { pixelNumbers } from '../../../src/device/pixels/pixelNumbers';
import { standInCanvas } from '../../files/canvasOfSharp';

type Answers = (post: Post, say: (said: Said) => void, worker: Stand) => void;

/** A worker that does as the test says. */
class Stand {
  static answers: Answers = () => undefined;
  static started: Stand[] = [];
  onmessage?: (event: { data: Said }) => void;
  onerror?: (event: { message: string; preventDefault(): void }) => void;
  readonly posts: Post[] = [];
  ended = false;
  constructor() {
    Stand.started.push(this);
  }
  postMessage(post: Post) {
    this.posts.push(post);
    queueMicrotask(() => Stand.answers(post, (data) => this.onmessage?.({ data }), this));
  }
  terminate() {
    this.ended = true;
  }
}

beforeEach(() => {
  Stand.started = [];
  Stand.answers = () => undefined;
  vi.stubGlobal('Worker', Stand);
  vi.stubGlobal('location', new URL('https://rounds.example/'));
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});

afterEach(async () => {
  // The worker of this test goes before the next begins.
  if (vi.isFakeTimers()) await vi.advanceTimersByTimeAsync(2 * pixelNumbers.rest);
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const tap = { do: 'colour', photo: { sha256: 'a' }, at: [0.5, 0.5] } as const;
const bytes = async () => {
  const png = await sharp({ create: { width: 30, height: 20, channels: 3, background: 'rgb(92,70,50)' } })
    .png()
    .toBuffer();
  return { bytes: new Uint8Array(png).buffer as ArrayBuffer, mime: 'image/png' };
};
const colour = [1, 2, 3] as const;

test('questions go one at a time to one worker, which is ended after a rest and started anew for the next', async () => {
  const asked: number[] = [];
  let free: (() => void) | undefined;
  Stand.answers = (post, say) => {
    if (!('ask' in post)) return;
    asked.push(post.id);
    free = () => say({ id: post.id, told: { colour } });
  };
  const both = [workPixels(tap, { bring: bytes }), workPixels(tap, { bring: bytes })];
  await vi.waitFor(() => expect(asked).toHaveLength(1));
  free?.();
  expect(await both[0]).toEqual({ colour });
  await vi.waitFor(() => expect(asked).toHaveLength(2));
  free?.();
  await both[1];
  expect(Stand.started).toHaveLength(1);
  await vi.advanceTimersByTimeAsync(pixelNumbers.rest + 1);
  expect(Stand.started[0]?.ended).toBe(true);
  const next = workPixels(tap, { bring: bytes });
  await vi.waitFor(() => expect(asked).toHaveLength(3));
  free?.();
  await next;
  expect(Stand.started).toHaveLength(2);
});

test('the bytes of a photo are handed over when the worker calls for them', async () => {
  Stand.answers = (post, say, { posts }) => {
    const id = posts.flatMap((one) => ('id' in one ? [one.id] : [])).at(-1) as number;
    if ('ask' in post) say({ id, wanted: 'a' });
    if ('bring' in post) say({ id, told: { colour: post.photo ? colour : [0, 0, 0] } });
  };
  expect(await workPixels(tap, { bring: bytes })).toEqual({ colour });
});

test('a question left off while it waits is never asked; one at work is told so, and the worker lives on', async () => {
  Stand.answers = (post, say) => {
    if ('ask' in post && Stand.started[0]?.posts.length === 1) say({ id: post.id, done: 0.1 });
    if ('leaveOff' in post) say({ id: post.leaveOff, leftOff: true });
  };
  const [first, second] = [new AbortController(), new AbortController()];
  const heard = (): void => {
    second.abort();
    first.abort();
  };
  const answers = [
    workPixels(tap, { bring: bytes, heard, signal: first.signal }),
    workPixels(tap, { bring: bytes, signal: second.signal }),
  ];
  expect(await Promise.all(answers)).toEqual([undefined, undefined]);
  expect(Stand.started[0]?.posts.filter((post) => 'ask' in post)).toHaveLength(1);
  expect(Stand.started[0]?.ended).toBe(false);
});

test('a worker that never starts is done without: the page does its work', async () => {
  standInCanvas();
  vi.useRealTimers();
  Stand.answers = (_, __, worker) => worker.onerror?.({ message: 'blocked', preventDefault: () => undefined });
  expect(await workPixels(tap, { bring: bytes })).toEqual({ colour: [92, 70, 50] });
});

test.each<[harm: string, answers: Answers, said: string]>([
  [
    'a fault in the worker',
    (post, say) => 'ask' in post && say({ id: post.id, failed: 'out of memory' }),
    'out of memory',
  ],
  [
    'a worker that breaks down at work',
    (post, say, worker) => {
      if (!('ask' in post)) return;
      say({ id: post.id, done: 0.5 });
      worker.onerror?.({ message: 'gone', preventDefault: () => undefined });
    },
    'gone',
  ],
])('%s is told of as such, and the next question finds a new worker', async (_, answers, said) => {
  Stand.answers = answers;
  await expect(workPixels(tap, { bring: bytes })).rejects.toMatchObject({
    reason: { code: 'pixels failed', params: { said } },
  });
  Stand.answers = (post, say) => 'ask' in post && say({ id: post.id, told: { colour } });
  expect(await workPixels(tap, { bring: bytes })).toEqual({ colour });
  expect(Stand.started.map(({ ended }) => ended)).toEqual([true, false]);
});

test('a worker the system ended without a word is not waited for for ever', async () => {
  const asked = workPixels(tap, { bring: bytes });
  const refused = expect(asked).rejects.toMatchObject({ reason: { code: 'pixels failed' } });
  await vi.waitFor(() => expect(Stand.started[0]?.posts).toHaveLength(1));
  await vi.advanceTimersByTimeAsync(pixelNumbers.patience + 1);
  await refused;
  expect(Stand.started[0]?.ended).toBe(true);
});
