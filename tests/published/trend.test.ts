import { describe, expect, it } from 'vitest';
import { twoSidedTail } from '../../src/engine/change/normalTail';
import { mannKendall, theilSen, varianceOfS } from '../../src/engine/trend';

/** Recomputed from the data printed in the sources; the original pages were not seen. */
describe('Sen 1968, J. Amer. Statist. Assoc. 63:1379-1389 (recomputed)', () => {
  const t = [1, 2, 3, 4, 10, 12, 18];
  const x = [9, 15, 19, 20, 45, 55, 78];
  const points = t.map((time, i) => ({ t: time, y: x[i] as number }));

  it('has 21 slopes, their median 4, the line through the medians at 4, and the 4th and 18th slope as its interval', () => {
    const found = theilSen(points, 0.95);
    expect(found).toMatchObject({ slopes: 21, slope: 4, intercept: 4 });
    expect(found?.low).toBeCloseTo(26 / 7, 12);
    expect(found?.high).toBeCloseTo(35 / 8, 12);
  });

  it('attains by the orders themselves more than the 93 % Sen gives, which is the chance of |S| under 13', () => {
    // Orders of seven by their inversions: 1, 6, 20, 49, 98 of 5,040. Both ranks miss where 3 or fewer pairs are out of order.
    expect(theilSen(points, 0.95)?.coverage).toBeCloseTo(1 - (2 * (1 + 6 + 20 + 49)) / 5040, 12);
    expect(theilSen(points, 0.93)?.coverage).toBeCloseTo(1 - (2 * (1 + 6 + 20 + 49 + 98)) / 5040, 12);
    expect(Math.round((theilSen(points, 0.93)?.coverage ?? 0) * 100)).toBe(93);
  });

  it('rises in every pair: S 21, tau 1, two of 5,040 orders as far', () => {
    const found = mannKendall(x);
    expect(found).toMatchObject({ s: 21, tau: 1 });
    expect(found.p).toBeCloseTo(0.000396825, 9);
  });
});

describe('Hollander and Wolfe, Nonparametric Statistical Methods (recomputed)', () => {
  it('tuna: S 16, tau 0.4444, exact two-sided p 0.1194', () => {
    const x = [44.4, 45.9, 41.9, 53.3, 44.7, 44.1, 50.7, 45.2, 60.1];
    const y = [2.6, 3.1, 2.5, 5.0, 3.6, 4.0, 5.2, 2.8, 3.8];
    const inOrderOfX = x.map((at, i) => ({ at, y: y[i] as number })).sort((a, b) => a.at - b.at);
    const found = mannKendall(inOrderOfX.map((row) => row.y));
    expect(found.s).toBe(16);
    expect(found.tau).toBeCloseTo(0.4444, 4);
    expect(found.p).toBeCloseTo(0.11943893, 8);
  });

  it('cloud seeding: slope -0.05625, S -6', () => {
    const y = [1.26, 1.27, 1.12, 1.16, 1.03];
    const found = theilSen(
      y.map((value, i) => ({ t: i + 1, y: value })),
      0.9,
    );
    expect(found?.slope).toBeCloseTo(-0.05625, 12);
    expect(mannKendall(y).s).toBe(-6);
  });
});

describe('The normal form of Mann and Kendall (computed from the published variance)', () => {
  const z = (s: number, variance: number) => (s - Math.sign(s)) / Math.sqrt(variance);

  it('seven values without ties', () => {
    const values = [1, 2, 3, 4, 5, 6, 7];
    const variance = varianceOfS(values);
    expect(variance).toBeCloseTo(44.3333, 4);
    expect(z(21, variance)).toBeCloseTo(3.003757, 6);
    expect(twoSidedTail(z(21, variance))).toBeCloseTo(0.002667, 6);
  });

  it('nine values with ties', () => {
    const values = [23, 24, 29, 6, 29, 24, 24, 29, 23];
    const variance = varianceOfS(values);
    expect(mannKendall(values).s).toBe(3);
    expect(variance).toBeCloseTo(83.6667, 4);
    expect(z(3, variance)).toBeCloseTo(0.218652, 6);
    expect(twoSidedTail(z(3, variance))).toBeCloseTo(0.826921, 6);
  });
});

describe('A series that only rises (the orders themselves)', () => {
  it.each([
    [3, 0.33],
    [4, 0.083],
    [5, 0.017],
    [6, 0.003],
  ])('%i rounds: p %f', (n, p) => {
    expect(mannKendall(Array.from({ length: n }, (_, i) => i)).p).toBeCloseTo(p, n < 4 ? 2 : 3);
  });
});
