import { coverageNumbers } from './coverageNumbers';
import { type Level, wilson } from './wilson';

interface Stratum {
  readonly hits: number;
  readonly judged: number;
}

/** Share and limits of one stratum; judgements that may be slips, either way, push both limits out. */
const limitsOf = ({ hits, judged }: Stratum, level: Level) => {
  const [low, high] = wilson(hits, judged, level);
  const slips = coverageNumbers.slips.value;
  const value = judged === 0 ? 0 : hits / judged;
  return {
    value,
    low: Math.min(value, Math.max(0, (low - slips) / (1 - slips))),
    high: Math.max(value, Math.min(1, high / (1 - slips))),
  };
};

/**
 * Weighted share of two strata, weight W in the first, with limits that add each stratum's own reach in quadrature, side by side: a
 * count of nought still has an upper reach. Source: Zou and Donner 2008, Stat. Med. 27:1693-1702 (recovering variances from limits);
 * from memory.
 */
export const stratified = (weight: number, inside: Stratum, outside: Stratum, level: Level = 0.95) => {
  const a = limitsOf(inside, level);
  const b = limitsOf(outside, level);
  const rest = 1 - weight;
  const value = weight * a.value + rest * b.value;
  return {
    value,
    low: Math.max(0, value - Math.hypot(weight * (a.value - a.low), rest * (b.value - b.low))),
    high: Math.min(1, value + Math.hypot(weight * (a.high - a.value), rest * (b.high - b.value))),
  };
};
