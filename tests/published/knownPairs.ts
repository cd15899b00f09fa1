import { drawnFrom } from '../../src/engine/chance';
import type { Point, Size } from '../../src/engine/photo';

/** A known way from one picture onto another, in units of each picture's width: the rows of a 3 by 3 matrix. */
export type Known = readonly [number, number, number, number, number, number, number, number, number];

export const size: Size = { width: 4000, height: 3000 };
export const ontoSize: Size = { width: 3000, height: 4000 };

/** Turned by 3 degrees, 4 % larger, shifted. */
export const similar: Known = (() => {
  const [s, t] = [1.04, (3 * Math.PI) / 180];
  return [s * Math.cos(t), -s * Math.sin(t), 0.02, s * Math.sin(t), s * Math.cos(t), 0.05, 0, 0, 1];
})();
/** The same, and sheared and stretched. */
export const sheared: Known = [1.05, 0.08, 0.01, -0.03, 0.93, 0.04, 0, 0, 1];
/** Seen from a step aside: the far side smaller. */
export const aslant: Known = [0.98, 0.03, 0.02, 0.02, 1.01, 0.03, 0.12, -0.07, 1];

export const aspect = (of: Size): number => of.height / of.width;

/** Where a place of the first picture lies on the second, both in fractions of the picture. */
export const truly = (known: Known, [x, y]: Point, from = size, onto = ontoSize): Point => {
  const v = y * aspect(from);
  const [a, b, c, d, e, f, g, h, i] = known;
  const w = g * x + h * v + i;
  return [(a * x + b * v + c) / w, (d * x + e * v + f) / w / aspect(onto)];
};

/** So many places spread over the first picture, with where they lie on the second, tapped with a hand off by `noise` of the width. */
export const pairsOf = (known: Known, n: number, noise = 0, seed = 1, from = size, onto = ontoSize) => {
  const drawn = drawnFrom(seed);
  return Array.from({ length: n }, (_, i) => {
    // On a ring and off it by turns, so that no draw puts all of them on one line.
    const angle = (2 * Math.PI * (i + 0.3 * drawn.uniform())) / n;
    const far = (i % 2 === 0 ? 0.42 : 0.22) + 0.04 * drawn.uniform();
    const at: Point = [0.5 + far * Math.cos(angle), 0.5 + far * Math.sin(angle)];
    const [x, y] = truly(known, at, from, onto);
    const there: Point = [x + noise * drawn.normal(), y + (noise * drawn.normal()) / aspect(onto)];
    return { from: at, onto: there };
  });
};
