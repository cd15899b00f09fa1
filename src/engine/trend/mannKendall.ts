export interface MannKendall {
  readonly n: number;
  /** Rising pairs less falling ones. */
  readonly s: number;
  /** S over the number of pairs, -1 to 1; ties count as neither. */
  readonly tau: number;
  /** Two-sided: the share of all orders of the same values, ties and all, whose S is at least as far from zero. In (0, 1]. */
  readonly p: number;
}

/**
 * Whether values that came one after the other rise or fall, by every pair of them; ties stay ties. With few rounds the normal form is
 * too coarse, so that p comes from the orders themselves, all of them: counted, not drawn.
 * Mann 1945, Econometrica 13:245-259; Kendall 1975, Rank Correlation Methods.
 */
export const mannKendall = (values: readonly number[]): MannKendall => {
  const n = values.length;
  let s = 0;
  values.forEach((earlier, i) => {
    for (const later of values.slice(i + 1)) s += Math.sign(later - earlier);
  });
  const ties = tiesOf(values);
  const shares = sharesOfFallingPairs(ties);
  const unlike = shares.length - 1;
  // S of an order is its unlike pairs less twice those that fall.
  const p = shares.reduce(
    (sum, share, falling) => sum + (Math.abs(unlike - 2 * falling) >= Math.abs(s) ? share : 0),
    0,
  );
  const pairs = (n * (n - 1)) / 2;
  return { n, s, tau: pairs > 0 ? s / pairs : 0, p: Math.min(1, p) };
};

/** How many times each value comes. */
const tiesOf = (values: readonly number[]): readonly number[] => {
  const times = new Map<number, number>();
  for (const value of values) times.set(value, (times.get(value) ?? 0) + 1);
  return [...times.values()];
};

/**
 * Place i of the answer is the share of all orders with i falling pairs. Values that are alike come into what is there together, and
 * how many pairs that makes fall is independent of what was there; those shares are Gauss's binomials, q^0 to q^(m t).
 */
export const sharesOfFallingPairs = (ties: readonly number[]): readonly number[] => {
  // The order in which they come changes nothing, and thousands of series share a few patterns.
  const pattern = [...ties].sort((a, b) => a - b);
  const key = pattern.join(' ');
  const already = counted.get(key);
  if (already) return already;
  let shares: readonly number[] = [1];
  let there = 0;
  for (const t of pattern) {
    shares = convolved(shares, gaussBinomial(there, t));
    there += t;
  }
  if (counted.size >= patternsKept) counted.clear();
  counted.set(key, shares);
  return shares;
};

const counted = new Map<string, readonly number[]>();
const patternsKept = 1000;

const convolved = (a: readonly number[], b: readonly number[]): number[] => {
  const sums = new Array<number>(a.length + b.length - 1).fill(0);
  a.forEach((x, i) => {
    b.forEach((y, j) => {
      sums[i + j] = (sums[i + j] as number) + x * y;
    });
  });
  return sums;
};

/** Coefficients of the Gaussian binomial of m + t over t, as shares: each factor (1 - q^(m + i)) / (1 - q^i) in turn. */
const gaussBinomial = (m: number, t: number): number[] => {
  const size = m * t + 1;
  let counts = [1, ...new Array<number>(size - 1).fill(0)];
  for (let i = 1; i <= t; i++) {
    const times = counts.map((count, j) => count - (j >= m + i ? (counts[j - m - i] as number) : 0));
    for (let j = i; j < size; j++) times[j] = (times[j] as number) + (times[j - i] as number);
    counts = times;
  }
  const all = counts.reduce((sum, count) => sum + count, 0);
  return counts.map((count) => count / all);
};

/** Variance of S where nothing rises or falls, with ties: [n(n-1)(2n+5) - sum t(t-1)(2t+5)] / 18. Kendall 1975. */
export const varianceOfS = (values: readonly number[]): number => {
  const of = (t: number): number => t * (t - 1) * (2 * t + 5);
  return (of(values.length) - tiesOf(values).reduce((sum, t) => sum + of(t), 0)) / 18;
};
