import type { Counted } from './interval';

/** Value and slopes of the log-likelihood in the logarithm of the scale, the shape held. */
export interface LikelihoodAt {
  readonly value: number;
  readonly slope: number;
  readonly bend: number;
}

/** An interval with the logarithms of its ends: they do not change while shape and scale are sought. */
export interface Prepared {
  readonly times: number;
  /** -Infinity for 0. */
  readonly logLower: number;
  /** Infinity where the end was not seen. */
  readonly logUpper: number;
  readonly exact: boolean;
}

export const prepared = (rows: readonly Counted[]): readonly Prepared[] =>
  rows.map(({ lower, upper, times }) => ({
    times,
    logLower: Math.log(lower),
    logUpper: Math.log(upper),
    exact: lower === upper,
  }));

/** No likelihood at all, and the way to some. */
const impossible = (way: 1 | -1): LikelihoodAt => ({
  value: Number.NEGATIVE_INFINITY,
  slope: way * Number.POSITIVE_INFINITY,
  bend: -1,
});

/** x / (e^x - 1), and 1 at 0. */
const overGrowth = (x: number): number => (x < 1e-8 ? 1 - x / 2 : x / Math.expm1(x));

/**
 * Log-likelihood of Weibull lives S(t) = exp(-(t / scale)^shape), for shape > 0 and m = log(scale).
 * An interval adds log(S(lower) - S(upper)) = -a + log(1 - e^-(b - a)) with a, b the cumulated hazard at its ends; an exact time log f.
 * Slope and bend are taken along m. In m the sum bends down everywhere, so that one way up leads to the top.
 */
export const likelihoodAt = (rows: readonly Prepared[], shape: number, m: number): LikelihoodAt => {
  let value = 0;
  let slope = 0;
  let bend = 0;
  for (const { times, logLower, logUpper, exact } of rows) {
    // Cumulated hazard at an end; its slope along m is -shape times itself.
    const a = logLower === Number.NEGATIVE_INFINITY ? 0 : Math.exp(shape * (logLower - m));
    // So early a scale that nothing could have lasted: on.
    if (a === Number.POSITIVE_INFINITY) return impossible(1);
    if (exact) {
      value += times * (Math.log(shape) + shape * (logLower - m) - logLower - a);
      slope += times * shape * (a - 1);
      bend -= times * shape * shape * a;
      continue;
    }
    value -= times * a;
    slope += times * shape * a;
    bend -= times * shape * shape * a;
    if (logUpper === Number.POSITIVE_INFINITY) continue;
    const b = Math.exp(shape * (logUpper - m));
    const d = b - a;
    // So late a scale that no hazard is left between the ends: back.
    if (d <= 0) return impossible(-1);
    // All is over by then: the upper end weighs nothing.
    if (d > 700) continue;
    const share = overGrowth(d);
    // log(1 - e^-d), by the way that keeps its digits.
    value += times * (d > Math.LN2 ? Math.log1p(-Math.exp(-d)) : Math.log(-Math.expm1(-d)));
    slope -= times * shape * share;
    bend += times * shape * shape * share * (1 - d - share);
  }
  return { value, slope, bend };
};
