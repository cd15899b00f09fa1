import { describe, expect, it } from 'vitest';
import { dotsRows } from '../files/coverageCases';

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

describe('Dots judged by somebody who slips once in twenty', () => {
  it('do not hold a small share: why their reasons say that wrong dots are not in the range', () => {
    const [small] = dotsRows(49, 200, 0.05, [0.01]);
    expect(small?.runs).toBe(200);
    expect(small?.holds).toBeLessThan(0.6);
  });
});
