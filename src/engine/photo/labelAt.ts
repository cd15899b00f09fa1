import { aspectOf, type Outline, type Point, type Ring, type Size } from './point';
import { boundsOf, contains, ringArea } from './polygon';

const steps = 20;

const fromSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const length = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
};

/**
 * Where the letter of a zone stands: in its largest piece, clear of the outlines that lie over it, as far from every edge as can be.
 * `room` is how far that is, as a share of the width. Undefined where there is no piece.
 */
export const labelAt = (
  outline: Outline,
  over: readonly Outline[],
  size: Size,
): { readonly at: Point; readonly room: number } | undefined => {
  const largest = outline.reduce<Ring | undefined>(
    (most, ring) => (most && ringArea(most) >= ringArea(ring) ? most : ring),
    undefined,
  );
  if (!largest?.[0]) return undefined;
  const aspect = aspectOf(size);
  const { x, y } = boundsOf([largest]);
  const meets = over.filter((other) => {
    const there = boundsOf(other);
    return there.x[0] < x[1] && there.x[1] > x[0] && there.y[0] < y[1] && there.y[1] > y[0];
  });
  const edges = [largest, ...meets.flat()].flatMap((ring) => {
    const square = ring.map(([px, py]): Point => [px, py * aspect]);
    return square.map((a, i) => [a, square[(i + 1) % square.length] as Point] as const);
  });
  let best: { at: Point; room: number } | undefined;
  for (let i = 0; i < steps * steps; i++) {
    const at: Point = [
      x[0] + ((x[1] - x[0]) * ((i % steps) + 0.5)) / steps,
      y[0] + ((y[1] - y[0]) * (Math.floor(i / steps) + 0.5)) / steps,
    ];
    if (!contains([largest], at) || meets.some((other) => contains(other, at))) continue;
    const room = edges.reduce((least, [a, b]) => Math.min(least, fromSegment([at[0], at[1] * aspect], a, b)), 2);
    if (!best || room > best.room) best = { at, room };
  }
  return best ?? { at: largest[0], room: 0 };
};
