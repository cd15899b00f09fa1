import { fQuantile } from '../chance';
import type { Figure, Reason } from '../record';
import { because } from './reasonCodes';

/** Which judges, and whether one of them or their mean: Shrout and Fleiss. */
export type IccForm = '(1,1)' | '(2,1)' | '(3,1)' | '(1,k)' | '(2,k)' | '(3,k)';

export interface Icc {
  readonly targets: number;
  readonly judges: number;
  readonly meanSquares: {
    readonly between: number;
    readonly within: number;
    readonly judges: number;
    readonly error: number;
  } | null;
  /** Each with its 90 % range; null where it cannot be told. */
  readonly forms: Readonly<Record<IccForm, Figure>> | null;
  readonly reasons: readonly Reason[];
}

const leastTargets = 3;

/**
 * The six intraclass correlations of ratings (rows targets, columns judges, none missing): Shrout and Fleiss 1979, Psychol. Bull.
 * 86:420-428, with their limits. (2,1) asks whether one judge could stand for another and counts a shift between them as difference.
 */
export const icc = (ratings: readonly (readonly number[])[], level = 0.9): Icc => {
  const n = ratings.length;
  const k = ratings[0]?.length ?? 0;
  const none = (reason: Reason): Icc => ({ targets: n, judges: k, meanSquares: null, forms: null, reasons: [reason] });
  if (n < leastTargets || k < 2) return none(because('agreement: too few', { n, least: leastTargets }));
  const mean = (row: readonly number[]): number => row.reduce((all, x) => all + x, 0) / row.length;
  const columns = Array.from({ length: k }, (_, j) => ratings.map((row) => row[j] as number));
  const grand = mean(ratings.flat());
  const squares = (rows: readonly (readonly number[])[]): number =>
    rows.reduce((all, row) => all + row.length * (mean(row) - grand) ** 2, 0);
  const whole = ratings.flat().reduce((all, x) => all + (x - grand) ** 2, 0);
  const [ofTargets, ofJudges] = [squares(ratings), squares(columns)];
  const bms = ofTargets / (n - 1);
  const wms = (whole - ofTargets) / (n * (k - 1));
  const jms = ofJudges / (k - 1);
  const error = whole - ofTargets - ofJudges;
  // What rounding leaves of a difference that is none.
  const ems = error > 1e-12 * whole ? error / ((n - 1) * (k - 1)) : 0;
  if (whole < 1e-12) return none(because('agreement: all alike', { n }));
  const tail = (1 + level) / 2;
  const figure = (value: number, low: number, high: number): Figure => ({
    value,
    low,
    high: Math.min(1, high),
    reasons: [],
  });
  // One judge from the ratio of mean squares; the mean of k judges follows from it.
  const single = (ratio: number): number => (Number.isFinite(ratio) ? (ratio - 1) / (ratio + k - 1) : 1);
  const ofMean = (one: number): number => (k * one) / (1 + (k - 1) * one);
  const byRatio = (error: number, degrees: number): Figure => {
    const ratio = bms / error;
    return figure(
      single(ratio),
      single(ratio / fQuantile(tail, n - 1, degrees)),
      single(ratio * fQuantile(tail, degrees, n - 1)),
    );
  };
  const averaged = ({ value, low, high }: Figure): Figure => figure(ofMean(value), ofMean(low), ofMean(high));
  const one = byRatio(wms, n * (k - 1));
  const three = byRatio(ems, (n - 1) * (k - 1));
  const two = random({ n, k, bms, jms, ems }, tail, figure);
  return {
    targets: n,
    judges: k,
    meanSquares: { between: bms, within: wms, judges: jms, error: ems },
    forms: {
      '(1,1)': one,
      '(2,1)': two,
      '(3,1)': three,
      '(1,k)': averaged(one),
      '(2,k)': averaged(two),
      '(3,k)': averaged(three),
    },
    reasons: [],
  };
};

interface Squares {
  readonly n: number;
  readonly k: number;
  readonly bms: number;
  readonly jms: number;
  readonly ems: number;
}

/** Judges drawn at random: the degrees of freedom of the error are made up of two mean squares (Satterthwaite). */
const random = (
  { n, k, bms, jms, ems }: Squares,
  tail: number,
  figure: (value: number, low: number, high: number) => Figure,
): Figure => {
  const value = (bms - ems) / (bms + (k - 1) * ems + (k * (jms - ems)) / n);
  if (ems === 0) {
    // Beside a shift that is the same everywhere nothing is left to chance: no degrees of freedom to make up.
    return figure(value, value, value);
  }
  const f = jms / ems;
  const a = n * (1 + (k - 1) * value) - k * value;
  const degrees = ((k - 1) * (n - 1) * (k * value * f + a) ** 2) / ((n - 1) * k ** 2 * value ** 2 * f ** 2 + a ** 2);
  const up = fQuantile(tail, n - 1, degrees);
  const down = fQuantile(tail, degrees, n - 1);
  const rest = k * jms + (k * n - k - n) * ems;
  const low = (n * (bms - up * ems)) / (up * rest + n * bms);
  const high = (n * (down * bms - ems)) / (rest + n * down * bms);
  return figure(value, low, high);
};
