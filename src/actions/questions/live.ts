import { StoreProblem } from '../../device/storeProblem';
import type { Desk, Question } from '../desk';
import { ask } from './question';

interface Answer<T> {
  readonly value: T;
  /** Work to do once the answer is shown; it calls `again` when there is more to show. */
  readonly after?: () => Promise<void>;
}

/** A question answered with what is there at once, and again as work in the background brings more. */
export const live = <T>(desk: Desk, key: string, read: (again: () => void) => Promise<Answer<T>>): Question<T> => {
  const rounds = counters.get(desk.store) ?? new Map<string, number>();
  counters.set(desk.store, rounds);
  const again = () => {
    rounds.set(key, (rounds.get(key) ?? 0) + 1);
    desk.store.tell();
  };
  return ask(
    desk,
    key,
    () => `${desk.store.changes()} ${rounds.get(key) ?? 0}`,
    async () => {
      const { value, after } = await read(again);
      after?.().catch((error: unknown) => {
        // What the store refuses in the background it refuses again, and then aloud, when someone asks.
        if (!(error instanceof StoreProblem)) throw error;
      });
      return value;
    },
  );
};

const counters = new WeakMap<object, Map<string, number>>();
