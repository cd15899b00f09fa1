import { constants, heldShare } from '../condition';
import { ladder, ladderStepOf } from '../trade';
import { plainZ } from './coverageDifference';
import { type Coverage, movedBy, type Rating, ratingOf } from './rating';
import type { SmallestReal } from './verdict';

/** Steps on the logit: going out, and how finely the first real difference is told. */
const coarse = 0.1;
const fine = 0.001;
/** Nobody can enter less than the least step: below it stands only "gone". */
const least = ladder.find((step) => step.value > 0)?.value ?? 0;
const most = heldShare(1);

/** The first coverage, going out from the start in one direction, that would be called a change. */
const firstReal = (
  start: Rating,
  ratingAt: (p: number) => Rating,
  otherPerson: boolean,
  way: 1 | -1,
): number | null => {
  const real = (d: number): boolean => {
    const there = ratingAt(heldShare(movedBy(start.p, way * d)));
    const z = way > 0 ? plainZ(start, there, otherPerson) : plainZ(there, start, otherPerson);
    return z > constants.z95.value;
  };
  const inside = (d: number): boolean => {
    const p = movedBy(start.p, way * d);
    return p >= least && p < most;
  };
  for (let d = coarse; inside(d); d += coarse) {
    if (!real(d)) continue;
    let [not, yes] = [d - coarse, d];
    while (yes - not > fine) {
      const middle = (not + yes) / 2;
      if (real(middle)) yes = middle;
      else not = middle;
    }
    return movedBy(start.p, way * yes);
  }
  return null;
};

/**
 * The smallest coverages below and above a start that would be called a change, fractions, to 0.001 on the logit.
 * `ratingAt` tells the error a later rating of that size would have. Null where even the end of the scale would not be called one:
 * from 1 % no smaller coverage is, only "gone" may be.
 */
export const smallestReal = (start: Rating, ratingAt: (p: number) => Rating, otherPerson: boolean): SmallestReal => ({
  from: start.p,
  down: firstReal(start, ratingAt, otherPerson, -1),
  up: firstReal(start, ratingAt, otherPerson, 1),
});

/**
 * A later rating made in the way of this one: by eye it takes the ladder's bin there and the spread of the later eye, a measured one
 * keeps its error.
 */
export const inTheWayOf = (coverage: Coverage | undefined, rating: Rating, eye?: number): ((p: number) => Rating) => {
  if (!coverage || rating.byEye === 0) return (p) => ({ ...rating, p });
  return (p) => {
    const { low, high } = ladderStepOf(p);
    return ratingOf({ value: p, low, high, method: coverage.method }, eye);
  };
};
