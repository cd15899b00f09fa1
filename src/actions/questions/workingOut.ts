import type { Desk, Known } from '../desk';
import { type Progress, progressOf, stopWork } from './keptSummaries';

export type { Progress as WorkingOut } from './keptSummaries';

const questions = new WeakMap<Desk['store'], Known<Progress | null>>();

/** How far the working out of figures is; null when nothing is under way. */
export const workingOut = (desk: Desk): Known<Progress | null> => {
  const known = questions.get(desk.store);
  if (known) return known;
  const made: Known<Progress | null> = {
    subscribe: (changed) => desk.store.watch(changed),
    get: () => progressOf(desk),
  };
  questions.set(desk.store, made);
  return made;
};

/** Leaves off. Figures not worked out by then come when they are next asked for. */
export const stopWorkingOut = (desk: Desk): void => stopWork(desk);
