import type { Store } from '../device/store';

const last = new WeakMap<Store, Promise<unknown>>();

/**
 * Deeds of one store run one after the other: a deed reads the leading entries it replaces, so that two taps in haste
 * must not both replace the same one and make two versions of a thing on a single tablet.
 */
export const inTurn = <T>(store: Store, work: () => Promise<T>): Promise<T> => {
  const before = last.get(store) ?? Promise.resolve();
  const mine = before.then(work, work);
  last.set(
    store,
    mine.catch(() => undefined),
  );
  return mine;
};
