import { median } from '../chance';
import { sharesOfFallingPairs } from './mannKendall';

export interface Point {
  readonly t: number;
  readonly y: number;
}

export interface TheilSen {
  /** Change of y for each unit of t: the median of the slopes of all pairs. */
  readonly slope: number;
  /** Ends of the interval of ranked slopes; the two outermost where the points are too few for the share asked for. */
  readonly low: number;
  readonly high: number;
  /** Share of the time such an interval holds the slope, as attained, exact by the orders of n values without ties. */
  readonly coverage: number;
  /** Through the medians of t and y (Conover 1971). */
  readonly intercept: number;
  /** Slopes there are: pairs at different times. */
  readonly slopes: number;
}

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

/**
 * Slope by Theil and Sen with the interval of ranked slopes: Sen 1968, J. Amer. Statist. Assoc. 63:1379-1389. With few points only
 * some coverages can be had: the narrowest interval that attains `wanted` is given with what it attains, or the widest there is.
 * Null where no two points differ in time.
 */
export const theilSen = (points: readonly Point[], wanted: number): TheilSen | null => {
  const slopes = points
    .flatMap((a, i) => points.slice(i + 1).map((b) => ({ run: b.t - a.t, rise: b.y - a.y })))
    .filter(({ run }) => run !== 0)
    .map(({ run, rise }) => rise / run)
    .sort((a, b) => a - b);
  if (slopes.length === 0) return null;
  const slope = median(slopes);
  const { left, coverage } = leftOut(points.length, slopes.length, wanted);
  return {
    slope,
    low: slopes[left] as number,
    high: slopes[slopes.length - 1 - left] as number,
    coverage,
    intercept: median(sorted(points.map(({ y }) => y))) - slope * median(sorted(points.map(({ t }) => t))),
    slopes: slopes.length,
  };
};

/** How many ranked slopes may be left out at each end: as many as keep the coverage wanted. */
const leftOut = (n: number, slopes: number, wanted: number): { left: number; coverage: number } => {
  const shares = sharesOfFallingPairs(new Array<number>(n).fill(1));
  // The interval from the slope of rank left + 1 misses the truth on one side where at most `left` pairs are out of order.
  let missed = 0;
  let best = { left: 0, coverage: 1 - 2 * (shares[0] as number) };
  for (let left = 0; left < slopes / 2; left++) {
    missed += shares[left] ?? 0;
    const coverage = 1 - 2 * missed;
    if (left > 0 && coverage < wanted) break;
    best = { left, coverage: Math.max(0, coverage) };
  }
  return best;
};
