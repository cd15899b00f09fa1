import fc from 'fast-check';
import { intersection, union } from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import type { Outline, Ring } from '../../../src/engine/photo';
import { patchesInZone } from '../../../src/engine/photo/patchesInZone';

type Polygons = ReturnType<typeof union>;
const polygons = (outline: Outline): Polygons =>
  outline.map((ring) => [ring.map(([x, y]): [number, number] => [x, y])]);
const ringArea = (ring: Ring) =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => sum + x * ring[(i + 1) % ring.length]![1] - ring[(i + 1) % ring.length]![0] * y, 0),
  ) / 2;
const areaOf = (all: Polygons) =>
  all.reduce(
    (sum, [rim = [], ...holes]) => sum + ringArea(rim) - holes.reduce((less, hole) => less + ringArea(hole), 0),
    0,
  );
const clipped = (patches: Outline, zone: Outline) => {
  const [first, ...rest] = polygons(zone);
  const inside = union(first!, ...rest);
  const [patch, ...others] = polygons(patches);
  return { covered: patch ? areaOf(intersection(union(patch, ...others), inside)) : 0, whole: areaOf(inside) };
};

/** As a hand draws: round a middle, its corners nearer and further. */
const drawn = fc
  .record({
    middle: fc.tuple(fc.double({ min: 0.2, max: 0.8, noNaN: true }), fc.double({ min: 0.2, max: 0.8, noNaN: true })),
    reaches: fc.array(fc.double({ min: 0.02, max: 0.3, noNaN: true }), { minLength: 3, maxLength: 24 }),
  })
  .map(
    ({ middle: [x, y], reaches }): Ring =>
      reaches.map((reach, i) => {
        const angle = (2 * Math.PI * i) / reaches.length + 0.1;
        return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)] as const;
      }),
  );
/** Corners anywhere on a coarse grid: sides that cross themselves, lie on each other, stand upright or level. */
const onGrid = fc.array(
  fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 8 })).map(([x, y]) => [x / 8, y / 8] as const),
  { minLength: 3, maxLength: 9 },
);

/** Undefined where the package itself gives up ("Unable to complete output ring"), as it does on some lines that cross themselves. */
const clippedIfItCan = (patches: Outline, zone: Outline) => {
  try {
    return clipped(patches, zone);
  } catch {
    return undefined;
  }
};

let compared = 0;
const agree = (patches: Outline, zone: Outline) => {
  const [own, theirs] = [patchesInZone(patches, zone), clippedIfItCan(patches, zone)];
  expect(own.covered).toBeLessThanOrEqual(own.whole);
  if (!theirs) return;
  compared += 1;
  expect(own.covered).toBeCloseTo(theirs.covered, 9);
  expect(own.whole).toBeCloseTo(theirs.whole, 9);
};

/** Share of a fine grid of points that a ring goes round: another way to the same area, good to a thousandth. */
const counted = (patches: Outline, zone: Outline) => {
  const turns = (ring: Ring, px: number, py: number) =>
    ring.reduce((sum, [ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      if (ay > py === by > py || ax + ((bx - ax) * (py - ay)) / (by - ay) < px) return sum;
      return sum + (by > ay ? 1 : -1);
    }, 0);
  const many = 1000;
  let [covered, whole] = [0, 0];
  for (let i = 0; i < many ** 2; i++) {
    const [x, y] = [((i % many) + 0.5) / many, (Math.floor(i / many) + 0.5) / many];
    const lies = (outline: Outline) => outline.some((ring) => turns(ring, x, y) !== 0);
    if (!lies(zone)) continue;
    whole += 1;
    if (lies(patches)) covered += 1;
  }
  return { covered: covered / many ** 2, whole: whole / many ** 2 };
};

describe('Patches inside a zone', () => {
  it('come to the area that cutting the polygons out of each other gives, as a hand draws them', () => {
    compared = 0;
    fc.assert(fc.property(fc.array(drawn, { maxLength: 5 }), fc.array(drawn, { minLength: 1, maxLength: 2 }), agree), {
      numRuns: 200,
      seed: 7,
    });
    expect(compared).toBeGreaterThan(190);
  });

  it('do so where lines cross themselves, meet in corners and lie on each other', () => {
    compared = 0;
    fc.assert(
      fc.property(fc.array(onGrid, { maxLength: 3 }), fc.array(onGrid, { minLength: 1, maxLength: 2 }), agree),
      {
        numRuns: 300,
        seed: 7,
      },
    );
    expect(compared).toBeGreaterThan(250);
  });

  it('are told where cutting polygons gives up: no drawing of a hand may end in a fault', () => {
    const patches: Outline = [
      [
        [1, 1],
        [0.875, 0.75],
        [0, 0.75],
        [0, 0],
      ],
      [
        [0, 0],
        [0.75, 0],
        [0.75, 0.875],
      ],
    ];
    const zone: Outline = [
      [
        [0.625, 1],
        [1, 0.25],
        [0, 0],
      ],
    ];
    expect(() => clipped(patches, zone)).toThrow('Unable to complete output ring');
    const [own, points] = [patchesInZone(patches, zone), counted(patches, zone)];
    expect(own.covered).toBeCloseTo(points.covered, 3);
    expect(own.whole).toBeCloseTo(points.whole, 3);
  });
});
