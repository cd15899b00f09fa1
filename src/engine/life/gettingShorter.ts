import { pairSigns } from '../chance';
import type { Interval } from './interval';

export interface Shortening {
  readonly n: number;
  /** Pairs of which the later is surely shorter, less those of which it is surely longer; over all pairs. */
  readonly sum: number;
  /** Two-sided, over the orders the same intervals could have come in; in (0, 1]. */
  readonly p: number;
  readonly word: 'getting shorter' | 'looks shorter, not proven' | 'getting longer' | 'no sign of it' | 'too few';
  /** The last interval against the one before it; null where there are not two. */
  readonly lastPair: 'shorter than the last one' | 'longer than the last one' | 'overlap' | null;
}

/** From so many on, and with so little chance, the word "getting" stands. */
export const provenFrom = 5;
export const provenChance = 0.05;

/** True where all of b lies before all of a. A life over at 4 and one over in (4, 6] may not share 4, two over at 4 do. */
const surelyShorter = (a: Interval, b: Interval): boolean =>
  b.upper < a.lower || (b.upper === a.lower && a.lower < a.upper);

/** 1 where j is surely the shorter, -1 where it is surely the longer, 0 where they overlap. */
export const signOf = (i: Interval, j: Interval): number => (surelyShorter(i, j) ? 1 : surelyShorter(j, i) ? -1 : 0);

/**
 * 1 where both ends of j lie further to the left: a lean, and no proof. An end at zero or at no end at all leans nowhere: it stands
 * where the looks stopped, and two yearly rounds a few days apart are no sign of anything.
 */
const leanOf = (i: Interval, j: Interval): number => {
  const [ends, starts] = [i.upper - j.upper, i.lower - j.lower];
  if (!(ends * starts > 0)) return 0;
  return Math.sign(ends);
};

/**
 * Whether lives, in the order they came, get shorter. Proven only by the permutation test on all pairs that do not overlap, from five
 * lives on; a lean of overlapping ones to the left is called a look and nothing more. `seed` is used where there are too many orders.
 */
export const gettingShorter = (inOrder: readonly Interval[], seed: number): Shortening => {
  const n = inOrder.length;
  const at = (i: number): Interval => inOrder[i] as Interval;
  const { sum, p } = pairSigns(n, (i, j) => signOf(at(i), at(j)), seed);
  const last = n < 2 ? null : signOf(at(n - 2), at(n - 1));
  const lastPair =
    last === null ? null : last > 0 ? 'shorter than the last one' : last < 0 ? 'longer than the last one' : 'overlap';
  return { n, sum, p, lastPair, word: wordOf(inOrder, sum, p) };
};

const wordOf = (inOrder: readonly Interval[], sum: number, p: number): Shortening['word'] => {
  if (inOrder.length < 2) return 'too few';
  if (inOrder.length >= provenFrom && p <= provenChance) return sum > 0 ? 'getting shorter' : 'getting longer';
  const lean = inOrder.reduce(
    (all, later, j) => all + inOrder.slice(0, j).reduce((some, earlier) => some + leanOf(earlier, later), 0),
    0,
  );
  return lean > 0 ? 'looks shorter, not proven' : 'no sign of it';
};
