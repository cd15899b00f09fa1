import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { labOfRgb } from '../../src/engine/colour';

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
