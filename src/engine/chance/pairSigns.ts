import { drawnFrom, shuffle } from './seeded';

/** Whether things that came one after the other rise or fall, told by every pair of them. */
export interface PairSigns {
  readonly n: number;
  /** Sum of the signs over all pairs, earlier against later. */
  readonly sum: number;
  /** Two-sided: the share of orders of the same things whose sum is at least as far from zero. In (0, 1]. */
  readonly p: number;
  /** True where every order was tried; else orders were drawn by chance. */
  readonly exact: boolean;
}

/** Up to this many things all orders are tried: 9! = 362,880. */
const allOrdersUpTo = 9;
const drawnOrders = 20_000;
/**
 * After so many orders the drawing ends where the share reached is so far over or under 5 % that more would not bring it to the other
 * side (four standard deviations and more). Stopping in the manner of Besag and Clifford 1991, Biometrika 78:301-304; from memory.
 */
const looks: readonly { readonly orders: number; readonly over: number; readonly under: number }[] = [
  { orders: 250, over: 50, under: 0 },
  { orders: 1000, over: 80, under: 0 },
  { orders: 4000, over: 265, under: 140 },
];

/**
 * Permutation test on the signs of all pairs. `sign(i, j)` says how thing i stands to thing j: 1 where j is over i, -1 where it is
 * under, 0 where they cannot be told apart; sign(j, i) = -sign(i, j). With numbers it is Mann and Kendall's test, ties and all
 * (Mann 1945, Econometrica 13:245-259; Kendall 1975); with intervals that may overlap it asks for no middle of theirs.
 */
export const pairSigns = (n: number, sign: (i: number, j: number) => number, seed: number): PairSigns => {
  const signs = new Int8Array(n * n);
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) if (i !== j) signs[i * n + j] = sign(i, j);
  const at = (i: number, j: number): number => signs[i * n + j] as number;
  const sumOf = n <= mostBits ? sumByBits(n, at) : sumByPairs(n, signs);
  const asCame = Uint16Array.from({ length: n }, (_, i) => i);
  const sum = sumOf(asCame);
  const far = Math.abs(sum);
  // Every order reaches as far as nothing.
  if (far === 0) return { n, sum: 0, p: 1, exact: true };
  if (n <= allOrdersUpTo) {
    const { reached, all } = everyOrder(n, at, far);
    return { n, sum, p: reached / all, exact: true };
  }
  const drawn = drawnFrom(seed);
  const order = new Uint16Array(n);
  let reached = 1; // the order in which they came is one of them, so that p is never 0
  let orders = 1;
  const drawUpTo = (many: number): void => {
    for (; orders < many; orders++) {
      order.set(asCame);
      if (Math.abs(sumOf(shuffle(order, drawn))) >= far) reached++;
    }
  };
  const surely = looks.some(({ orders: many, over, under }) => {
    drawUpTo(many);
    return reached >= over || reached <= under;
  });
  if (!surely) drawUpTo(drawnOrders);
  return { n, sum, p: reached / orders, exact: false };
};

type SumOf = (order: ArrayLike<number>) => number;

const sumByPairs =
  (n: number, signs: Int8Array): SumOf =>
  (order) => {
    let sum = 0;
    for (let a = 0; a < n; a++) {
      const row = (order[a] as number) * n;
      for (let b = a + 1; b < n; b++) sum += signs[row + (order[b] as number)] as number;
    }
    return sum;
  };

const mostBits = 31;

/** The same with the things that come later as bits of one number: a row of signs is summed by counting bits. */
const sumByBits = (n: number, at: (i: number, j: number) => number): SumOf => {
  const under = new Int32Array(n);
  const over = new Int32Array(n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      if (at(i, j) > 0) under[i] = (under[i] as number) | (1 << j);
      if (at(i, j) < 0) over[i] = (over[i] as number) | (1 << j);
    }
  }
  return (order) => {
    let later = -1;
    let sum = 0;
    for (let a = 0; a < n; a++) {
      const i = order[a] as number;
      later &= ~(1 << i);
      sum += bitsIn((under[i] as number) & later) - bitsIn((over[i] as number) & later);
    }
    return sum;
  };
};

const bitsIn = (word: number): number => {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
};

/** All orders, grown thing by thing, so that the sum of a beginning is worked out once for all orders that share it. */
const everyOrder = (n: number, at: (i: number, j: number) => number, far: number) => {
  let reached = 0;
  let all = 0;
  const order: number[] = [];
  const taken = new Array<boolean>(n).fill(false);
  const grow = (sum: number): void => {
    if (order.length === n) {
      all++;
      if (Math.abs(sum) >= far) reached++;
      return;
    }
    for (let next = 0; next < n; next++) {
      if (taken[next]) continue;
      let more = sum;
      for (const earlier of order) more += at(earlier, next);
      taken[next] = true;
      order.push(next);
      grow(more);
      order.pop();
      taken[next] = false;
    }
  };
  grow(0);
  return { reached, all };
};
