import { hasEnd, type Interval, type Redraw, redraws, returnTime, turnbull, weibull } from '../life';
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

const figure = (value: number, draws: readonly Redraw[], of: (draw: Redraw) => number): OpenFigure => {
  const { low, high, reasons } = rangeOver(draws, of);
  // A draw is another collection: its range may miss the value by a hair, and a range that does would be misread.
  return {
    value,
    low: low === null ? null : Math.min(low, value),
    high: high === null ? null : Math.max(high, value),
    reasons,
  };
};

/** The share of a fit's lives that last beyond a time in months, as a 90 % range over its draws. */
export const bandAt = ({ draws }: Fit, months: number): { readonly low: number; readonly high: number } => {
  const sorted = draws
    .map(({ shape, scale }) => (scale === 0 ? 0 : Math.exp(-((months / scale) ** shape))))
    .sort((a, b) => a - b);
  const outside = (1 - holdNumbers.rangeLevel.value) / 2;
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  return { low: at(outside), high: at(1 - outside) };
};

interface Fitted {
  readonly fit: Fit | null;
  readonly reasons: readonly Reason[];
}

/** Where every end was found at the first look after the coating, that says more to a person than what it does to a likelihood. */
const noMaximum = (intervals: readonly Interval[], ends: number, reason: Reason): Reason[] => {
  if (ends === 0 || intervals.some((one) => hasEnd(one) && one.lower > 0)) return [reason];
  const unseen = because('hold: no look in between', { ends });
  return reason.code === 'life: never seen lasting' ? [unseen] : [unseen, reason];
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
  if (own.ok && few.length === 0) return { fit: drawnAnew('own', own.shape.value, own.scale.value), reasons: [] };
  const why: readonly Reason[] = own.ok ? few : [...few, ...noMaximum(intervals, ends, own.reason)];
  if (borrow === 'is the whole') return { fit: null, reasons: why };
  if (!borrow) return { fit: null, reasons: [...why, because('hold: nothing to borrow')] };
  const borrowed = weibull(intervals, { shape: borrow.shape });
  if (!borrowed.ok) return { fit: null, reasons: [...few, ...noMaximum(intervals, ends, borrowed.reason)] };
  const { shape, holds, ends: endsThere } = borrow;
  return {
    fit: drawnAnew('borrowed', shape, borrowed.scale.value),
    reasons: [...why, because('hold: shape borrowed', { shape, holds, ends: endsThere })],
  };

  function drawnAnew(from: Fit['from'], shape: number, scale: number): Fit {
    const grain = intervals.length > holdNumbers.grainFrom.value ? holdNumbers.grain.value : 0;
    const draws = redraws(
      clusters,
      { shape, scale },
      { draws: holdNumbers.draws.value, seed, shapeHeld: from === 'borrowed', grain },
    );
    const given: OpenFigure = { value: shape, low: null, high: null, reasons: [] };
    return {
      from,
      shape: from === 'borrowed' ? given : figure(shape, draws, (draw) => draw.shape),
      scale: figure(scale, draws, (draw) => draw.scale),
      draws,
    };
  }
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
  const { fit, reasons } = fitOf(told, borrow, seed);
  if (!fit) return { ...counts, turnbull: turnbull(intervals), fit: null, median: null, reasons };
  const toHalf = (draw: Redraw): number => returnTime(draw, 0, half);
  const median = figure(toHalf({ shape: fit.shape.value, scale: fit.scale.value }), fit.draws, toHalf);
  const draws = because('hold: zones drawn anew', { draws: fit.draws.length, zones: counts.zones });
  return { ...counts, turnbull: turnbull(intervals), fit, median, reasons: [...reasons, draws] };
};
