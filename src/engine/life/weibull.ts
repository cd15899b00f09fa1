import type { Reason } from '../record';
import { counted, hasEnd, type Interval } from './interval';
import { because } from './reasonCodes';
import { topOf, zeroTowards } from './search';
import { likelihoodAt, type Prepared, prepared } from './weibullLikelihood';

/** A number with its 90 % profile-likelihood limits; a limit is null where the data set none. */
export interface Limited {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** Weibull lives S(t) = exp(-(t / scale)^shape); scale and median in the unit of the intervals. */
export interface WeibullFit {
  readonly ok: true;
  readonly shape: Limited;
  readonly scale: Limited;
  readonly median: Limited;
  readonly logLikelihood: number;
  /** True where the shape was given and not found here. */
  readonly borrowed: boolean;
  /** Which limits are missing, and why. */
  readonly reasons: readonly Reason[];
}

export type Weibull = WeibullFit | { readonly ok: false; readonly reason: Reason };

/** Half the 90 % point of chi squared with one degree of freedom. */
export const profileDrop = 2.705543454095404 / 2;
const ln2 = Math.log(2);
/** Shapes looked through, as logarithms: 0.02 to 400. */
const [flattest, steepest] = [Math.log(0.02), Math.log(400)];
/** How far a limit is looked for beside its value, as a logarithm: a factor of a million. */
const farthest = Math.log(1e6);

/**
 * Fits Weibull lives to intervals by maximum likelihood, exact, left-, right- and interval-censored together; limits by profile
 * likelihood. With `shape` given only the scale is sought. Where the likelihood has no maximum there is no fit, and the reason says
 * what is missing: a number run away to a boundary is never given.
 */
export const weibull = (intervals: readonly Interval[], options: { readonly shape?: number } = {}): Weibull => {
  const rows = prepared(counted(intervals));
  const none = noMaximum(intervals, options.shape !== undefined);
  if (none) return { ok: false, reason: none };
  return options.shape === undefined ? bothSought(rows) : scaleSought(rows, options.shape);
};

const noMaximum = (intervals: readonly Interval[], shapeGiven: boolean): Reason | undefined => {
  if (intervals.length === 0) return because('life: no interval');
  const ends = intervals.filter(hasEnd);
  if (ends.length === 0) return because('life: no end seen', { n: intervals.length });
  if (intervals.every(({ lower }) => lower === 0)) return because('life: never seen lasting', { n: intervals.length });
  if (shapeGiven) return undefined;
  if (intervals.length === 1) return because('life: one interval only');
  const latestStart = Math.max(...intervals.map(({ lower }) => lower));
  const earliestEnd = Math.min(...intervals.map(({ upper }) => upper));
  // One moment fits them all: the steeper the curve there, the likelier, without end.
  if (latestStart <= earliestEnd)
    return because('life: all share a stretch', { n: intervals.length, from: latestStart, to: earliestEnd });
  return undefined;
};

/** Top of the likelihood over log(scale), the shape held: it bends down everywhere, so that Newton, kept in a bracket, finds it. */
const bestScale = (rows: readonly Prepared[], shape: number, start: number) => {
  let m = start;
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  let at = likelihoodAt(rows, shape, m);
  for (let i = 0; i < 200; i++) {
    if (at.slope > 0) low = m;
    else high = m;
    // Far from the top the slope is flat or endless: then one hazard-folding stride, the length of which hangs on the shape.
    const stride = 3 / shape;
    const newton = at.bend < 0 ? -at.slope / at.bend : Number.NaN;
    let next = m + Math.max(-stride, Math.min(stride, Number.isFinite(newton) ? newton : Math.sign(at.slope) * stride));
    if ((next <= low || next >= high) && high - low < Number.POSITIVE_INFINITY) next = (low + high) / 2;
    const moved = Math.abs(next - m);
    m = next;
    at = likelihoodAt(rows, shape, m);
    if (moved < 1e-12 * (1 + Math.abs(m))) break;
  }
  return { m, value: at.value };
};

/** Where lives end, roughly: the middle of what is known of them, as logarithms. */
const startOf = (rows: readonly Prepared[]): number => {
  const known = rows.flatMap(({ logLower, logUpper, times }) => {
    const at = [logLower, logUpper].filter(Number.isFinite);
    return at.length > 0 ? [{ at: at.reduce((sum, x) => sum + x, 0) / at.length, times }] : [];
  });
  const n = known.reduce((sum, { times }) => sum + times, 0);
  return known.reduce((sum, { at, times }) => sum + at * times, 0) / n;
};

const exps = (value: number, low: number | null, high: number | null): Limited => ({
  value: Math.exp(value),
  low: low === null ? null : Math.exp(low),
  high: high === null ? null : Math.exp(high),
});

const missing = (named: Readonly<Record<string, Limited>>): readonly Reason[] =>
  Object.entries(named).flatMap(([what, { low, high }]) => [
    ...(low === null ? [because('life: no lower limit', { what })] : []),
    ...(high === null ? [because('life: no upper limit', { what })] : []),
  ]);

/** Both limits of a profile: where it has come down by the drop, on each side of the top. */
const limitsOf = (
  profile: (x: number) => number,
  at: number,
  top: number,
  [least, most] = [at - farthest, at + farthest],
): [number | null, number | null] => {
  const over = (x: number): number => profile(x) - top + profileDrop;
  return [zeroTowards(over, at, least, 0.1), zeroTowards(over, at, most, 0.1)];
};

const scaleSought = (rows: readonly Prepared[], shape: number): Weibull => {
  const { m, value } = bestScale(rows, shape, startOf(rows));
  const [low, high] = limitsOf((at) => likelihoodAt(rows, shape, at).value, m, value);
  const scale = exps(m, low, high);
  const toMedian = Math.log(ln2) / shape;
  const median = exps(m + toMedian, low === null ? null : low + toMedian, high === null ? null : high + toMedian);
  return {
    ok: true,
    shape: { value: shape, low: null, high: null },
    scale,
    median,
    logLikelihood: value,
    borrowed: true,
    reasons: [because('life: shape borrowed', { shape }), ...missing({ scale, median })],
  };
};

const bothSought = (rows: readonly Prepared[]): Weibull => {
  const start = startOf(rows);
  const profile = (logShape: number): number => bestScale(rows, Math.exp(logShape), start).value;
  // Looked through from flat to steep first, since a profile may have more than one top.
  const shapes = Array.from({ length: 41 }, (_, i) => flattest + ((steepest - flattest) * i) / 40);
  const heights = shapes.map(profile);
  const highest = heights.reduce((best, height, i) => (height > (heights[best] as number) ? i : best), 0);
  const atEnd = highest === 0 || highest === shapes.length - 1;
  if (atEnd || (heights[highest] as number) <= flatLimit(rows))
    return { ok: false, reason: because('life: no maximum', { n: countOf(rows) }) };
  const top = topOf(profile, shapes[highest - 1] as number, shapes[highest + 1] as number, shapes[highest] as number);
  if (top.value <= flatLimit(rows) + 1e-9)
    return { ok: false, reason: because('life: no maximum', { n: countOf(rows) }) };
  const k = top.at;
  const { m, value } = bestScale(rows, Math.exp(k), start);
  const shape = exps(k, ...limitsOf(profile, k, value, [flattest, steepest]));
  const heldAt = (mOf: (logShape: number) => number): number =>
    topOf((logShape) => likelihoodAt(rows, Math.exp(logShape), mOf(logShape)).value, flattest, steepest, k, 1e-8).value;
  const scale = exps(m, ...limitsOf((at) => heldAt(() => at), m, value));
  const toMedian = (logShape: number): number => Math.log(ln2) / Math.exp(logShape);
  const middle = m + toMedian(k);
  const median = exps(middle, ...limitsOf((at) => heldAt((logShape) => at - toMedian(logShape)), middle, value));
  return {
    ok: true,
    shape,
    scale,
    median,
    logLikelihood: value,
    borrowed: false,
    reasons: missing({ shape, scale, median }),
  };
};

const countOf = (rows: readonly Prepared[]): number => rows.reduce((sum, { times }) => sum + times, 0);

/**
 * What an ever flatter curve comes to: all mass at once or never. Only where each life was seen over at its first look, or not at all,
 * is that worth more than nothing.
 */
const flatLimit = (rows: readonly Prepared[]): number => {
  const over = rows.filter(({ logLower }) => logLower === Number.NEGATIVE_INFINITY);
  const lasting = rows.filter(({ logUpper, exact }) => logUpper === Number.POSITIVE_INFINITY && !exact);
  if (over.length + lasting.length < rows.length) return Number.NEGATIVE_INFINITY;
  const [a, b] = [countOf(over), countOf(lasting)];
  return a * Math.log(a / (a + b)) + b * Math.log(b / (a + b));
};

/** When the chance of an end reaches `chance`, given that there was none by `clearUntil`: (t0^k + s^k * -log(1 - q))^(1 / k). */
export const returnTime = (
  { shape, scale }: { readonly shape: number; readonly scale: number },
  clearUntil: number,
  chance: number,
): number => (clearUntil ** shape - scale ** shape * Math.log1p(-chance)) ** (1 / shape);
