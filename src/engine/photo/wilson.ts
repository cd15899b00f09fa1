import { constants } from '../condition';

/** Shares of surety an interval is told at. */
export type Level = 0.9 | 0.95;

/** Standard deviations of a normal distribution to each end of an interval. */
export const reachOf = (level: Level): number => (level === 0.9 ? constants.z90.value : constants.z95.value);

/**
 * Wilson score interval of `x` hits in `n` trials, as shares 0 to 1. Nothing counted says nothing: 0 to 1.
 * Source: Newcombe 1998, Stat. Med. 17:857-872, method 3.
 */
export const wilson = (x: number, n: number, level: Level = 0.95): readonly [low: number, high: number] => {
  if (!(n >= 0 && x >= 0 && x <= n)) throw new RangeError(`Of ${n} dots, ${x} cannot lie on the finding: count again.`);
  if (n === 0) return [0, 1];
  const z = reachOf(level);
  const p = x / n;
  const z2 = z * z;
  const middle = (2 * n * p + z2) / (2 * (n + z2));
  const reach = (z * Math.sqrt(z2 + 4 * n * p * (1 - p))) / (2 * (n + z2));
  return [x === 0 ? 0 : middle - reach, x === n ? 1 : middle + reach];
};
