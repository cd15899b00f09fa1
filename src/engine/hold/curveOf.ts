import {
  hasEnd,
  type Interval,
  type Limited,
  type Redraw,
  redraws,
  returnTime,
  turnbull,
  type WeibullFit,
  weibull,
} from '../life';
import type { Reason } from '../record';
import type { OpenFigure } from './hold';
import type { Fit, HoldCurve } from './life';
import { holdNumbers } from './numbers';
import { because } from './reasonCodes';

/** The shape of the whole collection, with what it rests on. */
export interface ToBorrow {
  readonly shape: number;
  readonly holds: number;
  readonly ends: number;
}

const half = 0.5;

/** The 90 % range of something each draw comes to; an end that runs away is null, and said. */
export const rangeOver = (
  draws: readonly Redraw[],
  of: (draw: Redraw) => number,
): Pick<OpenFigure, 'low' | 'high' | 'reasons'> => {
  const sorted = draws.map(of).sort((a, b) => a - b);
  const outside = (1 - holdNumbers.rangeLevel.value) / 2;
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? Number.NaN;
  const [low, high] = [at(outside), at(1 - outside)];
  const lowKnown = low > 0 && low < Number.POSITIVE_INFINITY;
  const highKnown = high < Number.POSITIVE_INFINITY;
  return {
    low: lowKnown ? low : null,
    high: highKnown ? high : null,
    reasons: [
      ...(lowKnown ? [] : [because('hold: no lower end in the draws')]),
      ...(highKnown ? [] : [because('hold: no upper end in the draws')]),
    ],
  };
};

/**
 * The wider of two ranges: over zones drawn anew, which knows how zones differ, and by profile likelihood, which knows how wide the
 * intervals are. A few zones that are alike would else look far surer than their intervals allow.
 */
const figure = ({ value, ...likely }: Limited, draws: readonly Redraw[], of: (draw: Redraw) => number): OpenFigure => {
  const { low, high, reasons } = rangeOver(draws, of);
  return {
    value,
    low: low === null || likely.low === null ? null : Math.min(low, likely.low, value),
    high: high === null || likely.high === null ? null : Math.max(high, likely.high, value),
    reasons,
  };
};

/** The share of a fit's lives that last beyond a time in months, as a 90 % range over its draws. */
export const bandAt = (
  { draws, shape, scale }: Fit,
  months: number,
): { readonly low: number; readonly high: number } => {
  const lasting = (one: Redraw): number => (one.scale === 0 ? 0 : Math.exp(-((months / one.scale) ** one.shape)));
  const likely = [scale.low, scale.high].flatMap((end) =>
    end === null ? [] : [lasting({ shape: shape.value, scale: end })],
  );
  const sorted = draws.map(lasting).sort((a, b) => a - b);
  const outside = (1 - holdNumbers.rangeLevel.value) / 2;
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  return { low: Math.min(at(outside), ...likely), high: Math.max(at(1 - outside), ...likely) };
};

interface Fitted {
  readonly fit: Fit | null;
  readonly median: OpenFigure | null;
  readonly reasons: readonly Reason[];
}

/** Where every end was found at the first look after the coating, that says more to a person than what it does to a likelihood. */
const noMaximum = (intervals: readonly Interval[], ends: number, reason: Reason): Reason[] => {
  if (ends === 0 || intervals.some((one) => hasEnd(one) && one.lower > 0)) return [reason];
  const unseen = because('hold: no look in between', { ends });
  return reason.code === 'life: never seen lasting' ? [unseen] : [unseen, reason];
};

const toHalf = (draw: Redraw): number => returnTime(draw, 0, half);

/** A fit with its ranges, the zones drawn anew. */
const drawnAnew = (clusters: readonly (readonly Interval[])[], found: WeibullFit, seed: number): Fitted => {
  const near: Redraw = { shape: found.shape.value, scale: found.scale.value };
  const large = clusters.reduce((sum, lives) => sum + lives.length, 0) > holdNumbers.grainFrom.value;
  const draws = redraws(clusters, near, {
    draws: holdNumbers.draws.value,
    seed,
    shapeHeld: found.borrowed,
    grain: large ? holdNumbers.grain.value : 0,
  });
  const fit: Fit = {
    from: found.borrowed ? 'borrowed' : 'own',
    shape: found.borrowed ? { ...found.shape, reasons: [] } : figure(found.shape, draws, (draw) => draw.shape),
    scale: figure(found.scale, draws, (draw) => draw.scale),
    draws,
  };
  const anew = because('hold: zones drawn anew', { draws: draws.length, zones: clusters.length });
  return { fit, median: figure(found.median, draws, toHalf), reasons: [anew] };
};

const fitOf = (
  clusters: readonly (readonly Interval[])[],
  borrow: ToBorrow | null | 'is the whole',
  seed: number,
): Fitted => {
  const intervals = clusters.flat();
  const ends = intervals.filter(hasEnd).length;
  const least = holdNumbers.endsForShape.value;
  const own = weibull(intervals);
  const few = ends < least ? [because('hold: too few ends', { ends, least })] : [];
  const none = (...reasons: Reason[]): Fitted => ({ fit: null, median: null, reasons });
  if (own.ok && few.length === 0) return drawnAnew(clusters, own, seed);
  const why: readonly Reason[] = own.ok ? few : [...few, ...noMaximum(intervals, ends, own.reason)];
  if (borrow === 'is the whole') return none(...why);
  if (!borrow) return none(...why, because('hold: nothing to borrow'));
  const borrowed = weibull(intervals, { shape: borrow.shape });
  if (!borrowed.ok) return none(...few, ...noMaximum(intervals, ends, borrowed.reason));
  const fitted = drawnAnew(clusters, borrowed, seed);
  return { ...fitted, reasons: [...why, because('hold: shape borrowed', { ...borrow }), ...fitted.reasons] };
};

/**
 * What the holds of some zones tell together, one list of intervals (months) for each zone. Under three zones there is no curve:
 * many holds of one zone are one zone's story. `borrow`: the collection's shape, null where there is none, 'is the whole' where this
 * is the collection itself.
 */
export const curveOf = (
  clusters: readonly (readonly Interval[])[],
  borrow: ToBorrow | null | 'is the whole',
  seed: number,
): HoldCurve => {
  const intervals = clusters.flat();
  const told = clusters.filter((lives) => lives.length > 0);
  const counts = { zones: told.length, holds: intervals.length, ends: intervals.filter(hasEnd).length };
  const least = holdNumbers.zonesForCurve.value;
  if (told.length < least) {
    const reasons = [because('hold: too few zones', { holds: counts.holds, zones: counts.zones, least })];
    return { ...counts, turnbull: null, fit: null, median: null, reasons };
  }
  return { ...counts, turnbull: turnbull(intervals), ...fitOf(told, borrow, seed) };
};
