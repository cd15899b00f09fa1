import { describe, expect, it } from 'vitest';
import { shareInterval, wilson } from '../../../src/engine/photo';

/** Chance that a count of Poisson's with this mean is at least x. */
const atLeast = (x: number, mean: number): number => {
  let term = Math.exp(-mean);
  let under = 0;
  for (let k = 0; k < x; k++) {
    under += term;
    term *= mean / (k + 1);
  }
  return 1 - under;
};

const choose = (n: number, x: number): number => {
  let ways = 1;
  for (let i = 0; i < x; i++) ways = (ways * (n - i)) / (i + 1);
  return ways;
};

/** Chance that the interval holds the share, over all counts there may be. */
const held = (n: number, p: number, of: typeof wilson): number =>
  Array.from({ length: n + 1 }, (_, x) => {
    const [low, high] = of(x, n);
    return low <= p && p <= high ? choose(n, x) * p ** x * (1 - p) ** (n - x) : 0;
  }).reduce((sum, one) => sum + one, 0);

describe('The interval of a share of dots', () => {
  it('is Wilson’s from the fourth hit and the fourth miss on, and at none and all', () => {
    for (const n of [25, 49, 100]) {
      for (const x of [0, 4, 12, n - 4, n]) expect(shareInterval(x, n)).toEqual(wilson(x, n));
    }
  });

  it.each([
    [0.9, 0.1],
    [0.95, 0.05],
  ] as const)('reaches at %d down to where so many hits would come by chance once in %d', (level, chance) => {
    for (const x of [1, 2, 3]) {
      const [low] = shareInterval(x, 100, level);
      expect(atLeast(x, low * 100)).toBeCloseTo(chance, 5);
      const [, high] = shareInterval(100 - x, 100, level);
      expect(high).toBeCloseTo(1 - low, 12);
    }
  });

  it('does not leave out a share of one percent one time in ten, as Wilson’s alone does', () => {
    expect(held(49, 0.01, wilson)).toBeLessThan(0.92);
    expect(held(49, 0.01, shareInterval)).toBeGreaterThan(0.97);
  });

  it('holds every share from half a percent to 99.5 at least 92 times in a hundred, whatever the dots', () => {
    for (const n of [25, 49, 100]) {
      for (let p = 0.005; p < 1; p += 0.005) expect(held(n, p, shareInterval), `${n} at ${p}`).toBeGreaterThan(0.92);
    }
  });
});
