import { constants } from '../condition';

/**
 * Variance of a difference between two rounds that comes from what each round shares: the light and damp of its day, and the
 * person who looked. `then` and `now` are how far a shift of one on the logit moves the two figures; summed over many zones
 * first, so that it is added once and does not average out. Two persons differ by `betweenPersonsSd`, half of its variance each.
 * One person's bias is the same both times and falls out.
 */
export const sharedVariance = (earlier: number, later: number, otherPerson: boolean): number => {
  const each = constants.daySd.value ** 2 + (otherPerson ? constants.betweenPersonsSd.value ** 2 / 2 : 0);
  return each * (earlier ** 2 + later ** 2);
};
