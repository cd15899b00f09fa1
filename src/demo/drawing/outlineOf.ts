import { difference, union } from 'polyclip-ts';
import type { Outline as Lines, Point, Ring } from '../../engine/photo';
import type { Outline } from './outlines';
import type { Shape } from './shape';

/** Corners an ellipse is given: its area then falls short by half a per cent. */
const corners = 36;
/** Pieces smaller than this share of the picture are slivers left by cutting. */
const sliver = 0.0002;

const ringOf = (shape: Shape): Point[] =>
  'points' in shape
    ? shape.points.map(([x, y]) => [x / 100, y / 125])
    : Array.from({ length: corners }, (_, i) => {
        const angle = (2 * Math.PI * i) / corners;
        const [[cx, cy], [rx, ry]] = [shape.centre, shape.radii];
        return [(cx + rx * Math.cos(angle)) / 100, (cy + ry * Math.sin(angle)) / 125];
      });

type Polygons = ReturnType<typeof union>;
const polygons = (shapes: readonly Shape[]): Polygons =>
  shapes.map((shape) => [ringOf(shape).map(([x, y]): [number, number] => [x, y])]);

const areaOf = (ring: readonly (readonly [number, number])[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], i) => {
      const [nx, ny] = ring[(i + 1) % ring.length] ?? [0, 0];
      return sum + x * ny - nx * y;
    }, 0),
  ) / 2;

/** A piece with what shows through it left out, as one line: from the rim to the nearest point of each hole, round it, and back. */
const oneRing = ([rim, ...holes]: Polygons[number]): Ring[] => {
  if (!rim) return [];
  const open = (ring: readonly (readonly [number, number])[]): Point[] => ring.slice(0, -1).map(([x, y]) => [x, y]);
  const ring = holes
    .filter((hole) => areaOf(hole) > sliver)
    .reduce((line, hole) => {
      const inner = open(hole);
      let nearest = { i: 0, j: 0, far: Number.POSITIVE_INFINITY };
      for (const [i, [ax, ay]] of line.entries())
        for (const [j, [bx, by]] of inner.entries()) {
          const far = Math.hypot(ax - bx, ay - by);
          if (far < nearest.far) nearest = { i, j, far };
        }
      const { i, j } = nearest;
      const round = [...inner.slice(j), ...inner.slice(0, j + 1)];
      return [...line.slice(0, i + 1), ...round, ...line.slice(i)];
    }, open(rim));
  return [ring];
};

/**
 * What shows of each zone, in fractions of the picture: its shapes joined, less what lies in front. Where that would leave a
 * hole (a lens on a table) the zone keeps its whole shape and the other lies on it.
 */
export const zoneLines = ({ zones }: Outline): ReadonlyMap<string, Lines> =>
  new Map(
    zones.map(({ letter, shapes }, i) => {
      const whole = union(polygons(shapes) as Parameters<typeof union>[0]);
      const front = zones.slice(i + 1).flatMap((zone) => polygons(zone.shapes));
      const cut = front.length > 0 ? difference(whole, front as Parameters<typeof union>[0]) : whole;
      const holes = (polygons: Polygons) => polygons.reduce((sum, polygon) => sum + polygon.length - 1, 0);
      const shown = holes(cut) > holes(whole) ? whole : cut;
      return [letter, shown.flatMap(oneRing).filter((ring) => areaOf(ring) > sliver)];
    }),
  );
