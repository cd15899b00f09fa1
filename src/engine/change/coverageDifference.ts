import { logit } from '../condition';
import { ladder } from '../trade';
import { type Rating, ratingOf } from './rating';
import { sharedVariance } from './sharedError';

/** The ladder's steps as this eye would rate them. */
const stepsBy = (eye: number | undefined): readonly Rating[] => {
  const known = byEye.get(eye);
  if (known) return known;
  const steps = ladder
    .filter((step) => step.value > 0)
    .map(({ value, low, high }) => ratingOf({ value, low, high, method: 'ladder' }, eye));
  byEye.set(eye, steps);
  return steps;
};
const byEye = new Map<number | undefined, readonly Rating[]>();

/** Difference over error, from the lower to the higher. */
export const plainZ = (low: Rating, high: Rating, otherPerson: boolean): number =>
  (logit(high.p) - logit(low.p)) /
  Math.sqrt(low.sd ** 2 + high.sd ** 2 + sharedVariance(low.byEye, high.byEye, otherPerson));

/**
 * z of a difference in coverage on the logit, positive when it grew.
 * The error of a rating near 0 or 1 is wide on the logit, so that the bare quotient could call a fall from 30 % to "<1" less
 * sure than one from 30 % to 3 %. A difference is at least as sure as every smaller one inside it: the surest of the
 * quotients between its two ends and the ladder steps that lie between them counts, each end by its own eye.
 */
export const coverageZ = (earlier: Rating, later: Rating, otherPerson: boolean): number => {
  const [low, high] = earlier.p <= later.p ? [earlier, later] : [later, earlier];
  const inside = (step: Rating): boolean => step.p > low.p && step.p < high.p;
  let surest = 0;
  for (const from of [low, ...stepsBy(low.eye).filter(inside)]) {
    for (const to of [...stepsBy(high.eye).filter(inside), high]) {
      if (to.p > from.p) surest = Math.max(surest, plainZ(from, to, otherPerson));
    }
  }
  return later.p >= earlier.p ? surest : -surest;
};
