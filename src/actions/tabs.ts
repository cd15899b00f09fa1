import type { Reason } from '../engine/record';
import type { Desk, Known, Outcome } from './desk';
import { attempt } from './outcome';

/** Whether this tab writes or only reads, and why. */
export interface TabState {
  readonly mode: 'writing' | 'reading';
  readonly why?: Reason;
  /** False where taking over would not help: the database is newer, or the data was removed. */
  readonly canTakeOver: boolean;
}

const states = new WeakMap<Desk['store'], TabState>();

const stateOf = ({ store }: Desk): TabState => {
  const known = states.get(store);
  if (known && known.mode === store.mode && known.why?.code === store.why?.code) return known;
  const state: TabState = {
    mode: store.mode,
    ...(store.why ? { why: store.why } : {}),
    canTakeOver: store.canTakeOver,
  };
  states.set(store, state);
  return state;
};

const questions = new WeakMap<Desk['store'], Known<TabState>>();

export const tabs = (desk: Desk): Known<TabState> => {
  const known = questions.get(desk.store);
  if (known) return known;
  const made: Known<TabState> = {
    subscribe: (changed) => desk.store.watchMode(changed),
    get: () => stateOf(desk),
  };
  questions.set(desk.store, made);
  return made;
};

/** This tab writes from now on; the other one is told and only reads. */
export const takeOver = (desk: Desk): Promise<Outcome> =>
  attempt(async () => {
    await desk.store.takeOver();
    return {};
  });
