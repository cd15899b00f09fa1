import { type Life, livesOf, type ZoneHolds } from '../hold';

/** One seed for all that is drawn, so that the same record gives the same ranges on every tablet. */
export const seedOfDraws = 20260512;

/** What the holds of all works tell together. */
export const lives = (all: readonly (readonly ZoneHolds[])[]): readonly Life[] =>
  livesOf(
    all.map((zones) => ({ zones })),
    seedOfDraws,
  );
