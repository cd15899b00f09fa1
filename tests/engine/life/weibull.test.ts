import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import { type Interval, profileDrop, returnTime, weibull } from '../../../src/engine/life';

const never = Number.POSITIVE_INFINITY;
const life = (lower: number, upper: number): Interval => ({ lower, upper });

/** The log-likelihood once more, straight from S(t) = exp(-(t / scale)^shape). */
const logLikelihood = (lives: readonly Interval[], shape: number, scale: number): number =>
  lives.reduce((sum, { lower, upper }) => {
    const hazard = (t: number) => (t / scale) ** shape;
    if (lower === upper) return sum + Math.log((shape / lower) * hazard(lower)) - hazard(lower);
    return sum - hazard(lower) + Math.log(-Math.expm1(hazard(lower) - hazard(upper)));
  }, 0);

/** Highest over scales in fine steps, the shape held. */
const profile = (lives: readonly Interval[], shape: number): number => {
  let best = Number.NEGATIVE_INFINITY;
  for (let m = -3; m < 6; m += 0.002) best = Math.max(best, logLikelihood(lives, shape, Math.exp(m)));
  return best;
};

const mixed = (seed: number): Interval[] => {
  const drawn = drawnFrom(seed);
  return Array.from({ length: 3 + drawn.below(8) }, () => {
    const lower = 1 + drawn.below(8);
    const kind = drawn.below(4);
    if (kind === 0) return life(lower, lower);
    if (kind === 1) return life(lower, never);
    return kind === 2 ? life(0, lower) : life(lower, lower + 1 + drawn.below(5));
  });
};

describe('a Weibull fit', () => {
  it('is nowhere beaten, whatever shape and scale are tried', () => {
    let fits = 0;
    for (let seed = 1; seed <= 60; seed++) {
      const lives = mixed(seed);
      const fit = weibull(lives);
      if (!fit.ok) continue;
      fits++;
      expect(logLikelihood(lives, fit.shape.value, fit.scale.value)).toBeCloseTo(fit.logLikelihood, 8);
      for (let k = -3; k < 5; k += 0.25)
        for (let m = -3; m < 6; m += 0.25)
          expect(logLikelihood(lives, Math.exp(k), Math.exp(m))).toBeLessThan(fit.logLikelihood + 1e-9);
    }
    expect(fits).toBeGreaterThan(30);
  });

  it('has limits of the shape where the best that can be had has fallen by half the 90 % point of chi squared', () => {
    const lives = [life(2, 4), life(3, 3), life(4, 7), life(6, never), life(0, 5), life(8, 9)];
    const fit = weibull(lives);
    if (!fit.ok) throw new Error(fit.reason.code);
    for (const limit of [fit.shape.low, fit.shape.high])
      expect(fit.logLikelihood - profile(lives, limit as number)).toBeCloseTo(profileDrop, 3);
  });

  it('keeps a shape that was given, says that it was, and has no limits for it', () => {
    const fit = weibull([life(3, 5), life(3, 5)], { shape: 2 });
    if (!fit.ok) throw new Error(fit.reason.code);
    expect(fit.shape).toEqual({ value: 2, low: null, high: null });
    expect([fit.borrowed, fit.reasons[0]?.code]).toEqual([true, 'life: shape borrowed']);
    expect(fit.median.value).toBeCloseTo(fit.scale.value * Math.sqrt(Math.LN2), 9);
  });

  it.each([
    ['no interval', [], 'life: no interval'],
    ['none seen to end', [life(3, never), life(5, never)], 'life: no end seen'],
    ['all over at the first look', [life(0, 3), life(0, 5)], 'life: never seen lasting'],
    ['one interval', [life(3, 5)], 'life: one interval only'],
    ['one exact time', [life(3, 3)], 'life: one interval only'],
    ['identical intervals', [life(3, 5), life(3, 5)], 'life: all share a stretch'],
    ['identical exact times', [life(3, 3), life(3, 3)], 'life: all share a stretch'],
    ['a moment that suits all', [life(0, 5), life(2, 9), life(4, never)], 'life: all share a stretch'],
    ['over before the others were seen lasting', [life(0, 5), life(10, never), life(12, never)], 'life: no maximum'],
  ] as const)('is none where the likelihood has no maximum: %s', (_, lives, code) => {
    const fit = weibull(lives);
    expect(fit.ok ? fit.shape.value : fit.reason.code).toBe(code);
  });

  it('is rightly none where one moment suits all: steeper is always likelier', () => {
    const lives = [life(0, 5), life(2, 9), life(4, never)];
    const heights = [1, 2, 4, 8, 16, 32].map((shape) => profile(lives, shape));
    heights.slice(1).forEach((height, i) => {
      expect(height).toBeGreaterThan(heights[i] as number);
    });
  });

  it('refuses what is no interval, as a mistake of the caller', () => {
    for (const wrong of [life(5, 2), life(-1, 2), life(0, 0), life(Number.NaN, 2), life(never, never)])
      expect(() => weibull([wrong])).toThrow(RangeError);
  });
});

describe('the time by which a chance is reached', () => {
  it('is a share of the scale where nothing is known yet, and later the longer it has lasted', () => {
    expect(returnTime({ shape: 1, scale: 10 }, 0, 1 - Math.exp(-1))).toBeCloseTo(10, 12);
    // Without memory at shape 1: as long again from where it stands.
    expect(returnTime({ shape: 1, scale: 10 }, 7, 0.25) - 7).toBeCloseTo(
      returnTime({ shape: 1, scale: 10 }, 0, 0.25),
      12,
    );
    expect(returnTime({ shape: 3, scale: 10 }, 7, 0.25)).toBeGreaterThan(7);
  });
});
