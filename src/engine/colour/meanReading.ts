import { ciede2000 } from './ciede2000';
import { colourNumbers } from './colourNumbers';
import type { Lab } from './lab';

/** What several placings of the instrument on one spot come to. */
export interface MeanReading {
  /** Placings. */
  readonly n: number;
  readonly mean: Lab;
  /** Standard deviation of each figure; null for one placing. */
  readonly sd: Lab | null;
  /** How far a single placing lies from the mean, root mean square in units of CIEDE2000 (n - 1 below the line); null for one placing. */
  readonly spread: number | null;
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, x) => total + x, 0);

const middle = (values: readonly Lab[]): Lab => ({
  L: sum(values.map(({ L }) => L)) / values.length,
  a: sum(values.map(({ a }) => a)) / values.length,
  b: sum(values.map(({ b }) => b)) / values.length,
});

/** Mean and spread of at least one placing. */
export const meanReading = (values: readonly Lab[]): MeanReading => {
  const n = values.length;
  if (n === 0) throw new RangeError('A reading has no placing.');
  const mean = middle(values);
  if (n === 1) return { n, mean, sd: null, spread: null };
  const sdOf = (axis: keyof Lab) => Math.sqrt(sum(values.map((value) => (value[axis] - mean[axis]) ** 2)) / (n - 1));
  return {
    n,
    mean,
    sd: { L: sdOf('L'), a: sdOf('a'), b: sdOf('b') },
    spread: Math.sqrt(sum(values.map((value) => ciede2000(value, mean) ** 2)) / (n - 1)),
  };
};

/** Places, counted from 0, of values that lie far from the mean of all others: a slip in typing, or the instrument tilted. Needs three. */
export const strayPlacings = (values: readonly Lab[]): readonly number[] => {
  if (values.length < 3) return [];
  const far = values.map((value, i) => ciede2000(value, middle(values.filter((_, j) => j !== i))));
  const most = Math.max(...far);
  // One wild value draws the mean of the others off with it: only the wildest is named.
  return most > colourNumbers.stray.value ? [far.indexOf(most)] : [];
};
