import { constants } from './constants';
import type { Coverage } from './coverageError';

/**
 * Wilson score interval of `x` hits in `n` trials, as shares 0 to 1. `z` is 1.96 (95 %) unless said.
 * Source: Newcombe 1998, Stat. Med. 17:857-872, method 3. Nothing counted says nothing: 0 to 1.
 */
export const wilson = (
  x: number,
  n: number,
  z: number = constants.z95.value,
): { readonly low: number; readonly high: number } => {
  if (!(n >= 0 && x >= 0 && x <= n)) throw new RangeError(`Of ${n} dots, ${x} cannot lie on the finding: count again.`);
  if (n === 0) return { low: 0, high: 1 };
  const p = x / n;
  const z2 = z * z;
  const middle = (2 * n * p + z2) / (2 * (n + z2));
  const reach = (z * Math.sqrt(z2 + 4 * n * p * (1 - p))) / (2 * (n + z2));
  return { low: x === 0 ? 0 : middle - reach, high: x === n ? 1 : middle + reach };
};

/** Coverage from counted dots, with its 90 % range. */
export const dotsCoverage = (hits: number, dots: number): Coverage => {
  const range = wilson(hits, dots, constants.z90.value);
  return { value: dots === 0 ? 0 : hits / dots, low: range.low, high: range.high, method: 'dots' };
};
