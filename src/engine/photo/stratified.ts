import { coverageNumbers } from './coverageNumbers';
import { shareInterval } from './shareInterval';
import type { Level } from './wilson';

interface Stratum {
  readonly hits: number;
  readonly judged: number;
}

interface Part {
  readonly weight: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Share and limits of one stratum, pushed out to what they would be if up to so many of its judgements were slips, all of them
 * one way (seen = true x (1 - missed) + (1 - true) x (seen wrongly), solved for the true share at the
 * worst of both). `unjudged` is its share where none was judged.
 */
const partOf = (weight: number, { hits, judged }: Stratum, unjudged: 0 | 1, level: Level): Part => {
  const [low, high] = shareInterval(hits, judged, level);
  const slips = coverageNumbers.slips.value;
  return {
    weight,
    value: judged === 0 ? unjudged : hits / judged,
    low: Math.max(0, (low - slips) / (1 - slips)),
    high: Math.min(1, high / (1 - slips)),
  };
};

const total = (parts: readonly Part[], of: (part: Part) => number): number =>
  parts.reduce((sum, part) => sum + part.weight * of(part), 0);

const reach = (parts: readonly Part[], of: (part: Part) => number): number =>
  Math.hypot(...parts.map((part) => part.weight * (of(part) - part.value)));

/** The end of the sum on one side. A stratum that may be all or nothing is taken so, and leaves no reach to the others. */
const endOf = (parts: readonly Part[], of: (part: Part) => number, bound: 0 | 1): number => {
  const open = parts.filter((part) => of(part) !== bound);
  const far = bound === 0 ? -reach(open, of) : reach(open, of);
  return (
    total(open, ({ value }) => value) +
    far +
    bound *
      total(
        parts.filter((part) => of(part) === bound),
        () => 1,
      )
  );
};

/**
 * Share of the whole from the dots in a mask of share `weight` and outside it, with limits that add each stratum's own reach in quadrature, each side by
 * itself, so that a count of nought still reaches up.
 * Source: Zou and Donner 2008, Stat. Med. 27:1693-1702 (variances recovered from limits); from memory.
 */
export const stratified = (weight: number, inside: Stratum, outside: Stratum, level: Level = 0.95) => {
  const parts = [partOf(weight, inside, 1, level), partOf(1 - weight, outside, 0, level)];
  const value = total(parts, (part) => part.value);
  return {
    value,
    low: Math.max(
      0,
      Math.min(
        value,
        endOf(parts, ({ low }) => low, 0),
      ),
    ),
    high: Math.min(
      1,
      Math.max(
        value,
        endOf(parts, ({ high }) => high, 1),
      ),
    ),
  };
};
