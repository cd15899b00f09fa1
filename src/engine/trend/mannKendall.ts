import { pairSigns } from '../chance';

export interface MannKendall {
  readonly n: number;
  /** Rising pairs less falling ones. */
  readonly s: number;
  /** S over the number of pairs, -1 to 1; ties count as neither. */
  readonly tau: number;
  /** Two-sided, by permutation: exact up to nine values, else over seeded orders. In (0, 1]. */
  readonly p: number;
  readonly exact: boolean;
}

/**
 * Whether values that came one after the other rise or fall, by every pair of them; ties stay ties. With few rounds the normal form is
 * too coarse, so that p comes from the orders themselves. Mann 1945, Econometrica 13:245-259; Kendall 1975, Rank Correlation Methods.
 */
export const mannKendall = (values: readonly number[], seed: number): MannKendall => {
  const n = values.length;
  const { sum, p, exact } = pairSigns(n, (i, j) => Math.sign((values[j] as number) - (values[i] as number)), seed);
  const pairs = (n * (n - 1)) / 2;
  return { n, s: sum, tau: pairs > 0 ? sum / pairs : 0, p, exact };
};

/** Variance of S where nothing rises or falls, with ties: [n(n-1)(2n+5) - sum t(t-1)(2t+5)] / 18. Kendall 1975. */
export const varianceOfS = (values: readonly number[]): number => {
  const n = values.length;
  const times = new Map<number, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  const of = (t: number): number => t * (t - 1) * (2 * t + 5);
  return (of(n) - [...times.values()].reduce((sum, t) => sum + of(t), 0)) / 18;
};
