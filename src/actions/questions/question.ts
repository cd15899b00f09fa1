import type { Desk, Question } from '../desk';

/** Answers nobody looks at are kept up to this many, the last ones looked at. */
const restingLimit = 12;

interface Shelf {
  readonly questions: Map<string, Question<unknown>>;
  /** Keys nobody looks at, oldest first. */
  readonly resting: Set<string>;
}

const shelves = new WeakMap<object, Shelf>();

const shelfOf = (desk: Desk): Shelf => {
  const shelf = shelves.get(desk.store) ?? { questions: new Map(), resting: new Set() };
  shelves.set(desk.store, shelf);
  return shelf;
};

/**
 * One question per desk and key, the same reference whenever it is asked. It is read when someone subscribes and again
 * whenever `stamp` differs after a change; the stamp must be cheap (counters), the reading may be heavy. An answer that is
 * the same reference as before tells nobody. A fault of the store is thrown by `get`, so that the screen's boundary shows it.
 */
export const ask = <T>(desk: Desk, key: string, stamp: () => string | number, read: () => Promise<T>): Question<T> => {
  const shelf = shelfOf(desk);
  const known = shelf.questions.get(key);
  if (known) return known as Question<T>;
  const made = question(desk, stamp, read, (looked) => {
    shelf.resting.delete(key);
    if (looked) return;
    shelf.resting.add(key);
    for (const oldest of [...shelf.resting].slice(0, Math.max(0, shelf.resting.size - restingLimit))) {
      shelf.resting.delete(oldest);
      shelf.questions.delete(oldest);
    }
  });
  shelf.questions.set(key, made);
  return made;
};

const question = <T>(
  desk: Desk,
  stamp: () => string | number,
  read: () => Promise<T>,
  lookedAt: (looked: boolean) => void,
): Question<T> => {
  const listeners = new Set<() => void>();
  let answer: { value: T; stamp: string | number } | undefined;
  let reading: string | number | undefined;
  let fault: { error: unknown } | undefined;
  let unwatch: (() => void) | undefined;

  const tell = () => {
    for (const changed of listeners) changed();
  };
  const refresh = () => {
    const now = stamp();
    if (reading !== undefined || answer?.stamp === now) return;
    reading = now;
    read()
      .then(
        (value) => {
          const same = answer !== undefined && answer.value === value && fault === undefined;
          answer = { value, stamp: now };
          fault = undefined;
          if (!same) tell();
        },
        (error: unknown) => {
          fault = { error };
          answer = undefined;
          tell();
        },
      )
      .finally(() => {
        reading = undefined;
        if (listeners.size > 0 && fault === undefined) refresh();
      });
  };

  return {
    subscribe: (changed) => {
      listeners.add(changed);
      if (listeners.size === 1) {
        lookedAt(true);
        unwatch = desk.store.watch(refresh);
      }
      fault = undefined;
      refresh();
      return () => {
        listeners.delete(changed);
        if (listeners.size > 0) return;
        unwatch?.();
        unwatch = undefined;
        lookedAt(false);
      };
    },
    get: () => {
      if (fault) throw fault.error;
      return answer?.value;
    },
    answered: () => (answer ?? fault) !== undefined,
  };
};
