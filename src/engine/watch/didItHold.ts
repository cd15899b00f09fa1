import type { Hold, ZoneHolds } from '../hold';
import type { Reason } from '../record';
import { because } from './reasonCodes';
import type { Treated } from './watchPlan';

/** Months under the level: not more than `high`, at least `low`; `high` null where it was not seen to come back. */
export interface MonthsHeld {
  readonly low: number;
  readonly high: number | null;
}

/**
 * How one zone held since a treatment, beside what it held before. 'longer', 'shorter': the intervals do not overlap. 'not sure':
 * they do. 'too early': it is still clear, and not yet longer than before. No cause is named.
 */
export interface ZoneHeld {
  readonly zone: string;
  readonly since: MonthsHeld | null;
  /** The last holds before it, the last first. */
  readonly before: readonly (MonthsHeld & { readonly start: string })[];
  readonly word: 'longer' | 'shorter' | 'not sure' | 'too early' | 'nothing to compare';
  readonly reasons: readonly Reason[];
}

/** Holds before the treatment that are shown beside it. */
const shown = 3;

const held = ({ lower, upper }: Hold): MonthsHeld => ({ low: lower, high: upper });

const wordOf = (since: MonthsHeld, before: readonly MonthsHeld[]): ZoneHeld['word'] => {
  if (before.length === 0) return 'nothing to compare';
  if (before.every(({ high }) => high !== null && since.low >= high)) return 'longer';
  const { high } = since;
  if (high === null) return 'too early';
  return before.every(({ low }) => high <= low) ? 'shorter' : 'not sure';
};

/** The coating that went on with the treatment, or first after it. */
const firstAfter = (holds: readonly Hold[], began: string): Hold | undefined =>
  holds.find(({ start }) => start >= began);

/**
 * Did it hold? For each treated zone the months under the return level since the treatment against the months before. `began` is the
 * first day of the treatment; only the hold of its own coating counts, not of those that came after.
 */
export const didItHold = (
  zones: readonly ZoneHolds[],
  { ended, zones: treated }: Treated,
  began: string,
): readonly ZoneHeld[] =>
  zones
    .filter(({ zone }) => treated.length === 0 || treated.includes(zone))
    .map(({ zone, holds, noHolds }): ZoneHeld => {
      const before = holds
        .filter(({ start }) => start < began)
        .reverse()
        .slice(0, shown)
        .map((hold) => ({ ...held(hold), start: hold.start }));
      const told = before.map(({ low, high, start }) =>
        because('held: before', { first: low, last: high ?? '', date: start }),
      );
      const noBefore = told.length > 0 ? told : [because('held: nothing before')];
      const own = firstAfter(holds, began);
      if (!own) {
        const unclean = noHolds.find(({ start }) => start >= began);
        const why = unclean
          ? because('held: no clean start', { date: unclean.start })
          : because('held: no coating since', { date: ended });
        return { zone, since: null, before, word: 'nothing to compare', reasons: [why, ...noBefore] };
      }
      const since = held(own);
      const first =
        own.lastClear === null && own.firstSeen === null
          ? because('held: nobody looked since', { date: own.start })
          : own.firstSeen === null
            ? because('held: still clear', { last: own.lastClear ?? '' })
            : because('held: back between', { first: own.lastClear ?? own.start, last: own.firstSeen });
      return { zone, since, before, word: wordOf(since, before), reasons: [first, ...noBefore] };
    });
