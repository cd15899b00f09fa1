import type { Outline, Point } from './point';

/** An outline carried over to another photo, corner by corner: what is straight stays straight. Corners may come to lie outside it. */
export const outlineThrough = (outline: Outline, through: (place: Point) => Point): Outline =>
  outline.map((ring) => ring.map(through));
