import { workerAddress } from '../offline';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { PixelsAsked, PixelsWay, Post, Said, ToldOf } from './asked';
import { pixelNumbers } from './pixelNumbers';

type Told = ToldOf[keyof ToldOf] | undefined;

/** Beside the page; see vite.config.ts. Without a build the source itself is served. */
const address = import.meta.env.DEV ? '/src/device/pixels/pixelsWorker.ts' : './pixels.js';

/** A worker that never came to life: strip by strip, the page can do its work. */
class NoWorker extends Error {}

let worker: Worker | undefined;
let alive = false;
let resting: ReturnType<typeof setTimeout> | undefined;
let last: Promise<unknown> = Promise.resolve();
let asked = 0;

/** One question at a time: a tablet bears one photo unpacked. In place where there are no workers. */
export const askedBeside = (ask: PixelsAsked, way: PixelsWay): Promise<Told> => {
  const mine = last.then(() => {
    if (way.signal?.aborted) return undefined;
    return typeof Worker === 'function' ? inWorker(ask, way) : inPlace(ask, way);
  });
  last = mine.catch(() => undefined);
  return mine;
};

const inPlace = async (ask: PixelsAsked, way: PixelsWay): Promise<Told> =>
  (await import('./askedHere')).askedHere(ask, way);

/** Ends the worker, and gives back all it held. */
const end = (): void => {
  clearTimeout(resting);
  worker?.terminate();
  worker = undefined;
  alive = false;
};

const inWorker = async (ask: PixelsAsked, way: PixelsWay): Promise<Told> => {
  clearTimeout(resting);
  try {
    const told = await answered(ask, way);
    resting = setTimeout(end, pixelNumbers.rest);
    return told;
  } catch (error) {
    end();
    if (error instanceof StoreProblem) throw error;
    if (error instanceof NoWorker) return inPlace(ask, way);
    throw new StoreProblem(deviceReason('pixels failed', { said: error instanceof Error ? error.message : '' }));
  }
};

const answered = (ask: PixelsAsked, { bring, heard, signal }: PixelsWay): Promise<Told> =>
  new Promise((resolve, reject) => {
    worker ??= new Worker(workerAddress(address), { type: 'module' });
    const to = worker;
    const id = ++asked;
    const post = (message: Post, give: Transferable[] = []) => to.postMessage(message, give);
    // A worker the system ended says nothing at all.
    const late = () => setTimeout(() => done(() => reject(new Error('no answer'))), pixelNumbers.patience);
    let waiting = late();
    const leave = () => post({ leaveOff: id });
    const done = (then: () => void) => {
      clearTimeout(waiting);
      signal?.removeEventListener('abort', leave);
      then();
    };
    to.onmessage = ({ data }: MessageEvent<Said>) => {
      alive = true;
      if (data.id !== id) return;
      clearTimeout(waiting);
      waiting = late();
      if ('done' in data) heard?.(data.done);
      else if ('wanted' in data)
        bring(data.wanted).then(
          (photo) => post({ bring: data.wanted, photo }, photo ? [photo.bytes] : []),
          (error: unknown) => done(() => reject(error)),
        );
      else if ('told' in data) done(() => resolve(signal?.aborted ? undefined : data.told));
      else if ('leftOff' in data) done(() => resolve(undefined));
      else done(() => reject('problem' in data ? new StoreProblem(data.problem) : new Error(data.failed)));
    };
    to.onerror = (event) => {
      event.preventDefault();
      done(() => reject(alive ? new Error(event.message) : new NoWorker()));
    };
    signal?.addEventListener('abort', leave);
    post({ id, ask });
  });
