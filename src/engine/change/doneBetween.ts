import { dayRange, type Reason, type SculptureRecord, type Thing } from '../record';
import { treatments } from '../trade';
import { because } from './reasonCodes';
import type { Done } from './verdict';

type Round = Thing<'round'>;

/** Work done on the day of a round lies after a look made before the wash, and before one made after it. */
const looksBeforeWork = (round: Round): boolean =>
  round.body.washed === 'before wash' && round.body.type !== 'after treatment';

/**
 * Treatments between two rounds (first the earlier by date) that touch any of the zones; a treatment that names no zone
 * touches them all. One whose vague date only may lie between has `sure: false`.
 */
export const doneBetween = (
  record: SculptureRecord,
  first: Round,
  second: Round,
  zones: ReadonlySet<string>,
): Done[] => {
  const after = (d: string) => d > first.body.date || (looksBeforeWork(first) && d === first.body.date);
  const before = (d: string) => d < second.body.date || (!looksBeforeWork(second) && d === second.body.date);
  return record.treatments
    .filter(({ body }) => body.zones.length === 0 || body.zones.some((z) => zones.has(z)))
    .map(({ thing, body }) => ({ thing, body, range: dayRange(body.date) }))
    .filter(({ range }) => after(range.to) && before(range.from))
    .sort((a, b) => a.range.from.localeCompare(b.range.from) || a.thing.localeCompare(b.thing))
    .map(({ thing, body, range }) => ({
      treatment: thing,
      type: body.type,
      date: body.date,
      sure: after(range.from) && before(range.to),
      breaksSeries: treatments.find((t) => t.id === body.type)?.breaksSeries ?? false,
    }));
};

/**
 * A verdict stands across a treatment that breaks the series: the surface did change, and a work that is greener after a
 * campaign than before it is what the reader most needs to hear. But such a pair does not tell how care goes on, so that
 * each verdict across it says what was done, and the later sums of a trend leave it out.
 */
export const doneReasons = (done: readonly Done[]): Reason[] =>
  done.map(({ type, date, sure, breaksSeries }) => {
    const params = { treatment: type, date };
    if (breaksSeries)
      return sure ? because('change: series broken', params) : because('change: series perhaps broken', params);
    return sure ? because('change: done between', params) : because('change: perhaps done between', params);
  });
