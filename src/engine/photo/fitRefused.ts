import type { Reason } from '../record';
import { mirroredIsNearer, type Tie } from './fitLeast';
import { fewestPairs, fitNumbers, type PhotoFitKind } from './fitNumbers';
import { depthAt, determinantOf, type PlaneMap } from './planeMap';
import type { Point } from './point';
import { because } from './reasonCodes';

/** Spread of places along where they lie longest and across it: root mean square from their middle. */
const spreadOf = (places: readonly Point[]): { readonly along: number; readonly across: number } => {
  const n = places.length;
  const mean = (of: (place: Point) => number) => places.reduce((sum, place) => sum + of(place) / n, 0);
  const [mx, my] = [mean(([x]) => x), mean(([, y]) => y)];
  const [xx, yy] = [mean(([x]) => (x - mx) ** 2), mean(([, y]) => (y - my) ** 2)];
  const xy = mean(([x, y]) => (x - mx) * (y - my));
  const [half, reach] = [(xx + yy) / 2, Math.hypot((xx - yy) / 2, xy)];
  return { along: Math.sqrt(half + reach), across: Math.sqrt(Math.max(0, half - reach)) };
};

/** The list without one, each in turn. */
const withoutOne = <T>(list: readonly T[]): readonly T[][] => list.map((_, i) => list.filter((_, j) => j !== i));

/** How many pairs each way of laying needs off every line, beyond those on it, once one is left out. */
const offLine: Readonly<Record<PhotoFitKind, 0 | 1 | 2>> = { similarity: 0, affine: 1, homography: 2 };

const onLineBut = (places: readonly Point[], off: 0 | 1 | 2): boolean => {
  if (spreadOf(places).across < fitNumbers.oneLine.value) return true;
  return off > 0 && withoutOne(places).some((rest) => onLineBut(rest, off === 2 ? 1 : 0));
};

/** Why these pairs say nothing of how one photo lies on the other, each being left out in turn; undefined where they do. */
export const pairsRefused = (ties: readonly Tie[], kind: PhotoFitKind): Reason | undefined => {
  const needed = fewestPairs[kind];
  if (ties.length < needed) return because('fit: too few pairs', { pairs: ties.length, needed });
  const sides = [ties.map(({ from }) => from), ties.map(({ onto }) => onto)];
  const inOnePlace = (places: readonly Point[]) => spreadOf(places).along < fitNumbers.onePlace.value;
  if (sides.some((places) => withoutOne(places).some(inOnePlace))) return because('fit: pairs in one place');
  const off = offLine[kind];
  if (sides.some((places) => onLineBut(places, off))) return because('fit: pairs on one line', { off });
  return undefined;
};

/** Why a fit cannot be that of two photos of one thing: turned over as in a mirror, or folded over a horizon within the picture. */
export const fitRefused = (
  ties: readonly Tie[],
  map: PlaneMap,
  kind: PhotoFitKind,
  aspect: number,
): Reason | undefined => {
  const mirror = because('fit: mirrored');
  if (kind === 'similarity') return mirroredIsNearer(ties) ? mirror : undefined;
  const corners: readonly Point[] = [
    [0, 0],
    [1, 0],
    [0, aspect],
    [1, aspect],
  ];
  const depths = [...corners, ...ties.map(({ from }) => from)].map((place) => depthAt(map, place));
  const before = depths.filter((depth) => depth > 0).length;
  if (before > 0 && before < depths.length) return because('fit: folded');
  // Turned over where the area of a small patch changes sign: the determinant over the cube of its depth.
  return determinantOf(map) * (before > 0 ? 1 : -1) > 0 ? undefined : mirror;
};
