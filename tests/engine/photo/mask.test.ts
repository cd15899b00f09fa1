import { describe, expect, it } from 'vitest';
import { labOfRgb } from '../../../src/engine/colour';
import {
  type Classifier,
  checkDotsFor,
  checkDotsIn,
  classifierOf,
  isRefused,
  maskCoverage,
  type Outline,
  pixelClass,
  type Rgb,
} from '../../../src/engine/photo';

const green: Rgb[] = [
  [112, 150, 128],
  [100, 142, 118],
  [120, 156, 136],
];
const sound: Rgb[] = [
  [92, 70, 50],
  [80, 62, 45],
  [104, 80, 58],
];
const classifier = (): Classifier => {
  const made = classifierOf(green, sound);
  if (isRefused(made)) throw new Error('refused');
  return made;
};
const refusedFor = (one: readonly Rgb[], other: readonly Rgb[]) => {
  const made = classifierOf(one, other);
  return isRefused(made) ? made.refused : [];
};

describe('Green and sound told apart by tapped colours', () => {
  it('takes what was tapped for what it was tapped as, in shade and in light', () => {
    const { classOf } = classifier();
    for (const part of [0.6, 1, 1.3]) {
      for (const [r, g, b] of green) expect(classOf(r * part, g * part, b * part)).toBe(pixelClass.green);
      for (const [r, g, b] of sound) expect(classOf(r * part, g * part, b * part)).toBe(pixelClass.sound);
    }
  });

  it('leaves out glare and deep shade, whatever their colour', () => {
    const { classOf } = classifier();
    expect(classOf(255, 240, 250)).toBe(pixelClass.leftOut);
    expect(classOf(243, 243, 243)).toBe(pixelClass.leftOut);
    expect(classOf(10, 22, 14)).toBe(pixelClass.leftOut);
    expect(labOfRgb(10, 22, 14).L).toBeLessThan(8);
  });

  it('is not led astray by one spot of three tapped beside the mark', () => {
    const { green: middle } = classifier();
    const astray = classifierOf([green[0] as Rgb, green[1] as Rgb, [100, 120, 95]], sound);
    if (isRefused(astray)) throw new Error('refused');
    expect(Math.hypot(astray.green.a - middle.a, astray.green.b - middle.b)).toBeLessThan(6);
  });

  it('says no where the sorts are too alike, a tap belongs to the other sort, or too few taps can be used', () => {
    const dull: Rgb[] = [
      [90, 74, 52],
      [82, 66, 47],
      [101, 80, 60],
    ];
    expect(refusedFor(dull, sound).map(({ code }) => code)).toEqual(['coverage: green and sound too alike']);
    const swapped = [green[0] as Rgb, green[1] as Rgb, sound[0] as Rgb];
    expect(refusedFor(swapped, sound)[0]?.params.strays).toBe(1);
    expect(refusedFor(green.slice(1), sound)[0]?.params).toEqual({ sort: 'green', usable: 2, least: 3 });
    const glaring: Rgb[] = [...sound.slice(1), [255, 255, 250]];
    expect(refusedFor(green, glaring)[0]?.params).toEqual({ sort: 'sound', usable: 2, least: 3 });
    expect(refusedFor([], [])).toHaveLength(2);
  });
});

const size = { width: 100, height: 100 };
const whole: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];

describe('Check dots', () => {
  it('are split by the share of the mask, with a quarter at least on each side', () => {
    expect(checkDotsFor(0.01)).toEqual({ inMask: 8, outsideMask: 22 });
    expect(checkDotsFor(0.5)).toEqual({ inMask: 15, outsideMask: 15 });
    expect(checkDotsFor(0.99)).toEqual({ inMask: 22, outsideMask: 8 });
    expect(checkDotsFor(0)).toEqual({ inMask: 0, outsideMask: 30 });
    expect(checkDotsFor(1)).toEqual({ inMask: 30, outsideMask: 0 });
    expect(checkDotsFor(0.5, 60)).toEqual({ inMask: 30, outsideMask: 30 });
  });

  it('lie on pixels of their class, never on what was left out, the same for the same seed', () => {
    const classes = Uint8Array.from({ length: 10_000 }, (_, at) => (at % 100 < 30 ? 1 : at % 100 < 80 ? 0 : 2));
    const { inMask, outsideMask } = checkDotsIn(classes, size, 5);
    expect([inMask.length, outsideMask.length]).toEqual([11, 19]);
    for (const [x] of inMask) expect(x).toBeLessThan(0.3);
    for (const [x] of outsideMask) expect(x > 0.3 && x < 0.8).toBe(true);
    expect(checkDotsIn(classes, size, 5)).toEqual({ inMask, outsideMask });
    expect(checkDotsIn(classes, size, 6).inMask).not.toEqual(inMask);
    expect(checkDotsIn(new Uint8Array(100).fill(2), size, 5)).toEqual({ inMask: [], outsideMask: [] });
  });

  it('ask each pixel of a class as often as another', () => {
    const classes = new Uint8Array(10_000).fill(0, 0, 5000).fill(1, 5000);
    let upper = 0;
    for (let seed = 0; seed < 400; seed++) {
      upper += checkDotsIn(classes, size, seed).outsideMask.filter(([, y]) => y < 0.25).length;
    }
    expect(upper / (400 * 15)).toBeCloseTo(0.5, 2);
  });

  it('are fewer than asked for where a class has fewer pixels, never twice on one', () => {
    const classes = new Uint8Array(10_000).fill(1, 0, 3);
    const { inMask } = checkDotsIn(classes, size, 2);
    expect(new Set(inMask.map(String)).size).toBe(inMask.length);
    expect(inMask).toHaveLength(3);
  });
});

