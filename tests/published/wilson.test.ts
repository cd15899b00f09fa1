import { describe, expect, it } from 'vitest';
import { wilson } from '../../src/engine/photo';

describe('Wilson score interval, examples of Newcombe 1998, Stat. Med. 17:857-872 (method 3), 95 %', () => {
  // The four examples and their limits recomputed from the printed four decimals; 23/60 is from a public statistics page.
  it.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
    [23, 60, 0.2709, 0.5098],
    [10, 10, 0.7225, 1],
    [29, 29, 0.883, 1],
  ])('%d of %d lies between %d and %d to four decimals', (x, n, low, high) => {
    const range = wilson(x, n);
    expect(range.map((end) => end.toFixed(4))).toEqual([low.toFixed(4), high.toFixed(4)]);
  });

  it('is where the score test just rejects: (p - limit)^2 = z^2 limit (1 - limit) / n, at 90 % as at 95 %', () => {
    for (const [level, z] of [
      [0.9, 1.6448536269514722],
      [0.95, 1.959963984540054],
    ] as const) {
      for (const [x, n] of [
        [3, 49],
        [27, 49],
        [99, 100],
      ] as const) {
        for (const end of wilson(x, n, level)) {
          expect((x / n - end) ** 2).toBeCloseTo((z ** 2 * end * (1 - end)) / n, 12);
        }
      }
    }
  });

  it('says nothing of nothing counted, and refuses more hits than dots', () => {
    expect(wilson(0, 0)).toEqual([0, 1]);
    expect(() => wilson(6, 5)).toThrow(/count again/);
    expect(() => wilson(-1, 5)).toThrow(/count again/);
    expect(() => wilson(Number.NaN, 5)).toThrow(/count again/);
  });
});
