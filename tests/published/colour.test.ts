import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { ciede2000, labOfRgb, swatchOf } from '../../src/engine/colour';

const hex = (code: string) =>
  [1, 3, 5].map((at) => Number.parseInt(code.slice(at, at + 2), 16)) as [number, number, number];

describe('L*a*b* of an sRGB pixel, D65', () => {
  // Computed with culori 4.0.2 and colorjs.io 0.7.1, which agree to 0.0001; the rounded values of red, green and blue are commonly printed.
  it.each([
    ['#ffffff', 100, 0, 0],
    ['#000000', 0, 0, 0],
    ['#ff0000', 53.2371, 80.0901, 67.2033],
    ['#00ff00', 87.7355, -86.1816, 83.1866],
    ['#0000ff', 32.3009, 79.1953, -107.8555],
    ['#808080', 53.585, 0, 0],
    ['#735244', 38.0162, 11.7947, 13.6639],
    ['#3b7a57', 46.3604, -29.0107, 13.0858],
    ['#43b3ae', 66.8911, -32.4081, -6.8336],
    ['#4a2c2a', 21.6697, 13.5902, 7.1136],
    ['#8a9a5b', 61.0189, -16.28, 31.1676],
    ['#b87333', 54.7538, 21.6488, 45.3967],
  ])('%s is %d, %d, %d to four decimals', (code, L, a, b) => {
    const lab = labOfRgb(...hex(code));
    for (const [is, should] of [
      [lab.L, L],
      [lab.a, a],
      [lab.b, b],
    ] as const) {
      expect(Math.abs(is - should)).toBeLessThan(1e-4);
    }
  });

  it('is what a colour library says all through the cube, dark corner, greys and means between whole numbers too', () => {
    const library = converter('lab65');
    const steps = [0, 1, 2, 5, 9, 10, 11, 12, 33.5, 64, 99, 127.25, 160, 200, 231, 254, 255];
    let worst = 0;
    for (const r of steps) {
      for (const g of steps) {
        for (const b of steps) {
          const is = labOfRgb(r, g, b);
          const should = library({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 });
          worst = Math.max(worst, Math.abs(is.L - should.l), Math.abs(is.a - should.a), Math.abs(is.b - should.b));
        }
      }
    }
    expect(worst).toBeLessThan(1e-9);
  });
});

describe('CIEDE2000, the 34 pairs of Sharma, Wu and Dalal 2005, Color Research and Application 30(1):21-30, Table 1', () => {
  // Read in the test file of a colour library that names the paper. Pairs 9 to 16 lie about the jump of the mean hue, 7 and 8 have a grey.
  const pairs = [
    [1, 50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
    [2, 50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615],
    [3, 50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
    [4, 50, -1.3802, -84.2814, 50, 0, -82.7485, 1],
    [5, 50, -1.1848, -84.8006, 50, 0, -82.7485, 1],
    [6, 50, -0.9009, -85.5211, 50, 0, -82.7485, 1],
    [7, 50, 0, 0, 50, -1, 2, 2.3669],
    [8, 50, -1, 2, 50, 0, 0, 2.3669],
    [9, 50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
    [10, 50, 2.49, -0.001, 50, -2.49, 0.001, 7.1792],
    [11, 50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
    [12, 50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195],
    [13, 50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
    [14, 50, -0.001, 2.49, 50, 0.001, -2.49, 4.8045],
    [15, 50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
    [16, 50, 2.5, 0, 50, 0, -2.5, 4.3065],
    [17, 50, 2.5, 0, 73, 25, -18, 27.1492],
    [18, 50, 2.5, 0, 61, -5, 29, 22.8977],
    [19, 50, 2.5, 0, 56, -27, -3, 31.903],
    [20, 50, 2.5, 0, 58, 24, 15, 19.4535],
    [21, 50, 2.5, 0, 50, 3.1736, 0.5854, 1],
    [22, 50, 2.5, 0, 50, 3.2972, 0, 1],
    [23, 50, 2.5, 0, 50, 1.8634, 0.5757, 1],
    [24, 50, 2.5, 0, 50, 3.2592, 0.335, 1],
    [25, 60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644],
    [26, 63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
    [27, 61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731],
    [28, 35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
    [29, 22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373],
    [30, 36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
    [31, 90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441],
    [32, 90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381],
    [33, 6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377],
    [34, 2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
  ] as const;

  it.each(pairs)('pair %d', (_, L1, a1, b1, L2, a2, b2, published) => {
    const one = { L: L1, a: a1, b: b1 };
    const other = { L: L2, a: a2, b: b2 };
    expect(Math.abs(ciede2000(one, other) - published)).toBeLessThan(1e-4);
    expect(Math.abs(ciede2000(other, one) - published)).toBeLessThan(1e-4);
  });

  it('is not the distance in L*a*b*, which a wrong formula would give', () => {
    const [, L1, a1, b1, L2, a2, b2, published] = pairs[0];
    expect(Math.abs(Math.hypot(L1 - L2, a1 - a2, b1 - b2) - published)).toBeGreaterThan(1);
  });

  it('for greys is the step of lightness over its own weight, 1 + 0.015 (L - 50)^2 / sqrt(20 + (L - 50)^2), as the paper writes it', () => {
    for (const [from, to] of [
      [50, 60],
      [10, 12],
      [95, 90],
    ] as const) {
      const square = ((from + to) / 2 - 50) ** 2;
      const weight = 1 + (0.015 * square) / Math.sqrt(20 + square);
      expect(ciede2000({ L: from, a: 0, b: 0 }, { L: to, a: 0, b: 0 })).toBeCloseTo(Math.abs(to - from) / weight, 12);
    }
  });
});

describe('a reading on screen', () => {
  // The same table: each colour under D65 and, adapted after Bradford, under D50.
  it.each([
    ['#735244', { L: 38.0162, a: 11.7947, b: 13.6639 }, { L: 38.2232, a: 12.767, b: 13.9707 }],
    ['#3b7a57', { L: 46.3604, a: -29.0107, b: 13.0858 }, { L: 46.3152, a: -27.836, b: 12.7513 }],
    ['#43b3ae', { L: 66.8911, a: -32.4081, b: -6.8336 }, { L: 66.6198, a: -33.6608, b: -7.3663 }],
    ['#4a2c2a', { L: 21.6697, a: 13.5902, b: 7.1136 }, { L: 21.8341, a: 14.0552, b: 7.4152 }],
    ['#8a9a5b', { L: 61.0189, a: -16.28, b: 31.1676 }, { L: 61.1808, a: -13.7468, b: 31.0189 }],
    ['#b87333', { L: 54.7538, a: 21.6488, b: 45.3967 }, { L: 55.2323, a: 23.9736, b: 45.8842 }],
  ])('%s comes back from its figures under D65 and under D50', (hex, d65, d50) => {
    expect(swatchOf(d65, 'D65')).toEqual({ hex, exact: true });
    expect(swatchOf(d50, 'D50')).toEqual({ hex, exact: true });
  });

  it('says so where no screen can show it', () => {
    expect(swatchOf({ L: 60, a: -90, b: 20 }, 'D65').exact).toBe(false);
  });
});
