import type { Desk, Known } from '../desk';
import { goOn, leaveOff, progressOf, type WorkingOut } from './figures';

const questions = new WeakMap<Desk['store'], Known<WorkingOut | null>>();

/** What is being worked out beside the page and how far it is; null when nothing is. */
export const workingOut = (desk: Desk): Known<WorkingOut | null> => {
  const known = questions.get(desk.store);
  if (known) return known;
  const made: Known<WorkingOut | null> = {
    subscribe: (changed) => desk.store.watch(changed),
    get: () => progressOf(desk),
  };
  questions.set(desk.store, made);
  return made;
};

/** Leaves off. What was worked out by then is kept. */
export const stopWorkingOut = (desk: Desk): void => leaveOff(desk);

/** Goes on with what was left off. */
export const goOnWorkingOut = (desk: Desk): void => goOn(desk);
