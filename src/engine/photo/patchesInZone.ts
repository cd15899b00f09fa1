import type { Outline, Point } from './point';

/** A side of a ring that is not level, by its upper and lower end; `way` is 1 where the ring runs down it, else -1. */
interface Side {
  readonly top: Point;
  readonly bottom: Point;
  readonly way: 1 | -1;
  readonly ring: number;
  readonly of: 'patch' | 'zone';
}

/** Widths under this share of the picture are rounding where lines meet. */
const nothing = 1e-12;

const sidesOf = (outline: Outline, of: Side['of'], from: number): Side[] =>
  outline.flatMap((ring, i) =>
    ring.flatMap((a, j): Side[] => {
      const b = ring[(j + 1) % ring.length] as Point;
      if (a[1] === b[1]) return [];
      return [
        a[1] < b[1]
          ? { top: a, bottom: b, way: 1, ring: from + i, of }
          : { top: b, bottom: a, way: -1, ring: from + i, of },
      ];
    }),
  );

const xAt = ({ top, bottom }: Side, y: number): number =>
  top[0] + ((bottom[0] - top[0]) * (y - top[1])) / (bottom[1] - top[1]);

/** Heights at which a side begins, ends or crosses another, from the top down. `sides` by their upper ends. */
const levelsOf = (sides: readonly Side[]): number[] => {
  const levels = new Set<number>();
  for (const [i, one] of sides.entries()) {
    levels.add(one.top[1]).add(one.bottom[1]);
    for (let j = i + 1; j < sides.length; j++) {
      const other = sides[j] as Side;
      const [high, low] = [other.top[1], Math.min(one.bottom[1], other.bottom[1])];
      if (high >= one.bottom[1]) break;
      const above = xAt(one, high) - xAt(other, high);
      const below = xAt(one, low) - xAt(other, low);
      if (above * below < 0) levels.add(high + ((low - high) * above) / (above - below));
    }
  }
  return [...levels].sort((a, b) => a - b);
};

/** Widths covered along one level line that no corner and no crossing lies on. */
const widthsAt = (sides: readonly Side[], y: number): { covered: number; whole: number } => {
  const turns = new Map<number, number>();
  const rings = { patch: 0, zone: 0 };
  const sum = { covered: 0, whole: 0 };
  let before = 0;
  for (const { x, side } of sides.map((side) => ({ x: xAt(side, y), side })).sort((a, b) => a.x - b.x)) {
    const width = x - before > nothing ? x - before : 0;
    if (rings.zone > 0) sum.whole += width;
    if (rings.zone > 0 && rings.patch > 0) sum.covered += width;
    before = x;
    // Inside a ring is where it goes round: both halves of one that crosses itself.
    const was = turns.get(side.ring) ?? 0;
    turns.set(side.ring, was + side.way);
    if (was === 0) rings[side.of] += 1;
    else if (was + side.way === 0) rings[side.of] -= 1;
  }
  return sum;
};

/**
 * Area the patches cover inside the zone and area of the zone, shares of the picture. Where rings lie on each other, once. Cut into
 * level strips between all corners and crossings, in which every side is straight, so that height times the width in the middle is
 * exact. Held against polyclip-ts in the tests.
 */
export const patchesInZone = (
  patches: Outline,
  zone: Outline,
): { readonly covered: number; readonly whole: number } => {
  const sides = [...sidesOf(patches, 'patch', 0), ...sidesOf(zone, 'zone', patches.length)];
  sides.sort((a, b) => a.top[1] - b.top[1]);
  const levels = levelsOf(sides);
  let [covered, whole, next] = [0, 0, 0];
  let here: Side[] = [];
  for (const [i, low] of levels.slice(1).entries()) {
    const high = levels[i] as number;
    here = here.filter(({ bottom }) => bottom[1] >= low);
    for (; next < sides.length && (sides[next] as Side).top[1] <= high; next++) here.push(sides[next] as Side);
    const widths = widthsAt(here, (high + low) / 2);
    covered += widths.covered * (low - high);
    whole += widths.whole * (low - high);
  }
  return { covered, whole };
};
