import type { BodyOf } from '../record';
import { coverageMethodOf } from '../trade';
import { constants } from './constants';
import { fromLogit, heldShare, logit } from './logit';

export type Coverage = NonNullable<BodyOf<'finding'>['coverage']>;

export interface EyeError {
  /** This person's own spread from one time to the next on the logit, once it is known. Used for coverages judged by eye. */
  readonly sd?: number;
}

/** True for what an eye judged of the surface itself: dots, tracings and photos measure a photo, and have errors of their own. */
export const isByEye = ({ method }: Pick<Coverage, 'method'>): boolean => {
  const { ownSd, ofPhoto } = coverageMethodOf(method);
  return ownSd !== null && !ofPhoto;
};

/** The slope that turns points of cover into the logit, held where it would run away. */
const perPoint = (share: number): number => {
  const floor = constants.coverageFloor.value;
  const p = Math.min(1 - floor, Math.max(floor, share));
  return 1 / (p * (1 - p));
};

/**
 * Standard deviation of a coverage on the logit scale, its own error only (not the day's, not the other person's):
 * sqrt(s^2 + (0.005 / (p (1 - p)))^2 + (bin width on the logit)^2 / 12). A bin's width in points is turned into the logit at its
 * value, as the half point is: the outermost bins would otherwise be as wide as the place where we cut the logit off.
 * For dots and photos low and high are the 90 % range as reported.
 */
export const coverageSd = (coverage: Coverage, error: EyeError = {}): number => {
  const method = coverageMethodOf(coverage.method);
  const slope = perPoint(coverage.value);
  const floor = constants.coverageFloor.value * slope;
  if (method.ownSd === null) {
    return Math.max(floor, (logit(coverage.high) - logit(coverage.low)) / (2 * constants.z90.value));
  }
  const own = isByEye(coverage) ? (error.sd ?? method.ownSd) : method.ownSd;
  const bin = Math.max(0, coverage.high - coverage.low) * slope;
  return Math.sqrt(own ** 2 + floor ** 2 + bin ** 2 / 12);
};

/** The 90 % range of a coverage, as shares 0 to 1 that hold its value. */
export const coverageInterval = (
  coverage: Coverage,
  error: EyeError = {},
): { readonly low: number; readonly high: number } => {
  if (coverageMethodOf(coverage.method).ownSd === null) {
    return { low: Math.min(coverage.low, coverage.value), high: Math.max(coverage.high, coverage.value) };
  }
  const at = logit(coverage.value);
  const reach = constants.z90.value * coverageSd(coverage, error);
  return {
    low: Math.min(coverage.value, heldShare(fromLogit(at - reach))),
    high: Math.max(coverage.value, heldShare(fromLogit(at + reach))),
  };
};

/** The same coverage on a day that shifts the eye by `shift` on the logit; methods the day does not touch stay. */
export const onAnotherDay = (coverage: Coverage, shift: number): Coverage =>
  coverageMethodOf(coverage.method).sharedByDay
    ? { ...coverage, value: fromLogit(logit(coverage.value) + shift) }
    : coverage;
