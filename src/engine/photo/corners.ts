import { aspectOf, type Outline, type Point, type Size } from './point';

/** Which corner of an outline: the ring, and the corner in it. */
export interface CornerAt {
  readonly ring: number;
  readonly corner: number;
}

/** How near a new corner must come to one of a neighbour to be put on it: share of the width. Chosen: half a fingertip. */
export const joins = 0.012;

/** Distance of two places in shares of the width. */
const apart = ([ax, ay]: Point, [bx, by]: Point, size: Size): number => Math.hypot(ax - bx, (ay - by) * aspectOf(size));

/** The corner nearest to a place; undefined where there is none. */
export const nearestCorner = (outline: Outline, at: Point, size: Size): CornerAt | undefined => {
  let best: { at: CornerAt; far: number } | undefined;
  for (const [ring, corners] of outline.entries()) {
    for (const [corner, point] of corners.entries()) {
      const far = apart(point, at, size);
      if (!best || far < best.far) best = { at: { ring, corner }, far };
    }
  }
  return best?.at;
};

/** A place, put on the nearest corner of the neighbours where that is as near as `joins`: their edges then meet without a gap. */
export const joined = (at: Point, neighbours: Outline, size: Size): Point => {
  const near = nearestCorner(neighbours, at, size);
  const corner = near && neighbours[near.ring]?.[near.corner];
  return corner && apart(corner, at, size) <= joins ? corner : at;
};

const inside = (x: number): number => Math.min(1, Math.max(0, x));

/** The outline with one corner changed: put elsewhere, held inside the picture; or taken out where `to` gives nothing. */
export const withCorner = (
  outline: Outline,
  { ring, corner }: CornerAt,
  to: (at: Point) => Point | undefined,
): Outline =>
  outline.map((corners, i) =>
    i !== ring
      ? corners
      : corners.flatMap((point, j): Point[] => {
          const [x, y] = (j === corner ? to(point) : point) ?? [];
          return x === undefined || y === undefined ? [] : [[inside(x), inside(y)]];
        }),
  );

/** The outline with a new corner halfway to the next one, and which it is. */
export const withCornerAfter = (
  outline: Outline,
  { ring, corner }: CornerAt,
): { readonly outline: Outline; readonly at: CornerAt } => ({
  outline: outline.map((corners, i) => {
    const [one, next] = [corners[corner], corners[(corner + 1) % corners.length]];
    if (i !== ring || !one || !next) return corners;
    const half: Point = [(one[0] + next[0]) / 2, (one[1] + next[1]) / 2];
    return [...corners.slice(0, corner + 1), half, ...corners.slice(corner + 1)];
  }),
  at: { ring, corner: corner + 1 },
});
