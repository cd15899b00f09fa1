import { classesOf } from '../condition';
import type { FirmNeed } from '../firmness';
import { type Advice, adviceOf, type Life } from '../hold';
import type { FirstPass } from './firstPass';
import { holdFacts } from './holdFacts';
import { onlyRound } from './latestOnly';
import { type SculptureSummary, summaryOf } from './summary';
import { untilDay } from './untilDay';
import { urgencyFloorOf } from './urgencyFloor';

/** What a work comes to beside the others. */
export interface SecondPass {
  /** The latest round by need; null where there is none yet. */
  readonly need: FirmNeed | null;
  readonly summary: SculptureSummary;
  readonly advice: readonly Advice[];
  /** The first day on which something of both passes changes by its date alone; null where nothing does. */
  readonly until: string | null;
}

/** Classes, advice and place in the order of one work, with what all works together have taught. `today` is a calendar day. */
export const secondPass = (first: FirstPass, lives: readonly Life[], today: string): SecondPass => {
  const { record, round, score, clearlyWorse, holds, byNext } = first;
  const advice = adviceOf(record, holds, lives, today);
  const until = untilDay(first, advice, today);
  if (round === null || score === null) return { need: null, summary: summaryOf(record, null), advice, until };
  const { crossing, growth } = byNext;
  const options = {
    score,
    crossing,
    ...holdFacts(holds, advice),
    ...(clearlyWorse ? { clearlyWorse } : {}),
  };
  const classes = classesOf(record, round, options);
  const need = {
    record: onlyRound(record, round),
    score,
    classes,
    growth,
    urgencyFloor: urgencyFloorOf(record, round, options),
  };
  return { need, summary: summaryOf(record, need), advice, until };
};
