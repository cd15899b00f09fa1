import { describe, expect, it } from 'vitest';
import { coverageInterval, coverageSd, fromLogit, logit, scoreFinding } from '../../../src/engine/condition';
import {
  dotsCoverage,
  isRefused,
  type Measured,
  type Measurement,
  maskCoverage,
  type Outline,
  shareInterval,
  tracedCoverage,
} from '../../../src/engine/photo';
import { scaleOf } from '../../../src/engine/trade';
import { findingBody } from './madeUp';

const size = { width: 1200, height: 900 };
const square = (left: number, top: number, side: number): Outline[number] => [
  [left, top],
  [left + side, top],
  [left + side, top + side],
  [left, top + side],
];
const zone: Outline = [square(0.1, 0.1, 0.8)];
const sure = (told: Measurement): Measured => {
  if (isRefused(told)) throw new Error(told.refused.map(({ code }) => code).join());
  return told;
};
const dots = sure(dotsCoverage('y'.repeat(10) + 'n'.repeat(39), zone, size));
const mask = sure(maskCoverage({ share: 0.2 }, 'y'.repeat(8), `${'n'.repeat(21)}y`, zone, size));
const traced = sure(tracedCoverage([square(0.2, 0.2, 0.3)], zone, size));
const scored = (coverage: Measured['coverage'], options = {}) =>
  scoreFinding(findingBody('green-spots', { coverage }), scaleOf(null), options);
const z90 = 1.6448536269514722;

describe('Coverage measured on a photo, as it is scored', () => {
  it('is scored with its own 90 % range, not with the wider 95 % one that is shown', () => {
    const [low, high] = shareInterval(10, 49, 0.9);
    expect(coverageInterval(dots.coverage)).toEqual({ low, high });
    expect(coverageInterval(mask.coverage)).toEqual({ low: mask.coverage.low, high: mask.coverage.high });
    for (const { coverage, low, high } of [dots, mask, traced]) {
      const range = coverageInterval(coverage);
      expect(range.low).toBeGreaterThan(low);
      expect(range.high).toBeLessThan(high);
    }
  });

  it('has on the logit the spread its 90 % range has', () => {
    for (const { coverage } of [dots, mask]) {
      expect(coverageSd(coverage)).toBeCloseTo((logit(coverage.high) - logit(coverage.low)) / (2 * z90), 12);
    }
  });

  it('has, where it was traced, the spread of two tracings and that of the corners, one beside the other', () => {
    const { value, coverage, low, high } = traced;
    // Four corners, each between neighbours a diagonal apart; the hand is off by 0.5 % of the width each way.
    const diagonal = Math.hypot(0.3, 0.3 * 0.75);
    const corners = (0.005 * Math.sqrt(4 * diagonal ** 2)) / 2 / (0.64 * 0.75);
    const slope = 1 / (value * (1 - value));
    const sd = Math.sqrt(0.15 ** 2 + (0.005 * slope) ** 2 + (corners * slope) ** 2);
    expect(coverageSd(coverage)).toBeCloseTo(sd, 12);
    expect(low).toBeCloseTo(fromLogit(logit(value) - 1.959963984540054 * sd), 12);
    expect(high).toBeCloseTo(fromLogit(logit(value) + 1.959963984540054 * sd), 12);
  });

  it('is not moved by the light of the day where dots or pixels were counted, nor by whose eye it was', () => {
    for (const { coverage } of [dots, mask]) {
      expect(scored(coverage, { dayShift: 0.5 })).toEqual(scored(coverage));
      expect(coverageSd(coverage, { sd: 2 })).toBe(coverageSd(coverage));
    }
    expect(coverageSd(traced.coverage, { sd: 2 })).toBe(coverageSd(traced.coverage));
    expect(scored(traced.coverage, { dayShift: 0.5 }).loss).toBeGreaterThan(scored(traced.coverage).loss);
  });

  it.each([dots, mask, traced])(
    'says in a score that it is the share of the photo, and bears no bare number',
    (told) => {
      const score = scored(told.coverage);
      expect(score.reasons.map(({ code }) => code)).toEqual(['score: share of the photo']);
      expect(score.cover?.value).toBeCloseTo(told.value, 12);
      expect(score.low).toBeLessThan(score.loss);
      expect(score.high).toBeGreaterThan(score.loss);
    },
  );

  it('stays usable where nothing was hit: a range from nought up', () => {
    const none = sure(dotsCoverage('n'.repeat(49), zone, size));
    const { low, high } = coverageInterval(none.coverage);
    expect(low).toBe(0);
    expect(high).toBeGreaterThan(0.03);
    expect(Number.isFinite(coverageSd(none.coverage))).toBe(true);
  });
});
