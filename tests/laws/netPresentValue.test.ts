import fc from 'fast-check';
import * as financial from 'financial';
import { describe, expect, it } from 'vitest';
import { cumulativeWorth, netPresentValue, overtakesIn } from '../../src/engine/money';
import { runs } from './runs';

const rate = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const payments = fc.array(fc.integer({ min: -1_000_000, max: 1_000_000 }), { minLength: 1, maxLength: 60 });
const two = fc.integer({ min: 1, max: 40 }).chain((length) => {
  const list = fc.array(fc.integer({ min: 0, max: 1_000_000 }), { minLength: length, maxLength: length });
  return fc.tuple(list, list);
});
const near = (a: number, b: number, scale: number): boolean => Math.abs(a - b) <= 1e-9 * (1 + scale);

describe('The worth today of payments', () => {
  it('is linear: of a sum the sum, of a multiple the multiple', () => {
    fc.assert(
      fc.property(two, rate, fc.integer({ min: -9, max: 9 }), ([a, b], r, k) => {
        const whole = netPresentValue(
          a.map((paid, year) => paid + k * (b[year] ?? 0)),
          r,
        );
        const parts = netPresentValue(a, r) + k * netPresentValue(b, r);
        const scale = netPresentValue(a, r) + Math.abs(k) * netPresentValue(b, r);
        return near(whole, parts, Math.abs(scale));
      }),
      runs,
    );
  });

  it('is what a finance library written by others says', () => {
    fc.assert(
      fc.property(payments, rate, (paid, r) => {
        const scale = netPresentValue(paid.map(Math.abs), r);
        return near(netPresentValue(paid, r), financial.npv(r, paid), scale);
      }),
      runs,
    );
  });

  it('a year later is worth one rate less, and at no interest all years weigh the same', () => {
    fc.assert(
      fc.property(payments, rate, (paid, r) => {
        const scale = netPresentValue(paid.map(Math.abs), r);
        return near(netPresentValue([0, ...paid], r) * (1 + r), netPresentValue(paid, r), scale);
      }),
      runs,
    );
    expect(netPresentValue([1, 2, 3], 0)).toBe(6);
  });

  it('one way has overtaken another in a year exactly where from then on it never stands higher', () => {
    fc.assert(
      fc.property(two, fc.double({ min: 0, max: 0.2, noNaN: true }), ([a, b], r) => {
        const year = overtakesIn(a, b, r);
        const [one, other] = [cumulativeWorth(a, r), cumulativeWorth(b, r)];
        const dearer = one.map((sum, t) => sum > (other[t] ?? 0) + 0.005);
        if (year === null) return dearer.at(-1) === true;
        return dearer.slice(year).every((is) => !is) && (year === 0 || dearer[year - 1] === true);
      }),
      runs,
    );
  });
});
