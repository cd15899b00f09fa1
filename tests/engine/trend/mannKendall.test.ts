import fc from 'fast-check';
import { expect, it } from 'vitest';
import { pairSigns } from '../../../src/engine/chance';
import { mannKendall } from '../../../src/engine/trend';

it('counts what trying every order finds, ties and all', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 4 }), { maxLength: 8 }), (values) => {
      const tried = pairSigns(values.length, (i, j) => Math.sign((values[j] as number) - (values[i] as number)), 1);
      const { s, p } = mannKendall(values);
      expect(s).toBe(tried.sum);
      expect(p).toBeCloseTo(tried.p, 10);
    }),
    { numRuns: 150 },
  );
});

it('answers for thirty years without a shadow of NaN', () => {
  const rising = Array.from({ length: 30 }, (_, i) => i);
  expect(mannKendall(rising).p).toBeGreaterThan(0);
  expect(mannKendall(rising).p).toBeLessThan(1e-12);
  expect(mannKendall(new Array(30).fill(2))).toMatchObject({ s: 0, p: 1 });
});
