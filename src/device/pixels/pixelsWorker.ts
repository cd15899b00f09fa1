/** The worker: the pixels of photos are worked here, one photo at a time, beside the page. */
import { StoreProblem } from '../storeProblem';
import { answerTo } from './answers';
import type { Bring, Post, Said } from './asked';
import { atHand } from './atHand';
import { LeftOff } from './leftOff';

const say = (said: Said) => postMessage(said);

let asking = 0;
let brought: ((photo: Awaited<ReturnType<Bring>>) => void) | undefined;
const left = new Set<number>();

const hand = atHand(
  (sha256) =>
    new Promise((resolve) => {
      brought = resolve;
      say({ id: asking, wanted: sha256 });
    }),
);

/** Lets what came in meanwhile be heard: that the question is no longer wanted, above all. */
const heard = (): Promise<void> =>
  new Promise((go) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      go();
    };
    port2.postMessage(0);
  });

addEventListener('message', async ({ data }: MessageEvent<Post>) => {
  if ('leaveOff' in data) return void left.add(data.leaveOff);
  if ('bring' in data) return brought?.(data.photo);
  const { id, ask } = data;
  asking = id;
  try {
    const told = await answerTo(ask, hand, async (done) => {
      await heard();
      if (left.has(id)) throw new LeftOff();
      say({ id, done });
    });
    say({ id, told });
  } catch (error) {
    if (error instanceof LeftOff) say({ id, leftOff: true });
    else say(error instanceof StoreProblem ? { id, problem: error.reason } : { id, failed: String(error) });
  } finally {
    left.delete(id);
  }
});
