import { workerAddress } from '../offline';
import { deviceReason } from '../reasonCodes';
import { settingsKept } from '../settingsKept';
import { StoreProblem } from '../storeProblem';
import type { BagAsks, BagPost, BagSaid, BagWay } from './asked';

/** Beside the page; see vite.config.ts. Without a build the source itself is served. */
const address = import.meta.env.DEV ? '/src/papers/bagWorker.ts' : './bag.js';

/** A worker the system ended says nothing at all. Milliseconds without a word, after which it is taken for ended. */
const patience = 60_000;

/**
 * Asks a worker of its own, which is ended with the answer and gives back all it held. Undefined where it was left off. Rejects with a
 * StoreProblem where it cannot be done.
 */
export const bagBeside = <Q extends keyof BagAsks>(
  question: Q,
  asked: BagAsks[Q]['asked'],
  { heard, part, signal }: BagWay = {},
): Promise<BagAsks[Q]['told'] | undefined> => {
  if (signal?.aborted) return Promise.resolve(undefined);
  return new Promise((resolve, reject) => {
    const { tongue, units } = settingsKept();
    // What it writes is in the language of the page.
    const worker = new Worker(workerAddress(address), { type: 'module', name: `${tongue ?? ''} ${units ?? ''}` });
    const post = (message: BagPost) => worker.postMessage(message);
    const fail = (said: string) => done(() => reject(new StoreProblem(deviceReason('bag worker failed', { said }))));
    const late = () => setTimeout(() => fail(''), patience);
    let waiting = late();
    const leave = () => post({ leaveOff: true });
    const done = (then: () => void) => {
      clearTimeout(waiting);
      signal?.removeEventListener('abort', leave);
      worker.terminate();
      then();
    };
    worker.onmessage = ({ data }: MessageEvent<BagSaid>) => {
      clearTimeout(waiting);
      waiting = late();
      if ('step' in data) heard?.(data.step);
      else if ('part' in data) part?.(data.part);
      else if ('told' in data) done(() => resolve(signal?.aborted ? undefined : data.told));
      else if ('leftOff' in data) done(() => resolve(undefined));
      else if ('problem' in data) done(() => reject(new StoreProblem(data.problem)));
      else fail(data.failed);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      fail(event.message ?? '');
    };
    signal?.addEventListener('abort', leave);
    post({ question, asked });
  });
};
