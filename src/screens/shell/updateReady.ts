import type { Question } from '../../actions';

let ready: (() => void) | undefined;
const listeners = new Set<() => void>();

/** A new version waits; `start` loads it. Told once by main.tsx. */
export const tellUpdateReady = (start: () => void): void => {
  ready = start;
  for (const changed of listeners) changed();
};

/** How to start the version that waits; undefined where none does. */
export const updateReady: Question<() => void> = {
  subscribe: (changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  },
  get: () => ready,
};
