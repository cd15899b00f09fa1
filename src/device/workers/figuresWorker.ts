/** The worker: figures are worked out here, beside the page, from a connection of its own that only reads. */
import { openReader } from '../store';
import { StoreProblem } from '../storeProblem';
import type { Asked, Said } from './asked';
import { stepsOf } from './steps';

const say = (said: Said) => postMessage(said);

addEventListener('message', async ({ data }: MessageEvent<Asked>) => {
  const reader = openReader(data.store);
  try {
    for await (const step of stepsOf(reader, data.job)) say({ step });
    say({ end: true });
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    say({ problem: error.reason });
  } finally {
    reader.close();
  }
});
