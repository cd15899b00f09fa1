import { StoreProblem } from '../../device/storeProblem';
import type { Desk, Question } from '../desk';
import { figuresVersion } from './figures';
import { ask } from './question';

interface Answer<T> {
  readonly value: T;
  /** Work to do once the answer is shown. */
  readonly after?: (() => Promise<void>) | undefined;
}

/** A question answered with what is there at once, and again as work beside the page brings more. */
export const live = <T>(desk: Desk, key: string, read: () => Promise<Answer<T>>): Question<T> =>
  ask(
    desk,
    key,
    () => `${desk.store.changes()} ${figuresVersion(desk)} ${desk.today()}`,
    async () => {
      const { value, after } = await read();
      after?.().catch((error: unknown) => {
        // What the store refuses in the background it refuses again, and then aloud, when someone asks.
        if (!(error instanceof StoreProblem)) throw error;
      });
      return value;
    },
  );
