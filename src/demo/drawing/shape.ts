export type Point = readonly [number, number];

/** A closed outline in units of a hundredth of the picture's width. */
export type Shape = { readonly points: readonly Point[] } | { readonly centre: Point; readonly radii: Point };

export const polygon = (...points: Point[]): Shape => ({ points });

/** A smooth closed outline through the points (Catmull-Rom), for what was modelled by hand. */
export const smooth = (...points: Point[]): Shape => {
  const at = (i: number): Point => points[(i + points.length) % points.length] as Point;
  const between = (i: number, t: number, axis: 0 | 1): number => {
    const [a, b, c, d] = [at(i - 1)[axis], at(i)[axis], at(i + 1)[axis], at(i + 2)[axis]];
    return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t * t + (3 * b - a - 3 * c + d) * t * t * t);
  };
  return {
    points: points.flatMap((_, i) => [0, 0.2, 0.4, 0.6, 0.8].map((t): Point => [between(i, t, 0), between(i, t, 1)])),
  };
};
export const ellipse = (cx: number, cy: number, rx: number, ry: number): Shape => ({
  centre: [cx, cy],
  radii: [rx, ry],
});

/** A band of a ring between two angles (degrees, 0 to the right, clockwise), between two radii. */
export const arc = (cx: number, cy: number, inner: number, outer: number, from: number, to: number): Shape => {
  const at = (r: number, degrees: number): Point => {
    const a = (degrees * Math.PI) / 180;
    return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
  };
  const steps = Array.from({ length: 41 }, (_, i) => from + ((to - from) * i) / 40);
  return { points: [...steps.map((a) => at(outer, a)), ...steps.toReversed().map((a) => at(inner, a))] };
};

/** Least and most x and y of an outline, found once: most points of a picture lie beside most outlines. */
const frames = new WeakMap<readonly Point[], readonly [number, number, number, number]>();

const frameOf = (points: readonly Point[]): readonly [number, number, number, number] => {
  const known = frames.get(points);
  if (known) return known;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const found = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] as const;
  frames.set(points, found);
  return found;
};

export const holds = (shape: Shape, x: number, y: number): boolean => {
  if ('centre' in shape) {
    const dx = (x - shape.centre[0]) / shape.radii[0];
    const dy = (y - shape.centre[1]) / shape.radii[1];
    return dx * dx + dy * dy <= 1;
  }
  const [left, right, top, bottom] = frameOf(shape.points);
  if (x < left || x > right || y < top || y > bottom) return false;
  let inside = false;
  for (let i = 0, j = shape.points.length - 1; i < shape.points.length; j = i++) {
    const [xi, yi] = shape.points[i] as Point;
    const [xj, yj] = shape.points[j] as Point;
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
};
