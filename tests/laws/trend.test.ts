import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mannKendall, theilSen, trendOf } from '../../src/engine/trend';
import { yearly } from '../engine/trend/madeUp';

const values = fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 0, maxLength: 12 });
const turned = { trend: 'trend', 'rising each time so far': 'falling each time so far' } as Readonly<
  Record<string, string>
>;

describe('A trend', () => {
  it('turned round in time goes the other way, as surely', () => {
    fc.assert(
      fc.property(values, (y) => {
        const [there, back] = [trendOf(yearly(y)), trendOf(yearly([...y].reverse()))];
        expect(back.p).toBeCloseTo(there.p, 12);
        expect(back.s).toBe(-there.s || 0);
        if (there.word in turned) expect(back.word).toBe(turned[there.word]);
        if (there.s !== 0 && there.word === 'trend') expect(back.up).toBe(!there.up);
      }),
      { numRuns: 500 },
    );
  });

  it('does not hang on the unit or on where zero is', () => {
    fc.assert(
      fc.property(
        values,
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.integer({ min: -50, max: 50 }),
        (y, unit, zero) => {
          const [here, there] = [trendOf(yearly(y)), trendOf(yearly(y.map((v) => v * unit + zero)))];
          expect(there.word).toBe(here.word);
          expect(there.p).toBeCloseTo(here.p, 12);
          if (here.slope && there.slope) expect(there.slope.value).toBeCloseTo(here.slope.value * unit, 6);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('has a p in (0, 1] and a slope within its interval', () => {
    fc.assert(
      fc.property(values, (y) => {
        const { p } = mannKendall(y);
        expect(p).toBeGreaterThan(0);
        expect(p).toBeLessThanOrEqual(1);
        const found = theilSen(
          y.map((v, t) => ({ t, y: v })),
          0.9,
        );
        if (!found) return;
        expect(found.low).toBeLessThanOrEqual(found.slope);
        expect(found.high).toBeGreaterThanOrEqual(found.slope);
        expect(found.coverage).toBeGreaterThanOrEqual(0);
        expect(found.coverage).toBeLessThan(1);
      }),
      { numRuns: 500 },
    );
  });

  it('is called where nothing goes on at the rate its p allows, and no more', () => {
    // All orders of five and six different values: how many are called a trend.
    for (const n of [5, 6]) {
      const orders = permutations(Array.from({ length: n }, (_, i) => i));
      const called = orders.filter((y) => trendOf(yearly(y)).word === 'trend').length;
      expect(called).toBeGreaterThan(0);
      expect(called / orders.length).toBeLessThanOrEqual(0.05);
    }
  });
});

const permutations = (rows: readonly number[]): number[][] =>
  rows.length < 2
    ? [[...rows]]
    : rows.flatMap((row, i) => permutations([...rows.slice(0, i), ...rows.slice(i + 1)]).map((rest) => [row, ...rest]));
