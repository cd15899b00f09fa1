import type { Point } from './point';

/** A 3 by 3 matrix row by row, taking a place [x, y, 1] to [x' w, y' w, w]. */
export type PlaneMap = readonly [number, number, number, number, number, number, number, number, number];

/** What the place is divided by: of one sign on this side of the horizon, 0 on it. */
export const depthAt = (map: PlaneMap, [x, y]: Point): number => map[6] * x + map[7] * y + map[8];

export const mapped = (map: PlaneMap, [x, y]: Point): Point => {
  const w = depthAt(map, [x, y]);
  return [(map[0] * x + map[1] * y + map[2]) / w, (map[3] * x + map[4] * y + map[5]) / w];
};

/** First `inner`, then `outer`. */
export const after = (outer: PlaneMap, inner: PlaneMap): PlaneMap => {
  const at = (row: number, column: number): number =>
    [0, 1, 2].reduce((sum, k) => sum + (outer[3 * row + k] as number) * (inner[3 * k + column] as number), 0);
  return [at(0, 0), at(0, 1), at(0, 2), at(1, 0), at(1, 1), at(1, 2), at(2, 0), at(2, 1), at(2, 2)];
};

export const determinantOf = ([a, b, c, d, e, f, g, h, i]: PlaneMap): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

/** Up to a factor, which a place does not see: the adjugate. */
export const inverseOf = ([a, b, c, d, e, f, g, h, i]: PlaneMap): PlaneMap => [
  e * i - f * h,
  c * h - b * i,
  b * f - c * e,
  f * g - d * i,
  a * i - c * g,
  c * d - a * f,
  d * h - e * g,
  b * g - a * h,
  a * e - b * d,
];

/** Stretched by `x` and `y` from the corner. */
export const stretch = (x: number, y: number): PlaneMap => [x, 0, 0, 0, y, 0, 0, 0, 1];
