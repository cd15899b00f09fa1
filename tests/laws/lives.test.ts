import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  gettingShorter,
  type Interval,
  returnTime,
  stepsOf,
  survivalAt,
  turnbull,
  weibull,
} from '../../src/engine/life';

const never = Number.POSITIVE_INFINITY;
const time = fc.integer({ min: 1, max: 60 }).map((n) => n / 2);
const exact = time.map((t): Interval => ({ lower: t, upper: t }));
const lasting = time.map((t): Interval => ({ lower: t, upper: never }));
const between = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 20 }))
  .map(([lower, more]): Interval => ({ lower: lower / 2, upper: (lower + more) / 2 }));
const any = fc.oneof(exact, lasting, between);
const some = fc.array(any, { minLength: 1, maxLength: 30 });

/** Kaplan and Meier 1958: the share lasting beyond each time at which something ended. */
const kaplanMeier = (lives: readonly Interval[]): Map<number, number> => {
  const ends = [...new Set(lives.filter((l) => l.lower === l.upper).map((l) => l.upper))].sort((a, b) => a - b);
  let share = 1;
  return new Map(
    ends.map((t) => {
      const atRisk = lives.filter((l) => l.lower >= t).length;
      const over = lives.filter((l) => l.lower === t && l.upper === t).length;
      share *= 1 - over / atRisk;
      return [t, share];
    }),
  );
};

