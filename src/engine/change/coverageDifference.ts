import { logit } from '../condition';
import { ladder } from '../trade';
import { type Rating, ratingOf } from './rating';
import { sharedVariance } from './sharedError';

const steps: readonly Rating[] = ladder
  .filter((step) => step.value > 0)
  .map(({ value, low, high }) => ratingOf({ value, low, high, method: 'ladder' }));

/** Difference over error, from the lower to the higher. */
export const plainZ = (low: Rating, high: Rating, otherPerson: boolean): number =>
  (logit(high.p) - logit(low.p)) /
  Math.sqrt(low.sd ** 2 + high.sd ** 2 + sharedVariance(low.byEye, high.byEye, otherPerson));

/**
 * z of a difference in coverage on the logit, positive when it grew.
 * The error of a rating near 0 or 1 is wide on the logit, so that the bare quotient could call a fall from 30 % to "<1" less
 * sure than one from 30 % to 3 %. A difference is at least as sure as every smaller one inside it: the surest of the
 * quotients between its two ends and the ladder steps that lie between them counts.
 */
export const coverageZ = (earlier: Rating, later: Rating, otherPerson: boolean): number => {
  const [low, high] = earlier.p <= later.p ? [earlier, later] : [later, earlier];
  const between = steps.filter((step) => step.p > low.p && step.p < high.p);
  let surest = 0;
  for (const from of [low, ...between]) {
    for (const to of [...between, high]) {
      if (to.p > from.p) surest = Math.max(surest, plainZ(from, to, otherPerson));
    }
  }
  return later.p >= earlier.p ? surest : -surest;
};
