import { clearlyWorseGreen, previousComparable, thenAndNow } from '../change';
import { type SculptureScore, scoreRound } from '../condition';
import { holdsOf, type ZoneHolds } from '../hold';
import { latestRound, type SculptureRecord } from '../record';
import { scaleOf } from '../trade';
import { type ByNextRound, byNextRound, indexTrendsOf } from '../trend';
import { latestOnly } from './latestOnly';

/** What one work comes to by itself, whatever the others hold. */
export interface FirstPass {
  /** All of the work that later passes and screens read: the latest round whole, of the others their days. */
  readonly record: SculptureRecord;
  /** The round the figures come from, a thing name; null where nobody has looked yet. */
  readonly round: string | null;
  readonly score: SculptureScore | null;
  /** Zones whose green is clearly worse than in the last comparable round; null where nobody compared. */
  readonly clearlyWorse: ReadonlySet<string> | null;
  readonly holds: readonly ZoneHolds[];
  /** What the indices of its zones are expected to come to; told from all rounds, which later passes have no more. */
  readonly byNext: ByNextRound;
}

/** Everything of one work that does not rest on the other works. `today` is a calendar day. */
export const firstPass = (record: SculptureRecord, today: string): FirstPass => {
  const holds = holdsOf(record, today);
  const byNext = byNextRound(record, indexTrendsOf(record), scaleOf(record.scale).actionLevel);
  const latest = latestRound(record);
  if (!latest) return { record, round: null, score: null, clearlyWorse: null, holds, byNext };
  const { round: previous } = previousComparable(record, latest.thing);
  return {
    record: latestOnly(record, latest),
    round: latest.thing,
    score: scoreRound(record, latest.thing),
    clearlyWorse: previous ? clearlyWorseGreen(thenAndNow(record, previous.thing, latest.thing)) : null,
    holds,
    byNext,
  };
};
