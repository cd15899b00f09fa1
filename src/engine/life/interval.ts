/**
 * When something happened, as far as looks can tell: after `lower`, not after `upper`; any unit of time, measured from the start.
 * lower 0: seen at the first look already (left-censored). upper Infinity: not yet seen (right-censored). Equal ends: seen happen.
 */
export interface Interval {
  /** 0 or more, finite. */
  readonly lower: number;
  /** Not under `lower`, over 0; may be Infinity. */
  readonly upper: number;
}

export const isExact = ({ lower, upper }: Interval): boolean => lower === upper;
/** True where the end was seen: something happened before or at a known time. */
export const hasEnd = ({ upper }: Interval): boolean => upper < Number.POSITIVE_INFINITY;

/** The same interval once, with how many times it came: sums over thousands of looks are then short. */
export interface Counted extends Interval {
  readonly times: number;
}

/** A RangeError where an interval is none: a caller's mistake, since whoever reads a file has told the person before. */
export const counted = (intervals: readonly Interval[]): readonly Counted[] => {
  const rows = new Map<string, { lower: number; upper: number; times: number }>();
  for (const { lower, upper } of intervals) {
    if (!(lower >= 0 && lower < Number.POSITIVE_INFINITY && upper >= lower && upper > 0)) {
      throw new RangeError(`(${lower}, ${upper}] is no interval of a life.`);
    }
    const key = `${lower} ${upper}`;
    const row = rows.get(key);
    if (row) row.times++;
    else rows.set(key, { lower, upper, times: 1 });
  }
  return [...rows.values()].sort((a, b) => a.lower - b.lower || a.upper - b.upper);
};
