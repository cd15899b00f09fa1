import { type Counted, isExact } from './interval';

/** Where mass can lie, with nothing said of where within. */
export interface Stretch {
  readonly left: number;
  readonly right: number;
}

/** Where mass can lie at all: from a left end to the next right end with no other end between. At one time [x comes before x] before (x. */
export const innermost = (rows: readonly Counted[]): readonly Stretch[] => {
  const ends = rows.flatMap((row) => [
    { at: row.lower, rank: isExact(row) ? 0 : 2 },
    { at: row.upper, rank: 1 },
  ]);
  ends.sort((a, b) => a.at - b.at || a.rank - b.rank);
  const found: Stretch[] = [];
  ends.forEach((end, i) => {
    const before = ends[i - 1];
    if (end.rank === 1 && before && before.rank !== 1) found.push({ left: before.at, right: end.at });
  });
  return found;
};

/** First and last stretch within an interval: all between belong to it too. */
export interface Reach {
  readonly first: number;
  readonly last: number;
}

export const reachOf = (row: Counted, stretches: readonly Stretch[]): Reach => {
  // Both ends of the stretches rise together, so two searches do.
  const within = ({ left, right }: Stretch): boolean =>
    left >= row.lower && right <= row.upper && (isExact(row) || right > row.lower);
  let low = 0;
  let high = stretches.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const stretch = stretches[middle] as Stretch;
    const before = stretch.left < row.lower || (!isExact(row) && stretch.right <= row.lower);
    if (before) low = middle + 1;
    else high = middle;
  }
  let last = low;
  let top = stretches.length;
  let bottom = low;
  while (bottom < top) {
    const middle = (bottom + top) >> 1;
    if (within(stretches[middle] as Stretch)) {
      last = middle;
      bottom = middle + 1;
    } else top = middle;
  }
  return { first: low, last };
};

/** How likely each interval is: the mass within its reach. */
export const chances = (masses: Float64Array, reach: readonly Reach[]): Float64Array => {
  const upTo = new Float64Array(masses.length + 1);
  for (let j = 0; j < masses.length; j++) upTo[j + 1] = (upTo[j] as number) + (masses[j] as number);
  return Float64Array.from(reach, ({ first, last }) => (upTo[last + 1] as number) - (upTo[first] as number));
};
