import type { Reason, SculptureRecord, Thing } from '../record';
import { because } from './reasonCodes';
import type { Comparable } from './verdict';

type Round = Thing<'round'>;

/** Rounds of one kind and state (type, washed, wet) may be compared; others only with a warning, whose reasons stand here. */
export const comparable = (earlier: Round, later: Round): Comparable => {
  const a = earlier.body;
  const b = later.body;
  const reasons: Reason[] = [];
  if (a.sculpture !== b.sculpture) reasons.push(because('change: other sculpture'));
  if (earlier.thing === later.thing) reasons.push(because('change: same round'));
  if (a.type !== b.type) reasons.push(because('change: other type of round', { earlier: a.type, later: b.type }));
  if (a.washed !== b.washed) reasons.push(because('change: other washing', { earlier: a.washed, later: b.washed }));
  if (a.wet !== b.wet) reasons.push(because('change: other wetness', { earlier: a.wet, later: b.wet }));
  return { ok: reasons.length === 0, reasons };
};

/** The round to compare with, or why there is none and the nearest earlier round that could be had with a warning. */
export interface PreviousComparable {
  readonly round?: Round;
  readonly instead?: Round;
  readonly reasons: readonly Reason[];
}

/** A round in which nothing was judged afresh has nothing to be compared with. */
const judgedAnything = (record: SculptureRecord, round: Round): boolean =>
  record.visits.some((v) => v.body.round === round.thing && (v.body.state === 'found' || v.body.state === 'nothing'));

/** Later date first; rounds of one day in the order of their names, so that the answer does not hang on the order of entries. */
const latestFirst = (a: Round, b: Round): number =>
  b.body.date.localeCompare(a.body.date) || (b.thing < a.thing ? -1 : b.thing > a.thing ? 1 : 0);

/** The latest round before this one, of its kind and state, in which something was judged afresh. `round` is a thing name. */
export const previousComparable = (record: SculptureRecord, round: string): PreviousComparable => {
  const here = record.rounds.find((r) => r.thing === round);
  if (!here) return { reasons: [because('change: no earlier round')] };
  const before = record.rounds
    .filter((r) => r.thing !== round && r.body.date < here.body.date && judgedAnything(record, r))
    .sort(latestFirst);
  const alike = before.find((r) => comparable(r, here).ok);
  if (alike) return { round: alike, reasons: [] };
  const instead = before[0];
  if (!instead) return { reasons: [because('change: no earlier round')] };
  return {
    instead,
    reasons: [
      because('change: earlier rounds are of another kind or state', { rounds: before.length }),
      ...comparable(instead, here).reasons,
    ],
  };
};

/**
 * The first round this one may be compared with: of its kind and state, of an earlier date, with something judged afresh. Undefined
 * where there is none. `round` is a thing name.
 */
export const firstComparable = (record: SculptureRecord, round: string): Round | undefined => {
  const here = record.rounds.find((r) => r.thing === round);
  if (!here) return undefined;
  return record.rounds
    .filter((r) => r.body.date < here.body.date && judgedAnything(record, r) && comparable(r, here).ok)
    .sort(latestFirst)
    .at(-1);
};
