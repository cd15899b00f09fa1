import type { Outline, Point, Ring } from './point';

/** Twice the signed area of a ring (the surveyor's formula), in fractions of the picture. */
const doubled = (ring: Ring): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length] as Point;
    return sum + x * ny - nx * y;
  }, 0);

/** Area of a ring as a share of the picture; rings that cross themselves are not told apart here, see `crossesItself`. */
export const ringArea = (ring: Ring): number => Math.abs(doubled(ring)) / 2;

/** Area of all rings together as a share of the picture. */
export const outlineArea = (outline: Outline): number => outline.reduce((sum, ring) => sum + ringArea(ring), 0);

/** True where the point lies in one of the rings (even-odd rule). */
export const contains = (outline: Outline, point: Point): boolean => outline.some((ring) => inRing(ring, point));

const inRing = (ring: Ring, [x, y]: Point): boolean => {
  let inside = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [ax, ay] = ring[i] as Point;
    const [bx, by] = ring[j] as Point;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
};

/** Least and most x and y. */
export const boundsOf = (outline: Outline): { readonly x: [number, number]; readonly y: [number, number] } => {
  const all = outline.flat();
  const of = (axis: 0 | 1): [number, number] => [
    all.reduce((least, p) => Math.min(least, p[axis]), 1),
    all.reduce((most, p) => Math.max(most, p[axis]), 0),
  ];
  return { x: of(0), y: of(1) };
};

/** A place well inside the largest ring, for its letter: of a grid over the ring, the point furthest from its edge. */
export const middleOf = (outline: Outline): Point | undefined => {
  const largest = [...outline].sort((a, b) => ringArea(b) - ringArea(a))[0];
  if (!largest || largest.length < 3) return undefined;
  const { x, y } = boundsOf([largest]);
  const steps = 16;
  const at = ([low, high]: [number, number], i: number) => low + ((high - low) * (i + 0.5)) / steps;
  let best: { point: Point; off: number } | undefined;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const point: Point = [at(x, i), at(y, j)];
      if (!inRing(largest, point)) continue;
      const off = fromEdge(largest, point);
      if (!best || off > best.off) best = { point, off };
    }
  }
  return best?.point ?? largest[0];
};

const fromEdge = (ring: Ring, point: Point): number =>
  ring.reduce((least, a, i) => Math.min(least, fromSegment(point, a, ring[(i + 1) % ring.length] as Point)), 2);

const fromSegment = ([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number => {
  const length = (bx - ax) ** 2 + (by - ay) ** 2;
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length));
  return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
};

const side = ([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);

/** True where two sides of the ring that do not meet in a corner cross each other. */
export const crossesItself = (ring: Ring): boolean => {
  const n = ring.length;
  for (let i = 0; i < n; i++) {
    for (let j = i + 2; j < n; j++) {
      if (i === 0 && j === n - 1) continue;
      const [a, b] = [ring[i] as Point, ring[(i + 1) % n] as Point];
      const [c, d] = [ring[j] as Point, ring[(j + 1) % n] as Point];
      if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return true;
    }
  }
  return false;
};
