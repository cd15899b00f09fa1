import { describe, expect, it } from 'vitest';
import { dotsIn, isRefused } from '../../src/engine/photo';
import { dotsRows } from '../files/coverageCases';
import { drawnPhoto } from '../files/drawnPhotos';
import { dotsOn } from '../files/measuredPhotos';

describe.each([49, 100])('%d dots on drawn photos of known coverage, 500 seeds each', (n) => {
  const rows = dotsRows(n, 500);

  it.each(rows)('hold $share in their 95 % interval in at least 93 of 100 runs', ({ holds, runs }) => {
    expect(runs).toBe(500);
    expect(holds).toBeGreaterThanOrEqual(0.93);
  });

  it.each(rows)('hold $share in the 90 % range they are scored with in at least 88 of 100 runs', ({ scoredHolds }) => {
    expect(scoredHolds).toBeGreaterThanOrEqual(0.88);
  });

  it('say more than nothing: the interval is no wider than that of as many dots thrown at random', () => {
    for (const { share, width } of rows) {
      const byChance = 2 * 1.96 * Math.sqrt((share * (1 - share)) / n);
      expect(width).toBeLessThan(byChance + 7 / n);
    }
  });
});

describe('Dots that lie much closer than the largest patch is wide', () => {
  it('hold the truth all the same: why that is said, and not refused', () => {
    for (const coverage of [0.2, 0.5, 0.8]) {
      const photo = drawnPhoto({ seed: 5, coverage, width: 480 });
      const { spacing } = dotsIn(photo.zone, photo.size, 100, 1);
      expect(photo.largestPatch).toBeGreaterThan(2 * spacing);
      const told = Array.from({ length: 300 }, (_, run) => dotsOn(photo, 100, 0, 17 * run));
      const holding = told.filter((one) => !isRefused(one) && one.low <= photo.share && photo.share <= one.high);
      expect(holding.length / told.length).toBeGreaterThanOrEqual(0.93);
    }
  });
});

describe('Dots judged by somebody who slips once in twenty', () => {
  it('do not hold a small share: why their reasons say that wrong dots are not in the range', () => {
    const [small] = dotsRows(49, 200, 0.05, [0.01]);
    expect(small?.runs).toBe(200);
    expect(small?.holds).toBeLessThan(0.6);
  });
});
