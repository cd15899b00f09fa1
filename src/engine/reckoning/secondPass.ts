import { classesOf, type NeedOf } from '../condition';
import type { FirstPass } from './firstPass';
import { type SculptureSummary, summaryOf } from './summary';

/** What a work comes to beside the others. */
export interface SecondPass {
  /** The latest round by need; null where there is none yet. */
  readonly need: NeedOf | null;
  readonly summary: SculptureSummary;
  /** The first day on which something here changes by its date alone; null where nothing does. */
  readonly until: string | null;
}

/** Classes and place in the order of one work, with what all works together have taught. `today` is a calendar day. */
export const secondPass = (first: FirstPass, _today: string): SecondPass => {
  const { record, round, score, clearlyWorse } = first;
  if (round === null || score === null) return { need: null, summary: summaryOf(record, null), until: null };
  const classes = classesOf(record, round, { score, ...(clearlyWorse ? { clearlyWorse } : {}) });
  const need = { record, score, classes };
  return { need, summary: summaryOf(record, need), until: null };
};
