import type { PhotoFitKind } from './fitNumbers';
import { leastDirection, normalOf, solved, timesColumn } from './linear';
import { after, depthAt, inverseOf, mapped, type PlaneMap } from './planeMap';
import type { Point } from './point';

/** Two places that are the same spot of the work, each in units of its picture's width. */
export interface Tie {
  readonly from: Point;
  readonly onto: Point;
}

/**
 * The similarity, affine map or homography that leaves the least sum of squared distances on the second picture.
 * Places are first moved to their middle and a like size, which keeps the equations well conditioned (Hartley 1997, IEEE Trans. PAMI
 * 19:580-593; from memory). Asks for as many ties as the way of laying has halves of unknowns, not all on a line.
 */
export const leastSquares = (ties: readonly Tie[], kind: PhotoFitKind): PlaneMap => {
  const from = toMiddle(ties.map((tie) => tie.from));
  const onto = toMiddle(ties.map((tie) => tie.onto));
  const moved = ties.map((tie) => ({ from: mapped(from, tie.from), onto: mapped(onto, tie.onto) }));
  return after(inverseOf(onto), after(ways[kind](moved), from));
};

/** Moves the middle of the places to 0, 0 and their mean distance from it to the square root of 2. */
const toMiddle = (places: readonly Point[]): PlaneMap => {
  const n = places.length;
  const [mx, my] = places.reduce<Point>(([x, y], place) => [x + place[0] / n, y + place[1] / n], [0, 0]);
  const far = places.reduce((sum, [x, y]) => sum + Math.hypot(x - mx, y - my) / n, 0);
  const scale = far > 0 ? Math.SQRT2 / far : 1;
  return [scale, 0, -scale * mx, 0, scale, -scale * my, 0, 0, 1];
};

/** Turned, sized and shifted; closed form, for the places are about their middle. */
const similarity = (ties: readonly Tie[], mirror: 1 | -1 = 1): PlaneMap => {
  let [along, across, size] = [0, 0, 0];
  for (const { from, onto } of ties) {
    const [x, y] = [from[0] * mirror, from[1]];
    along += x * onto[0] + y * onto[1];
    across += x * onto[1] - y * onto[0];
    size += x * x + y * y;
  }
  const [a, b] = [along / size, across / size];
  return [a * mirror, -b, 0, b * mirror, a, 0, 0, 0, 1];
};

const affine = (ties: readonly Tie[]): PlaneMap => {
  const rows = ties.map(({ from: [x, y] }) => [x, y, 1]);
  const normal = normalOf(rows);
  const onto = (axis: 0 | 1) =>
    solved(
      normal,
      timesColumn(
        rows,
        ties.map((tie) => tie.onto[axis]),
      ),
    ) ?? [0, 0, 0];
  const [a, b, c] = onto(0) as [number, number, number];
  const [d, e, f] = onto(1) as [number, number, number];
  return [a, b, c, d, e, f, 0, 0, 1];
};

/** First the map with the least algebraic error (direct linear transformation), from which distances are then made least. */
const homography = (ties: readonly Tie[]): PlaneMap => {
  const rows = ties.flatMap(({ from: [x, y], onto: [u, v] }) => [
    [x, y, 1, 0, 0, 0, -u * x, -u * y, -u],
    [0, 0, 0, x, y, 1, -v * x, -v * y, -v],
  ]);
  const first = leastDirection(normalOf(rows));
  const last = first[8] as number;
  // A middle sent beyond the horizon is no photo of the same thing; it is refused as folded, and no nearer one is sought.
  if (Math.abs(last) < leastDepth) return first as unknown as PlaneMap;
  return refined(ties, first.map((value) => value / last) as unknown as PlaneMap);
};

const squaresLeft = (ties: readonly Tie[], map: PlaneMap): number =>
  ties.reduce((sum, { from, onto }) => {
    const [u, v] = mapped(map, from);
    return sum + (u - onto[0]) ** 2 + (v - onto[1]) ** 2;
  }, 0);

/** Steps of Levenberg and Marquardt until one no longer helps. Places about their middle never put their last number to 0. */
const refined = (ties: readonly Tie[], start: PlaneMap): PlaneMap => {
  let map = start;
  let left = squaresLeft(ties, map);
  let damping = 1e-6;
  for (let step = 0; step < mostSteps && damping < 1e6; step++) {
    const rows: number[][] = [];
    const off: number[] = [];
    for (const { from, onto } of ties) {
      const [x, y] = from;
      const w = depthAt(map, from);
      const [u, v] = mapped(map, from);
      rows.push([x / w, y / w, 1 / w, 0, 0, 0, (-u * x) / w, (-u * y) / w]);
      rows.push([0, 0, 0, x / w, y / w, 1 / w, (-v * x) / w, (-v * y) / w]);
      off.push(onto[0] - u, onto[1] - v);
    }
    const square = normalOf(rows).map((row, i) => row.map((value, j) => (i === j ? value * (1 + damping) : value)));
    const by = solved(square, timesColumn(rows, off));
    if (!by) {
      damping *= 100;
      continue;
    }
    const next = map.map((value, i) => value + (by[i] ?? 0)) as unknown as PlaneMap;
    const nextLeft = squaresLeft(ties, next);
    if (nextLeft < left) {
      const helped = left - nextLeft > enough * left;
      [map, left, damping] = [next, nextLeft, damping / 10];
      if (!helped) break;
    } else damping *= 10;
  }
  return map;
};

const mostSteps = 60;
const enough = 1e-14;
const leastDepth = 1e-9;

const ways: Readonly<Record<PhotoFitKind, (ties: readonly Tie[]) => PlaneMap>> = { similarity, affine, homography };

/** True where a mirrored similarity leaves less than half of what a plain one leaves, root mean square. */
export const mirroredIsNearer = (ties: readonly Tie[]): boolean => {
  const from = toMiddle(ties.map((tie) => tie.from));
  const onto = toMiddle(ties.map((tie) => tie.onto));
  const moved = ties.map((tie) => ({ from: mapped(from, tie.from), onto: mapped(onto, tie.onto) }));
  return squaresLeft(moved, similarity(moved, -1)) < squaresLeft(moved, similarity(moved)) / 4;
};
