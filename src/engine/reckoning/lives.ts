import { type Life, livesOf, type ZoneHolds } from '../hold';

/** One seed for all, so that the same holds give the same ranges on every tablet. */
const seed = 20260512;

/** What the holds of all works tell together. */
export const lives = (all: readonly (readonly ZoneHolds[])[]): readonly Life[] =>
  livesOf(
    all.map((zones) => ({ zones })),
    seed,
  );
