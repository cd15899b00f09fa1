import { describe, expect, it } from 'vitest';
import { coverageInterval } from '../../../src/engine/condition';
import { isRefused, type Measured, type Outline, type Ring, tracedCoverage } from '../../../src/engine/photo';

const size = { width: 1000, height: 500 };
const box = (left: number, top: number, right: number, bottom: number): Ring => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];
const zone: Outline = [box(0.1, 0.1, 0.6, 0.9)];
const traced = (patches: Outline, of: Outline = zone): Measured => {
  const told = tracedCoverage(patches, of, size);
  if (isRefused(told)) throw new Error(told.refused.map(({ code }) => code).join());
  return told;
};
const area = 0.5 * 0.8;

describe('Coverage from traced patches', () => {
  it('is the area of the patches over that of the zone', () => {
    expect(traced([box(0.2, 0.2, 0.3, 0.4)]).value).toBeCloseTo((0.1 * 0.2) / area, 12);
  });

  it('counts once where patches lie on each other, whether they cross, lie inside or are the same', () => {
    const one = box(0.2, 0.2, 0.4, 0.4);
    expect(traced([one, one]).value).toBeCloseTo(0.04 / area, 12);
    expect(traced([one, box(0.25, 0.25, 0.3, 0.3)]).value).toBeCloseTo(0.04 / area, 12);
    expect(traced([one, box(0.3, 0.3, 0.5, 0.5)]).value).toBeCloseTo(0.07 / area, 12);
  });

  it('counts only what lies inside the zone, in all of its pieces', () => {
    expect(traced([box(0.5, 0.2, 0.9, 0.4)]).value).toBeCloseTo((0.1 * 0.2) / area, 12);
    expect(traced([box(0.7, 0.2, 0.9, 0.4)]).value).toBe(0);
    const pieces: Outline = [box(0.1, 0.1, 0.3, 0.9), box(0.5, 0.1, 0.7, 0.9)];
    expect(traced([box(0.2, 0.2, 0.6, 0.4)], pieces).value).toBeCloseTo((0.2 * 0.2) / (0.4 * 0.8), 12);
  });

  it('leaves uncovered what patches lie round, and never tells more than the whole', () => {
    const round: Outline = [
      box(0.1, 0.1, 0.6, 0.3),
      box(0.1, 0.7, 0.6, 0.9),
      box(0.1, 0.1, 0.2, 0.9),
      box(0.5, 0.1, 0.6, 0.9),
    ];
    expect(traced(round).value).toBeCloseTo(1 - (0.3 * 0.4) / area, 12);
    expect(traced([box(0, 0, 1, 1)]).value).toBe(1);
  });

  it('is nothing where nothing was traced, with a little open above it, and bears corners that make no patch', () => {
    const none = traced([]);
    expect([none.value, none.low]).toEqual([0, 0]);
    expect(none.high).toBeGreaterThan(0);
    expect(none.high).toBeLessThan(0.01);
    const line: Ring = [
      [0.2, 0.2],
      [0.3, 0.3],
      [0.4, 0.4],
    ];
    expect(traced([line, [[0.2, 0.2]]]).value).toBe(0);
  });

  it('takes in both halves of a line that crosses itself, and says that it does', () => {
    const told = traced([
      [
        [0.2, 0.2],
        [0.4, 0.4],
        [0.4, 0.2],
        [0.2, 0.4],
      ],
    ]);
    expect(told.value).toBeCloseTo(0.02 / area, 10);
    expect(told.reasons).toContainEqual({ code: 'coverage: patch crosses itself', params: { patches: 1 } });
  });

  it('is as sure of many small patches as of one as large and as square, and less sure of either than the spread of two tracings alone', () => {
    const large = traced([box(0.2, 0.2, 0.4, 0.6)]);
    const small = traced(
      Array.from({ length: 16 }, (_, i) => {
        const [x, y] = [0.12 + 0.12 * (i % 4), 0.12 + 0.19 * Math.floor(i / 4)];
        return box(x, y, x + 0.05, y + 0.1);
      }),
    );
    expect(small.value).toBeCloseTo(large.value, 12);
    // Each corner is off by itself: sixteen times as many corners, on lines a quarter as long.
    expect(small.high - small.low).toBeCloseTo(large.high - large.low, 12);
    const bare = coverageInterval({ ...large.coverage, low: large.value, high: large.value });
    expect(large.high - large.low).toBeGreaterThan(bare.high - bare.low);
  });

  it('says nothing of a zone too small on the photo', () => {
    const told = tracedCoverage([], [box(0.1, 0.1, 0.15, 0.2)], size);
    expect(isRefused(told) && told.refused).toEqual([
      { code: 'coverage: zone too small on the photo', params: { pixels: 2500, least: 10000 } },
    ]);
  });
});
