import type { Reader } from '../store';
import { StoreProblem } from '../storeProblem';
import type { Asked, Job, Said } from './asked';
import type { Step } from './figures';

/** Work under way. */
export interface Work {
  /** Resolves when it is done or was left off; rejects with what the store refused. */
  readonly ended: Promise<void>;
  leaveOff(): void;
}

/** A store as far as this work reads it, with its name. */
export type Worked = Omit<Reader, 'close'> & { readonly name: string };

/**
 * Works something out beside the page, in a worker that reads the store by itself, or in place where there are no workers (tests, what
 * is made at build time). `hear` is told each step, the next one after it is done with the last.
 */
export const workOut = (store: Worked, job: Job, hear: (step: Step) => Promise<void>): Work =>
  typeof Worker === 'undefined' ? inPlace(store, job, hear) : inWorker(store, job, hear);

/** How many workers may share many works: as many as there are processors, and no more than tell. In place there is no sharing. */
export const shares = (): number =>
  typeof Worker === 'undefined' ? 1 : Math.min(mostShares, Math.max(1, globalThis.navigator?.hardwareConcurrency ?? 1));
const mostShares = 3;

const inPlace = (store: Worked, job: Job, hear: (step: Step) => Promise<void>): Work => {
  let left = false;
  const run = async () => {
    // No part of the start: it comes when a figure no longer holds.
    const { stepsOf } = await import('./steps');
    for await (const step of stepsOf(store, job)) {
      if (left) return;
      await hear(step);
      await breathe();
    }
  };
  return {
    ended: run(),
    leaveOff: () => {
      left = true;
    },
  };
};

/** Lets the screen draw and the finger be heard before the next step. */
const breathe = (): Promise<void> => new Promise((go) => setTimeout(go));

const inWorker = (store: Worked, job: Job, hear: (step: Step) => Promise<void>): Work => {
  let leaveOff: () => void = () => undefined;
  const ended = new Promise<void>((done, failed) => {
    let left = false;
    let heard = Promise.resolve();
    let worker: Worker | undefined;
    const end = (then: () => void) => {
      left = true;
      worker?.terminate();
      heard.then(then, failed);
    };
    leaveOff = () => end(done);
    import('./startWorker').then(({ startWorker }) => {
      if (left) return;
      worker = startWorker();
      worker.onmessage = ({ data }: MessageEvent<Said>) => {
        if (left) return;
        if ('step' in data) heard = heard.then(() => hear(data.step));
        else if ('problem' in data) end(() => failed(new StoreProblem(data.problem)));
        else end(done);
      };
      worker.onerror = (event) => end(() => failed(new Error(event.message)));
      worker.postMessage({ store: store.name, job } satisfies Asked);
    }, failed);
  });
  return { ended, leaveOff: () => leaveOff() };
};
