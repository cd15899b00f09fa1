import type { Known } from './desk';

let full = false;
const listeners = new Set<() => void>();

const set = (to: boolean): void => {
  if (full === to) return;
  full = to;
  for (const changed of listeners) changed();
};

/** A write was refused since the app was opened, because the tablet is full. The only gauge of space that does not guess. */
export const deviceFull: Known<boolean> = {
  subscribe: (changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  },
  get: () => full,
};

export const noteFull = (): void => set(true);

/** The person knows; or room was made. */
export const fullUnderstood = (): void => set(false);
