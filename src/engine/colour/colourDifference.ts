import { fQuantile } from '../chance';
import type { Reason } from '../record';
import { ciede2000 } from './ciede2000';
import { colourNumbers } from './colourNumbers';
import type { Lab } from './lab';
import type { MeanReading } from './meanReading';
import { because } from './reasonCodes';

/** How far one colour lies from another, in units of CIEDE2000, with the range that the spread of the placings leaves. */
export interface ColourDifference {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly reasons: readonly Reason[];
  /** What it is made of, the later less the earlier: lighter +, redder +, yellower +. */
  readonly parts: Lab;
}

export interface NotCompared {
  readonly refused: readonly Reason[];
}

export type Compared = ColourDifference | NotCompared;

export const isCompared = (compared: Compared): compared is ColourDifference => 'value' in compared;

/** The one the other is held against: placings with a spread, or a colour that holds as it was written down. */
type Held = MeanReading | { readonly agreed: Lab };

/**
 * Difference of two means with its 90 % range: the value, and as much to either side as an F of 3 and n1 + n2 - 2 degrees allows on the
 * pooled spread of single placings (three figures differ at once, so a t of one figure would cry change too often). A colour that
 * was agreed has no error of its own. Whether the two may be compared at all is asked before (`comparable`).
 */
export const colourDifference = (from: Held, to: MeanReading): ColourDifference => {
  const start = 'agreed' in from ? from.agreed : from.mean;
  const value = ciede2000(start, to.mean);
  const { radius, reasons } = play('agreed' in from ? [to] : [from, to]);
  const few = Math.min(to.n, 'agreed' in from ? to.n : from.n);
  const { fewestPlacings, large } = colourNumbers;
  return {
    value,
    low: Math.max(0, value - radius),
    high: value + radius,
    parts: { L: to.mean.L - start.L, a: to.mean.a - start.a, b: to.mean.b - start.b },
    reasons: [
      ...reasons,
      ...(few < fewestPlacings.value
        ? [because('colour: few placings', { n: few, fewest: fewestPlacings.value })]
        : []),
      ...(value > large.value ? [because('colour: too far apart for the formula', { limit: large.value })] : []),
    ],
  };
};

/** How far placing alone may move the difference. */
const play = (readings: readonly MeanReading[]): { readonly radius: number; readonly reasons: readonly Reason[] } => {
  const free = readings.reduce((sum, { n }) => sum + n - 1, 0);
  const squares = readings.reduce((sum, { n, spread }) => sum + (n - 1) * (spread ?? 0) ** 2, 0);
  const share = readings.reduce((sum, { n }) => sum + 1 / n, 0);
  const { freePlacings, assumedSpread, rangeLevel } = colourNumbers;
  const known = free >= freePlacings.value;
  const own = free > 0 ? Math.sqrt(squares / free) : 0;
  const spread = known ? own : Math.max(own, assumedSpread.value);
  const f = fQuantile(rangeLevel.value, 3, known ? free : manyDegrees);
  return {
    radius: Math.sqrt(f * share) * spread,
    reasons: [because(known ? 'colour: spread of placings' : 'colour: spread assumed', { spread })],
  };
};

/** An assumed spread is taken for known: as good as no end of degrees. */
const manyDegrees = 1e6;
