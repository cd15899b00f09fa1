import '../words/pastStart';
import type { Reason } from '../engine/record';
import { type NameOfThing, sayReason } from '../words';

export interface SaidReason extends Reason {
  /** The sentence a screen would show. */
  readonly says: string;
}

export type Say = (reasons: readonly Reason[]) => readonly SaidReason[];

/** Reasons with their sentences, things called by the names a person gave them. */
export const saidWith =
  (names: NameOfThing): Say =>
  (reasons) =>
    reasons.map((reason) => ({ ...reason, says: sayReason(reason, names) }));
