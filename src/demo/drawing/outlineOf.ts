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
      const shown = cut.some((polygon) => polygon.length > 1) ? whole : cut;
      const rings = shown.flatMap(([outer]): Ring[] => (outer && areaOf(outer) > sliver ? [outer.slice(0, -1)] : []));
      return [letter, rings];
    }),
  );
