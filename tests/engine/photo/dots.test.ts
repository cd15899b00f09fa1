import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  contains,
  dotsCoverage,
  dotsIn,
  isRefused,
  type Outline,
  outlineArea,
  type Point,
} from '../../../src/engine/photo';

const size = { width: 1600, height: 1200 };
const square: Outline = [
  [
    [0.2, 0.2],
    [0.7, 0.2],
    [0.7, 0.8],
    [0.2, 0.8],
  ],
];
const twoPieces: Outline = [
  ...square,
  [
    [0.8, 0.1],
    [0.95, 0.1],
    [0.9, 0.5],
  ],
];
const codesOf = (told: ReturnType<typeof dotsCoverage>) =>
  (isRefused(told) ? told.refused : told.reasons).map(({ code }) => code);

describe('Dots laid over an outline', () => {
  it('are as many as asked for, all inside, the same for the same seed and others for another', () => {
    for (const n of [1, 49, 100]) {
      const { dots } = dotsIn(twoPieces, size, n, 7);
      expect(dots).toHaveLength(n);
      expect(dots.every((dot) => contains(twoPieces, dot))).toBe(true);
      expect(dotsIn(twoPieces, size, n, 7).dots).toEqual(dots);
      expect(dotsIn(twoPieces, size, n, 8).dots).not.toEqual(dots);
    }
  });

  it('fall in each half as often as its area says, over many seeds', () => {
    const runs = 400;
    let left = 0;
    for (let seed = 0; seed < runs; seed++)
      left += dotsIn(square, size, 49, seed).dots.filter(([x]) => x < 0.45).length;
    expect(left / (runs * 49)).toBeCloseTo(0.5, 2);
  });

  it('are spread: no strip of a fifth of the zone is left without', () => {
    for (let seed = 0; seed < 50; seed++) {
      const { dots } = dotsIn(square, size, 49, seed);
      for (let strip = 0; strip < 5; strip++) {
        const from = 0.2 + strip * 0.1;
        expect(dots.some(([x]) => x >= from && x < from + 0.1)).toBe(true);
      }
    }
  });

  it('lie apart by what the area leaves to each, in widths', () => {
    const { spacing } = dotsIn(square, size, 49, 1);
    expect(spacing).toBeCloseTo(Math.sqrt((0.5 * 0.6 * 0.75) / 49), 12);
  });

  it('are laid in any outline, crossing itself or not, and none in one without area', () => {
    const place = fc.integer({ min: 0, max: 40 }).map((n) => n / 40);
    const point = fc.tuple(place, place);
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 6 }), fc.integer({ min: 0, max: 1000 }), (ring, seed) => {
        const outline: Outline = [ring as Point[]];
        fc.pre(outlineArea(outline) > 1e-4);
        const { dots } = dotsIn(outline, size, 25, seed);
        expect(dots).toHaveLength(25);
        expect(dots.every((dot) => contains(outline, dot))).toBe(true);
      }),
      { numRuns: 100 },
    );
    const flat: Outline = [
      [
        [0.1, 0.1],
        [0.2, 0.2],
        [0.3, 0.3],
      ],
    ];
    expect(dotsIn([], size, 49, 1).dots).toEqual([]);
    expect(dotsIn(flat, size, 49, 1).dots.length).toBe(0);
  });
});

describe('Coverage from dots', () => {
  it('skips glare and dots not judged yet, and says so', () => {
    const told = dotsCoverage(`${'y'.repeat(10)}${'n'.repeat(30)}ggggg----`, square, size);
    if (isRefused(told)) throw new Error('refused');
    expect(told.value).toBe(0.25);
    expect(told.low).toBeLessThan(told.coverage.low);
    expect(told.high).toBeGreaterThan(told.coverage.high);
    expect(codesOf(told)).toEqual([
      'coverage: dots counted',
      'coverage: glare skipped',
      'coverage: dots left open',
      'coverage: a wrong dot is not in the range',
      'coverage: share of this photo',
    ]);
  });

  it('says nothing of too few dots, of glare that hides a third, of a zone too small, of dots nearer than pixels tell', () => {
    expect(codesOf(dotsCoverage('y'.repeat(19), square, size))).toEqual(['coverage: too few dots judged']);
    expect(codesOf(dotsCoverage('', square, size))).toEqual(['coverage: too few dots judged']);
    expect(codesOf(dotsCoverage(`${'y'.repeat(34)}${'g'.repeat(15)}`, square, size))).toEqual([
      'coverage: too much glare',
    ]);
    const small = { width: 160, height: 120 };
    expect(codesOf(dotsCoverage('n'.repeat(49), square, small))).toEqual(['coverage: zone too small on the photo']);
    expect(codesOf(dotsCoverage('n'.repeat(1000), square, small))).toContain('coverage: dots closer than pixels tell');
  });

  it('does not tell of a zone from its first rows', () => {
    expect(codesOf(dotsCoverage('y'.repeat(30) + '-'.repeat(19), square, size))).toEqual([
      'coverage: dots not judged yet',
    ]);
    expect(isRefused(dotsCoverage('y'.repeat(45) + '-'.repeat(4), square, size))).toBe(false);
  });

  it('says where dots lie closer than four fifths of the largest patch, and not where they lie wider', () => {
    const { spacing } = dotsIn(square, size, 49, 1);
    const answers = 'yn'.repeat(24);
    expect(codesOf(dotsCoverage(answers, square, size, spacing * 1.3))).toContain('coverage: dots closer than a patch');
    expect(codesOf(dotsCoverage(answers, square, size, spacing * 1.2))).not.toContain(
      'coverage: dots closer than a patch',
    );
  });
});
