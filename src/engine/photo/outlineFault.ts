import type { Outline, Point, Ring } from './point';
import { contains, crossesItself, ringArea } from './polygon';

/** Why rings are no outline of a zone. */
export type OutlineFault = 'too few corners' | 'crosses itself' | 'too small' | 'pieces overlap';

/** A thousandth of the width by a thousandth of the height: what a slip of the finger leaves. */
const leastPiece = 1e-6;

/** Pieces may meet, and lie a little over each other: there the surface counts once. One mostly on another was drawn twice. */
const overlap = (one: Ring, other: Ring): boolean => liesIn(one, other) || liesIn(other, one);

/** True where the middle of a piece lies in itself and in another. */
const liesIn = (inner: Ring, outer: Ring): boolean => {
  const middle = inner.reduce<Point>(([x, y], p) => [x + p[0] / inner.length, y + p[1] / inner.length], [0, 0]);
  return contains([inner], middle) && contains([outer], middle);
};

/** The first fault of an outline, or undefined where it has none. No ring at all is too few corners. */
export const outlineFault = (outline: Outline): OutlineFault | undefined => {
  if (outline.length === 0 || outline.some((ring) => ring.length < 3)) return 'too few corners';
  if (outline.some(crossesItself)) return 'crosses itself';
  if (outline.some((ring) => ringArea(ring) < leastPiece)) return 'too small';
  const overlaps = outline.some((one, i) => outline.slice(i + 1).some((other) => overlap(one, other)));
  return overlaps ? 'pieces overlap' : undefined;
};
