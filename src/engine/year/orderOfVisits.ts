import type { Reason } from '../record';
import { yearNumbers } from './numbers';
import { because } from './reasonCodes';

/** A place on the plan: shares of its width and of its height. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface OrderOfVisits {
  /** Works in the order to visit them; those without a spot come last, as they were given. */
  readonly order: readonly string[];
  /** Length of the walk from the start to the last work, in widths of the plan. */
  readonly length: number;
  /** No order is shorter. */
  readonly exact: boolean;
  readonly reasons: readonly Reason[];
}

type Table = readonly (readonly number[])[];

const at = (table: Table, from: number, to: number): number => (table[from] as readonly number[])[to] as number;

const lengthOf = (order: readonly number[], between: Table): number =>
  order.slice(1).reduce((sum, to, i) => sum + at(between, order[i] as number, to), 0);

/** The best of all orders, by what is best for every set of works and its last one (Held and Karp 1962). Place 0 is where the walk starts. */
const bestOfAll = (between: Table): readonly number[] => {
  const n = between.length - 1;
  const sets = 1 << n;
  const length = new Float64Array(sets * n).fill(Number.POSITIVE_INFINITY);
  const came = new Int8Array(sets * n).fill(-1);
  for (let k = 0; k < n; k++) length[(1 << k) * n + k] = at(between, 0, k + 1);
  for (let set = 1; set < sets; set++) {
    for (let last = 0; last < n; last++) {
      const so = length[set * n + last] as number;
      if (so === Number.POSITIVE_INFINITY) continue;
      for (let next = 0; next < n; next++) {
        if (set & (1 << next)) continue;
        const to = (set | (1 << next)) * n + next;
        const longer = so + at(between, last + 1, next + 1);
        if (longer < (length[to] as number)) {
          length[to] = longer;
          came[to] = last;
        }
      }
    }
  }
  let set = sets - 1;
  let last = 0;
  for (let k = 1; k < n; k++) if ((length[set * n + k] as number) < (length[set * n + last] as number)) last = k;
  const order: number[] = [];
  while (last >= 0) {
    order.unshift(last + 1);
    const before = came[set * n + last] as number;
    set &= ~(1 << last);
    last = before;
  }
  return [0, ...order];
};

const nearestNext = (between: Table): number[] => {
  const left = new Set(between.keys());
  const order: number[] = [0];
  left.delete(0);
  while (left.size > 0) {
    const here = order[order.length - 1] as number;
    const next = [...left].reduce((near, k) => (at(between, here, k) < at(between, here, near) ? k : near));
    order.push(next);
    left.delete(next);
  }
  return order;
};

/** Less than this is no gain, only the last digit of a sum. */
const noGain = 1e-12;
/** Works in a row that are tried elsewhere together. */
const longestMoved = 3;

/** The nearest next, then stretches turned round or moved elsewhere while that makes the walk shorter. */
const shortened = (between: Table): readonly number[] => {
  let order = nearestNext(between);
  const n = order.length;
  /** From one place of the walk to another; past its end there is nowhere to go. */
  const leg = (from: number, to: number): number =>
    to < n ? at(between, order[from] as number, order[to] as number) : 0;
  const turn = (): boolean => {
    for (let i = 1; i < n - 1; i++) {
      for (let j = i + 1; j < n; j++) {
        const onward = j + 1 < n ? at(between, order[i] as number, order[j + 1] as number) : 0;
        const gain = leg(i - 1, i) + leg(j, j + 1) - leg(i - 1, j) - onward;
        if (gain <= noGain) continue;
        order = [...order.slice(0, i), ...order.slice(i, j + 1).reverse(), ...order.slice(j + 1)];
        return true;
      }
    }
    return false;
  };
  const move = (): boolean => {
    for (let i = 1; i < n; i++) {
      for (let j = i; j < Math.min(n, i + longestMoved); j++) {
        const out = leg(i - 1, i) + leg(j, j + 1) - (j + 1 < n ? leg(i - 1, j + 1) : 0);
        for (let k = 0; k < n; k++) {
          if (k >= i - 1 && k <= j) continue;
          const onward = k + 1 < n ? at(between, order[j] as number, order[k + 1] as number) : 0;
          if (out - (at(between, order[k] as number, order[i] as number) + onward - leg(k, k + 1)) <= noGain) continue;
          const stretch = order.slice(i, j + 1);
          const after = order[k] as number;
          const rest = [...order.slice(0, i), ...order.slice(j + 1)];
          const put = rest.indexOf(after) + 1;
          order = [...rest.slice(0, put), ...stretch, ...rest.slice(put)];
          return true;
        }
      }
    }
    return false;
  };
  while (turn() || move());
  return order;
};

/** A walk that may begin at any work is one from a place that is nowhere: all works are equally far from it. */
const nowhere = 0;

/**
 * A short walk past all works from where she starts, ending at the last. `aspect` is the plan's height over its width. Of up to
 * twelve works no order is shorter; of more, none that turns or moves a stretch is.
 */
export const orderOfVisits = (
  works: readonly string[],
  spots: ReadonlyMap<string, Spot>,
  start: Spot | undefined,
  aspect: number,
): OrderOfVisits => {
  const placed = works.filter((work) => spots.has(work));
  const unplaced = works.filter((work) => !spots.has(work));
  const reasons = unplaced.length > 0 ? [because('year: no spot', { works: unplaced.length })] : [];
  if (placed.length === 0) return { order: works, length: 0, exact: true, reasons };
  const distance = (a: Spot, b: Spot): number => Math.hypot(a.x - b.x, (a.y - b.y) * aspect);
  const places = placed.map((work) => spots.get(work) as Spot);
  const fromStart = places.map((place) => (start ? distance(start, place) : nowhere));
  const between: Table = [
    [0, ...fromStart],
    ...places.map((a, i) => [fromStart[i] as number, ...places.map((b) => distance(a, b))]),
  ];
  const exact = placed.length <= yearNumbers.exactVisits.value;
  const walk = exact ? bestOfAll(between) : shortened(between);
  return {
    order: [...walk.slice(1).map((k) => placed[k - 1] as string), ...unplaced],
    length: lengthOf(walk, between),
    exact,
    reasons: [
      because(exact ? 'year: shortest of all orders' : 'year: short walk', { works: placed.length }),
      ...reasons,
    ],
  };
};
