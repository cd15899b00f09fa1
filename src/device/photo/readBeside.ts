import { workerAddress } from '../offline';
import { StoreProblem } from '../storeProblem';
import type { PhotoOptions, PhotoRead } from './photoRead';
import type { PhotoAsked, PhotoSaid } from './photosWorker';
import { takenIn } from './takenIn';

/** Beside the page; see vite.config.ts. Without a build the source itself is served. */
const address = import.meta.env.DEV ? '/src/device/photo/photosWorker.ts' : './photos.js';

/** A worker with nothing to do is ended after this time, and gives back what the pictures took. Milliseconds. */
const rest = 10_000;
/** A worker that has not answered by then was ended by the system, which tells nobody. Milliseconds. */
const patience = 90_000;

let worker: Worker | undefined;
let resting: ReturnType<typeof setTimeout> | undefined;
let last: Promise<unknown> = Promise.resolve();

/** One at a time, in the order asked: two pictures decoded at once are two too many for a small tablet. */
export const readBeside = (file: Blob, options: PhotoOptions): Promise<PhotoRead> => {
  const mine = last.then(() => read(file, options));
  last = mine.catch(() => undefined);
  return mine;
};

const read = async (file: Blob, options: PhotoOptions): Promise<PhotoRead> => {
  clearTimeout(resting);
  try {
    const said = await answerOf(file, options);
    if ('problem' in said) throw new StoreProblem(said.problem);
    if ('failed' in said) throw new Error(said.failed);
    resting = setTimeout(end, rest);
    return said.read;
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    // No worker, or one that failed: the file is still here, and is read on the page.
    end();
    return takenIn(file, options);
  }
};

const end = (): void => {
  worker?.terminate();
  worker = undefined;
};

const answerOf = (file: Blob, options: PhotoOptions): Promise<PhotoSaid> =>
  new Promise((resolve, reject) => {
    worker ??= new Worker(workerAddress(address), { type: 'module' });
    const late = setTimeout(() => reject(new Error('no answer')), patience);
    worker.onmessage = ({ data }: MessageEvent<PhotoSaid>) => {
      clearTimeout(late);
      resolve(data);
    };
    worker.onerror = (event) => {
      clearTimeout(late);
      event.preventDefault();
      reject(new Error(event.message));
    };
    worker.postMessage({ file, options } satisfies PhotoAsked);
  });
