import type { Interval } from '../life';
import type { Hold } from './hold';

/** A hold as engine/life reads it, in months. */
export const intervalOf = ({ lower, upper }: Pick<Hold, 'lower' | 'upper'>): Interval => ({
  lower,
  upper: upper ?? Number.POSITIVE_INFINITY,
});

/** Holds that say something: one that was neither seen to last nor seen to end leaves all open. */
export const telling = (holds: readonly Hold[]): readonly Hold[] =>
  holds.filter(({ lower, upper }) => lower > 0 || upper !== null);
