import { describe, expect, test } from 'vitest';
import { benjaminiHochberg } from '../../src/engine/change/falseDiscovery';
import { twoSidedTail } from '../../src/engine/change/normalTail';

describe('the normal tail agrees with printed tables', () => {
  // Two-sided points of the standard normal, as in any printed table (e.g. Abramowitz & Stegun 1964, table 26.5); from memory, recomputed.
  test.each([
    [0, 1],
    [0.6744897501960817, 0.5],
    [1, 0.31731050786291415],
    [1.2815515655446004, 0.2],
    [1.6448536269514722, 0.1],
    [1.959963984540054, 0.05],
    [2, 0.0455002638963584],
    [2.5758293035489004, 0.01],
    [3, 0.0026997960632601866],
    [3.2905267314919255, 0.001],
    [3.890591886413149, 0.0001],
  ])('at %f the two-sided tail is %f', (z, p) => {
    expect(Math.abs(twoSidedTail(z) - p)).toBeLessThan(1e-12);
  });

  test('far out it keeps its relative precision: at 6 it is 1.973175290075e-9', () => {
    expect(twoSidedTail(6) / 1.973175290075e-9).toBeCloseTo(1, 9);
  });

  test('the series and the continued fraction meet without a step', () => {
    expect(twoSidedTail(2.4999999999)).toBeGreaterThan(twoSidedTail(2.5));
    expect(twoSidedTail(2.4999999999) - twoSidedTail(2.5)).toBeLessThan(1e-11);
  });

  test('the sign of z does not matter, and an endless z leaves nothing', () => {
    expect(twoSidedTail(-1.3)).toBe(twoSidedTail(1.3));
    expect(twoSidedTail(Number.POSITIVE_INFINITY)).toBe(0);
  });
});

describe('Benjamini-Hochberg gives the answer of its own paper', () => {
  // Benjamini & Hochberg 1995, J. R. Statist. Soc. B 57:289-300, section 4: thrombolysis in myocardial infarction. From memory, recomputed.
  const thrombolysis = [
    0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528, 0.759, 1,
  ];

  test('at 5 % the four smallest of fifteen are rejected (Bonferroni would reject three)', () => {
    const stands = benjaminiHochberg(thrombolysis, 0.05);
    expect(stands.filter(Boolean)).toHaveLength(4);
    expect(stands.slice(0, 4)).toEqual([true, true, true, true]);
    expect(thrombolysis.filter((p) => p <= 0.05 / 15)).toHaveLength(3);
  });

  test('the order the comparisons come in does not change which of them stand', () => {
    const turned = [...thrombolysis].reverse();
    expect(benjaminiHochberg(turned, 0.05)).toEqual(benjaminiHochberg(thrombolysis, 0.05).reverse());
  });

  test('it steps up: a p-value over its own limit stands where a larger one is under its limit', () => {
    // Limits at 0.05: 0.0167, 0.0333, 0.05. The first is over its own, the third under.
    expect(benjaminiHochberg([0.02, 0.03, 0.04], 0.05)).toEqual([true, true, true]);
    expect(benjaminiHochberg([0.02, 0.04, 0.06], 0.05)).toEqual([false, false, false]);
  });

  test('no comparison, no answer; one comparison stands at its own level', () => {
    expect(benjaminiHochberg([], 0.1)).toEqual([]);
    expect(benjaminiHochberg([0.09], 0.1)).toEqual([true]);
    expect(benjaminiHochberg([0.11], 0.1)).toEqual([false]);
  });
});
