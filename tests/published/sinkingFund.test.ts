import { pmt } from 'financial';
import { describe, expect, it } from 'vitest';
import { endowmentFor, savingFor, targetOn } from '../../src/engine/fund';

const units = (n: number) => ({ minor: Math.round(n * 100), currency: 'EUR' });
const wantedIn = (years: number) => `${2026 + years}-03-02`;

// Standard table factors (A/F), six places; computed, they bind to A/P by A/P = A/F + i.
const factors = [
  { rate: 0.05, years: 20, factor: 0.030243 },
  { rate: 0.06, years: 2, factor: 0.485437 },
  { rate: 0.06, years: 3, factor: 0.31411 },
  { rate: 0.08, years: 10, factor: 0.069029 },
  { rate: 0.1, years: 5, factor: 0.163797 },
];

describe('what to lay by each year', () => {
  it.each(factors)('is the table factor of $rate over $years years', ({ rate, years, factor }) => {
    const saving = savingFor(units(1_000_000), units(0), '2026-03-02', wantedIn(years), rate);
    expect((saving?.withInterest.minor ?? 0) / 100_000_000).toBeCloseTo(factor, 6);
  });

  it.each(factors)(
    'agrees with npm financial where something is there already: $rate over $years years',
    ({ rate, years }) => {
      const saving = savingFor(units(65_296), units(15_000), '2026-03-02', wantedIn(years), rate);
      const payment = pmt(rate, years, 15_000, -65_296);
      expect((saving?.withInterest.minor ?? 0) / 100).toBeCloseTo(Math.max(0, payment), 1);
    },
  );
});

describe('the invented stair, as worked out by hand from its printed lines', () => {
  // 46 000 + 7 500 + 4 800, 12 % of it on top; common practice, no source for the rates.
  const target = units((46_000 + 7_500 + 4_800) * 1.12);
  const rounded = (years: number) => Math.round(targetOn(target, '2026-03-02', wantedIn(years), 0.04).minor / 100);

  it('needs 65 296 now, 67 908 in one year, 73 449 in three, and 77 500 for its upkeep', () => {
    expect([rounded(0), rounded(1), rounded(3)]).toEqual([65_296, 67_908, 73_449]);
    expect(endowmentFor(units(3_100), 0.04)).toEqual(units(77_500));
  });
});