const told = (share: number, inMask: string, outsideMask: string, leftOut = 0) => {
  const outcome = maskCoverage({ share, leftOut }, inMask, outsideMask, whole, size);
  if (isRefused(outcome)) throw new Error(outcome.refused.map(({ code }) => code).join());
  return outcome;
};
const many = (hits: number, misses: number): string => 'y'.repeat(hits) + 'n'.repeat(misses);

describe('Coverage from a mask and its check dots', () => {
  it('is W x green in the mask + (1 - W) x green outside it', () => {
    expect(told(0.4, many(12, 3), many(3, 12)).value).toBeCloseTo(0.4 * 0.8 + 0.6 * 0.2, 12);
    expect(told(0, '', many(0, 30)).value).toBe(0);
    expect(told(1, many(30, 0), '').value).toBe(1);
  });

  it('does not take nought of so many for none: its upper end stays open, and the less the more dots', () => {
    const few = told(0.02, many(8, 0), many(0, 22));
    const more = told(0.02, many(16, 0), many(0, 44));
    expect(few.value).toBeCloseTo(0.02, 12);
    expect(few.high).toBeGreaterThan(0.1);
    expect(more.high).toBeLessThan(few.high);
    expect(few.low).toBeLessThan(0.02);
  });

  it('takes the word of a mask of less than one percent where it has too few pixels for check dots', () => {
    const tiny = told(0.0004, '', many(0, 30));
    expect(tiny.value).toBeCloseTo(0.0004, 12);
    expect(tiny.low).toBe(0);
    expect(tiny.high).toBeGreaterThan(0.1);
  });

  it('lets one dot in twenty be a slip: one green dot outside a mask does not rule out that there is none', () => {
    const { low } = told(0.3, many(9, 0), many(1, 20));
    expect(low).toBeLessThan(0.3 * 0.7);
    expect(told(0.3, many(9, 0), many(12, 9)).low).toBeGreaterThan(0.4);
  });

  it('holds its value between its ends, and the 90 % range inside the 95 % one, for every count', () => {
    for (const share of [0, 0.003, 0.2, 0.5, 0.97, 1]) {
      for (let x = 0; x <= 10; x++) {
        for (let y = 0; y <= 10; y++) {
          const { value, low, high, coverage } = told(share, many(x, 10 - x), many(y, 10 - y));
          expect(low).toBeGreaterThanOrEqual(0);
          expect(low).toBeLessThanOrEqual(coverage.low);
          expect(coverage.low).toBeLessThanOrEqual(value);
          expect(value).toBeLessThanOrEqual(coverage.high);
          expect(coverage.high).toBeLessThanOrEqual(high);
          expect(high).toBeLessThanOrEqual(1);
        }
      }
    }
  });

  it('says where the mask follows something else, and where much was left out', () => {
    const codes = told(0.3, many(3, 7), many(1, 19), 0.2).reasons.map(({ code }) => code);
    expect(codes).toContain('coverage: mask mostly wrong');
    expect(codes).toContain('coverage: left out of the mask');
    const plain = told(0.3, many(7, 3), many(1, 19), 0.05).reasons.map(({ code }) => code);
    expect(plain).not.toContain('coverage: mask mostly wrong');
    expect(plain).not.toContain('coverage: left out of the mask');
  });

  it('says nothing of too few check dots, too dark a photo or too small a zone', () => {
    const codes = (...given: Parameters<typeof maskCoverage>) => {
      const outcome = maskCoverage(...given);
      return isRefused(outcome) ? outcome.refused.map(({ code }) => code) : [];
    };
    const all = many(5, 10);
    expect(codes({ share: 0.3 }, many(5, 4), many(5, 5), whole, size)).toEqual(['coverage: too few check dots judged']);
    expect(codes({ share: 0.3 }, many(4, 0), many(15, 15), whole, size)).toEqual([
      'coverage: too few check dots judged',
    ]);
    expect(codes({ share: 0.3 }, all, `${'g'.repeat(11)}nnnn`, whole, size)).toEqual([
      'coverage: too few check dots judged',
    ]);
    expect(codes({ share: 0.3 }, many(5, 5), many(0, 12) + '-'.repeat(8), whole, size)).toEqual([
      'coverage: dots not judged yet',
    ]);
    expect(codes({ share: 0.3, leftOut: 0.31 }, all, all, whole, size)).toEqual(['coverage: too dark or too bright']);
    expect(codes({ share: 0.3 }, all, all, whole, { width: 99, height: 100 })).toEqual([
      'coverage: zone too small on the photo',
    ]);
  });
});
