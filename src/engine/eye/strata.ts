import { type Drawn, shuffle } from '../chance';

/** Shares from and to, 0 to 1, one patch in each: six of twelve under 10 %, for there the green comes back and there eyes err most. */
export const strata: readonly (readonly [from: number, to: number])[] = [
  [0.004, 0.009],
  [0.011, 0.019],
  [0.021, 0.035],
  [0.035, 0.055],
  [0.055, 0.08],
  [0.08, 0.099],
  [0.105, 0.15],
  [0.15, 0.22],
  [0.22, 0.32],
  [0.32, 0.45],
  [0.45, 0.6],
  [0.62, 0.85],
];

/** One share from each stratum, even on the logarithm, in an order that tells nothing. */
export const drawShares = (drawn: Drawn): readonly number[] =>
  shuffle(
    strata.map(([from, to]) => from * (to / from) ** drawn.uniform()),
    drawn,
  );
