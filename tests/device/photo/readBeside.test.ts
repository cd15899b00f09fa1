import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { readPhoto } from '../../../src/device/photo';
import type { PhotoAsked, PhotoSaid } from '../../../src/device/photo/photosWorker';
import { takenIn } from '../../../src/device/photo/takenIn';
import type { StoreProblem } from '../../../src/device/storeProblem';
import { svg } from '../../files/pictures';
import { jpeg } from './camera';

type Does = (asked: PhotoAsked, worker: StandIn) => void;

/** A worker that does what a test says; how many were started and ended is counted. */
class StandIn {
  static does: Does = () => undefined;
  static started = 0;
  static ended = 0;
  static underWay = 0;
  static most = 0;
  onmessage: ((event: { data: PhotoSaid }) => void) | undefined;
  onerror: ((event: { message: string; preventDefault(): void }) => void) | undefined;
  constructor() {
    StandIn.started++;
  }
  postMessage(asked: PhotoAsked) {
    StandIn.most = Math.max(StandIn.most, ++StandIn.underWay);
    StandIn.does(asked, this);
  }
  answer(said: PhotoSaid) {
    StandIn.underWay--;
    this.onmessage?.({ data: said });
  }
  terminate() {
    StandIn.ended++;
  }
}

beforeEach(() => {
  Object.assign(StandIn, { started: 0, ended: 0, underWay: 0, most: 0 });
  vi.stubGlobal('Worker', StandIn);
  vi.stubGlobal('location', new URL('https://garden.example/'));
});

afterEach(async () => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.resetModules();
});

const photo = (name: string): File => new File([jpeg({ xmp: name })], `${name}.jpg`);
const reads: Does = (asked, worker) => void takenIn(asked.file, asked.options).then((read) => worker.answer({ read }));

test('photos asked for at once are read one after the other, by one worker', async () => {
  StandIn.does = reads;
  const all = await Promise.all(['a', 'b', 'c'].map((name) => readPhoto(photo(name))));
  expect(new Set(all.map((read) => read.photo.sha256)).size).toBe(3);
  expect([StandIn.started, StandIn.most]).toEqual([1, 1]);
});

test('a worker that cannot be had or that fails loses no photo: it is read on the page', async () => {
  StandIn.does = (_, worker) => worker.onerror?.({ message: 'not found', preventDefault: () => undefined });
  expect((await readPhoto(photo('a'))).photo.mime).toBe('image/jpeg');
  StandIn.does = (_, worker) => worker.answer({ failed: 'out of memory' });
  expect((await readPhoto(photo('b'))).photo.mime).toBe('image/jpeg');
  expect(StandIn.ended, 'what failed is not asked again').toBe(2);
});

test('a worker the system ended without a word is not waited for for ever', async () => {
  vi.useFakeTimers();
  StandIn.does = () => undefined;
  const read = readPhoto(photo('a'));
  await vi.advanceTimersByTimeAsync(100_000);
  vi.useRealTimers();
  expect((await read).photo.mime).toBe('image/jpeg');
});

test('what is refused in the worker is refused in words, and is not tried again on the page', async () => {
  StandIn.does = (asked, worker) =>
    void takenIn(asked.file, asked.options).catch((problem: StoreProblem) =>
      worker.answer({ problem: problem.reason }),
    );
  const file = new File([new Uint8Array(svg())], 'drawing.svg');
  await expect(readPhoto(file)).rejects.toMatchObject({ reason: { code: 'drawing not taken' } });
  expect(StandIn.ended).toBe(0);
});

test('a worker with nothing to do gives its memory back', async () => {
  StandIn.does = reads;
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  await readPhoto(photo('a'));
  expect(StandIn.ended).toBe(0);
  await vi.advanceTimersByTimeAsync(60_000);
  expect(StandIn.ended).toBe(1);
});
