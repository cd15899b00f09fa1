import { coverageSd, fromLogit, heldShare, logit } from '../condition';
import type { BodyOf } from '../record';
import { coverageMethodOf } from '../trade';
import { thresholds } from './thresholds';

export type Coverage = NonNullable<BodyOf<'finding'>['coverage']>;

/** One coverage as a verdict weighs it. */
export interface Rating {
  /** Fraction, held off 0 and 1. */
  readonly p: number;
  /** Own error on the logit, standard deviation; what a day or a person shares over a round is not in it. */
  readonly sd: number;
  /** How far a shift of the eye, shared over a round, moves it on the logit: 1 by eye, 0 where dots or a photo were measured. */
  readonly byEye: number;
  /** Spread of the eye that judged, where it is known. */
  readonly eye?: number;
}

/**
 * What was seen never counts as less than what "nothing found" stands for: a new speck would come out as better. `eye` is the spread
 * of who judged; the assumed one holds where it is not known.
 */
export const ratingOf = (coverage: Coverage, eye?: number): Rating => ({
  p: Math.max(thresholds.nothingCoverage.value, heldShare(coverage.value)),
  sd: coverageSd(coverage, eye === undefined ? {} : { sd: eye }),
  byEye: coverageMethodOf(coverage.method).sharedByDay ? 1 : 0,
  ...(eye === undefined ? {} : { eye }),
});

/** "Nothing found" has an error too: small occurrences are overlooked. */
const plainNothing: Rating = { p: thresholds.nothingCoverage.value, sd: thresholds.nothingSd.value, byEye: 1 };

/** Its error is of what anybody overlooks; the eye that found nothing stands with it for the steps between. */
export const nothingFound = (eye?: number): Rating => (eye === undefined ? plainNothing : { ...plainNothing, eye });

/** What a small step on the logit moves the coverage itself: p (1 - p). */
export const slopeAt = (p: number): number => p * (1 - p);

/** The share a step of `d` on the logit leads to. */
export const movedBy = (p: number, d: number): number => fromLogit(logit(p) + d);

/**
 * Ratings of several zones as one over their joined area: p = sum A p / sum A. `values` are the coverages as they were seen
 * (0 where nothing was found), `shares` of the area sum to 1. Errors of the single ratings in quadrature, carried to the logit.
 */
export const joinedRating = (
  parts: readonly { readonly rating: Rating; readonly value: number; readonly share: number }[],
): Rating => {
  const p = heldShare(parts.reduce((sum, { share, value }) => sum + share * value, 0));
  const own = Math.hypot(...parts.map(({ share, rating }) => share * slopeAt(rating.p) * rating.sd));
  const eye = parts.reduce((sum, { share, rating }) => sum + share * slopeAt(rating.p) * rating.byEye, 0);
  const spread = parts[0]?.rating.eye;
  return { p, sd: own / slopeAt(p), byEye: eye / slopeAt(p), ...(spread === undefined ? {} : { eye: spread }) };
};
