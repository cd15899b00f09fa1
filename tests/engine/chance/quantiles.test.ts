import { describe, expect, it } from 'vitest';
import { fQuantile, incompleteBeta, logGamma, tQuantile } from '../../../src/engine/chance';

describe('Quantiles', () => {
  // Upper 5 % points as any printed table has them (three decimals); values from memory.
  it.each([
    [1, 6.314],
    [5, 2.015],
    [10, 1.812],
    [12, 1.782],
    [20, 1.725],
    [30, 1.697],
    [120, 1.658],
  ])('of t with %i degrees agree with the printed table', (degrees, printed) => {
    expect(tQuantile(0.95, degrees)).toBeCloseTo(printed, 3);
    expect(tQuantile(0.05, degrees)).toBeCloseTo(-printed, 3);
  });

  // Upper 5 % points of F, printed tables; values from memory.
  it.each([
    [1, 10, 4.96],
    [5, 10, 3.33],
    [5, 15, 2.9],
    [10, 5, 4.74],
    [3, 3, 9.28],
  ])('of F with %i and %i degrees agree with the printed table', (above, below, printed) => {
    expect(fQuantile(0.95, above, below)).toBeCloseTo(printed, 2);
  });

  it('turn over: the low point of F is one over the high point with the degrees exchanged', () => {
    expect(fQuantile(0.05, 7, 12) * fQuantile(0.95, 12, 7)).toBeCloseTo(1, 10);
  });

  it('rest on gamma and beta functions that meet their closed forms', () => {
    expect(Math.exp(logGamma(6))).toBeCloseTo(120, 9);
    expect(Math.exp(2 * logGamma(0.5))).toBeCloseTo(Math.PI, 12);
    expect(incompleteBeta(0.3, 1, 1)).toBeCloseTo(0.3, 13);
    expect(incompleteBeta(0.3, 2, 1)).toBeCloseTo(0.09, 13);
    expect(incompleteBeta(0.3, 2.5, 4)).toBeCloseTo(1 - incompleteBeta(0.7, 4, 2.5), 13);
  });
});
