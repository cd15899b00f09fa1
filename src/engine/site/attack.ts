import type { Figure } from '../record';
import type { CorrosionRate } from './corrosion';
import { depositionClasses, type Metal, metalRow, powerUntil } from './metals';
import { because } from './reasonCodes';

/** How an attack is carried on past twenty years. */
export type Beyond = 'line' | 'power';

/** By what the first year's attack is multiplied after so many years: t^b, past twenty years a straight line or the power itself. */
export const multiplier = (years: number, b: number, beyond: Beyond = 'line'): number =>
  years <= powerUntil || beyond === 'power'
    ? years ** b
    : powerUntil ** b + b * powerUntil ** (b - 1) * (years - powerUntil);

/**
 * ISO 9224:2012: depth lost by a clean coupon over years, um. The value goes by the mean exponent; the range runs from the low end of
 * the first year's rate by the mean exponent to its high end by the careful one, which adds two standard deviations.
 */
export const attackOver = (first: CorrosionRate, years: number): Figure => {
  const { b1, b2 } = metalRow(first.metal);
  const { value, low, high } = first.rate;
  return {
    value: value * multiplier(years, b1),
    low: low * multiplier(years, b1),
    high: high * multiplier(years, b2),
    reasons: years > powerUntil ? [because('site: straight line beyond', { years: powerUntil })] : [],
  };
};

/** The two exponents of a metal: mean, and careful. */
export const exponentsOf = (metal: Metal): { readonly b1: number; readonly b2: number } => {
  const { b1, b2 } = metalRow(metal);
  return { b1, b2 };
};

/** Deposition class by the limits of 2012; null above the last. */
export const depositionClass = (what: keyof typeof depositionClasses, value: number): string | null =>
  depositionClasses[what].find(({ to }) => value <= to)?.id ?? null;
