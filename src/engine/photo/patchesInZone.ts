import { intersection, union } from 'polyclip-ts';
import type { Outline } from './point';
import { ringArea } from './polygon';

/** A ring as the clipping package takes it; it closes rings itself. */
const asPolygons = (outline: Outline): [number, number][][][] =>
  outline.filter((ring) => ring.length >= 3).map((ring) => [ring.map(([x, y]) => [x, y] as [number, number])]);

/** Area of polygons that may have holes, share of the picture. */
const areaOf = (polygons: readonly (readonly (readonly [number, number][])[])[]): number =>
  polygons.reduce(
    (sum, [outside = [], ...holes]) => sum + ringArea(outside) - holes.reduce((all, hole) => all + ringArea(hole), 0),
    0,
  );

/** Area the patches cover inside the zone and area of the zone, shares of the picture. Where patches lie on each other, once. */
export const patchesInZone = (
  patches: Outline,
  zone: Outline,
): { readonly covered: number; readonly whole: number } => {
  const [zoneFirst, ...zoneRest] = asPolygons(zone);
  if (!zoneFirst) return { covered: 0, whole: 0 };
  const inside = union(zoneFirst, ...zoneRest);
  const [first, ...rest] = asPolygons(patches);
  return { covered: first ? areaOf(intersection(union(first, ...rest), inside)) : 0, whole: areaOf(inside) };
};
