import type { Figure, Reason } from '../record';

/** Ends of a sum from the ends of its parts, each part's error its own: deviations add in quadrature, each side by itself. */
export const inQuadrature = (
  parts: readonly { readonly value: number; readonly low: number; readonly high: number }[],
) => ({
  down: Math.sqrt(parts.reduce((sum, part) => sum + (part.value - part.low) ** 2, 0)),
  up: Math.sqrt(parts.reduce((sum, part) => sum + (part.high - part.value) ** 2, 0)),
});

/** A figure from its value and its reach to each side, held between `least` and `most`. */
export const figureAround = (
  value: number,
  reach: { readonly down: number; readonly up: number },
  held: { readonly least: number; readonly most: number },
  reasons: readonly Reason[] = [],
): Figure => ({
  value,
  low: Math.max(held.least, value - reach.down),
  high: Math.max(value, Math.min(held.most, value + reach.up)),
  reasons,
});