describe('Turnbull', () => {
  it('masses sum to one, whatever the intervals', () => {
    fc.assert(
      fc.property(some, (lives) => {
        const { masses } = turnbull(lives);
        expect(masses.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(1, 9);
        expect(masses.every(({ mass, left, right }) => mass > 0 && left <= right)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('is Kaplan and Meier where every end was seen happen', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(exact, exact, lasting), { minLength: 1, maxLength: 30 }), (lives) => {
        const found = turnbull(lives);
        for (const [t, share] of kaplanMeier(lives)) {
          const { low, high } = survivalAt(found, t);
          expect(low).toBeCloseTo(share, 6);
          expect(high).toBeCloseTo(share, 6);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('does not hang on the order of the rows, nor on each standing there twice', () => {
    fc.assert(
      fc.property(some, (lives) => {
        const { masses, logLikelihood } = turnbull(lives);
        const again = turnbull([...lives].reverse());
        expect(again).toEqual({ masses, logLikelihood });
        const twice = turnbull([...lives, ...lives]);
        // Where several answers are equally likely the chances of the intervals are still the same.
        expect(twice.logLikelihood / 2).toBeCloseTo(logLikelihood, 6);
      }),
      { numRuns: 100 },
    );
  });

  it('falls in steps from 1, never rising, with the unknown stretches between', () => {
    fc.assert(
      fc.property(some, (lives) => {
        const steps = stepsOf(turnbull(lives));
        expect(steps[0]?.from).toBe(0);
        steps.forEach((step, i) => {
          expect(step.low).toBeLessThanOrEqual(step.high);
          const next = steps[i + 1];
          if (next) {
            expect(next.from).toBe(step.to);
            expect(next.high).toBeLessThanOrEqual(step.high + 1e-12);
          }
        });
      }),
      { numRuns: 200 },
    );
  });
});

describe('Weibull', () => {
  it('of intervals shrinking onto exact times comes to the exact fit', () => {
    fc.assert(
      fc.property(fc.uniqueArray(time, { minLength: 3, maxLength: 12 }), (times) => {
        const fit = weibull(times.map((t) => ({ lower: t, upper: t })));
        if (!fit.ok) throw new Error(fit.reason.code);
        const offAt = (width: number): number => {
          const near = weibull(times.map((t) => ({ lower: t * (1 - width), upper: t * (1 + width) })));
          if (!near.ok) throw new Error(near.reason.code);
          return Math.abs(near.shape.value / fit.shape.value - 1) + Math.abs(near.scale.value / fit.scale.value - 1);
        };
        // Narrow enough not to overlap; from there on each tenth of the width is nearer by far.
        expect(offAt(1e-3)).toBeLessThan(0.05);
        expect(offAt(1e-4)).toBeLessThan(1e-3);
        expect(offAt(1e-5)).toBeLessThan(1e-5);
      }),
      { numRuns: 100 },
    );
  });

  it('is told a number or a reason, never a runaway, and its limits hold its value', () => {
    fc.assert(
      fc.property(fc.array(any, { maxLength: 15 }), (lives) => {
        const fit = weibull(lives);
        if (!fit.ok) {
          expect(fit.reason.code).toMatch(/^life: /);
          return;
        }
        for (const { value, low, high } of [fit.shape, fit.scale, fit.median]) {
          expect(Number.isFinite(value) && value > 0).toBe(true);
          expect(low ?? 0).toBeLessThanOrEqual(value * (1 + 1e-6));
          expect(high ?? never).toBeGreaterThanOrEqual(value * (1 - 1e-6));
        }
        expect(Number.isFinite(fit.logLikelihood)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('scales with the unit of time and keeps its shape', () => {
    fc.assert(
      fc.property(some, fc.constantFrom(0.01, 30.4375, 1000), (lives, unit) => {
        const [fit, other] = [
          weibull(lives),
          weibull(lives.map(({ lower, upper }) => ({ lower: lower * unit, upper: upper * unit }))),
        ];
        expect(other.ok).toBe(fit.ok);
        if (!fit.ok || !other.ok) return;
        expect(other.shape.value / fit.shape.value).toBeCloseTo(1, 4);
        expect(other.scale.value / fit.scale.value / unit).toBeCloseTo(1, 4);
      }),
      { numRuns: 100 },
    );
  });

  it('with its own shape given is the same fit', () => {
    fc.assert(
      fc.property(some, (lives) => {
        const fit = weibull(lives);
        if (!fit.ok) return;
        const held = weibull(lives, { shape: fit.shape.value });
        if (!held.ok) throw new Error(held.reason.code);
        expect(held.scale.value / fit.scale.value).toBeCloseTo(1, 6);
        expect(held.logLikelihood).toBeCloseTo(fit.logLikelihood, 7);
      }),
      { numRuns: 100 },
    );
  });

  it('reaches the chance of an end at the time it says, given that there was none before', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 6, noNaN: true }),
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (shape, scale, part, chance) => {
          const clear = part * scale;
          const t = returnTime({ shape, scale }, clear, chance);
          const hazard = (at: number) => (at / scale) ** shape;
          expect(1 - Math.exp(hazard(clear) - hazard(t))).toBeCloseTo(chance, 6);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('Getting shorter', () => {
  it('turned round in time is getting longer', () => {
    fc.assert(
      fc.property(fc.array(any, { maxLength: 8 }), (lives) => {
        const [there, back] = [gettingShorter(lives, 1), gettingShorter([...lives].reverse(), 1)];
        expect(back.sum).toBe(-there.sum || 0);
        expect(back.p).toBe(there.p);
        expect(back.word === 'getting longer').toBe(there.word === 'getting shorter');
      }),
      { numRuns: 300 },
    );
  });

  it('is never said of fewer than five, nor of what overlaps', () => {
    const falling = [12, 9, 6, 3].map((t) => ({ lower: t - 1, upper: t }));
    expect(gettingShorter(falling, 1).word).toBe('looks shorter, not proven');
    expect(gettingShorter([...falling, { lower: 1, upper: 2 }], 1)).toMatchObject({
      word: 'getting shorter',
      p: 2 / 120,
      lastPair: 'shorter than the last one',
    });
    const drifting = [
      [0, 11.7],
      [0, 4.6],
      [1.8, 3.7],
      [1.6, 3],
      [1.4, 2.8],
      [1.4, 2.5],
    ].map(([lower, upper]) => ({ lower: lower as number, upper: upper as number }));
    expect(gettingShorter(drifting, 1)).toMatchObject({ word: 'looks shorter, not proven', sum: 0, p: 1 });
  });
});
