import { labelAt, type Outline, outlineThrough, type Point, ringArea, type Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { stagePath, stagePoint, stageWidth } from '../parts';

/** A zone as it lies on a picture, in units of the drawing over it. */
export interface PlacedZone {
  readonly zone: Thing<'zone'>;
  readonly path: string;
  /** Where its letter stands, a place a piece and the largest piece first, and how far each is from every edge. */
  readonly letters: readonly { readonly at: Point; readonly room: number }[];
}

/** Pieces smaller than this share of the largest bear no letter of their own. */
const lettered = 0.2;

interface Drawn {
  readonly zone: string;
  readonly outline: Outline;
}

/** Another photo to lay them on, and the way there. */
interface Onto {
  readonly size: Size;
  readonly through: (place: Point) => Point;
}

/**
 * Zones that are drawn, in the order their outlines come: the larger first. Outlines of other zones are left out. Letters are placed on
 * the picture the zones are drawn on and carried over with them, so that they stay where they are from year to year.
 */
export const placedZones = (
  zones: readonly Thing<'zone'>[],
  drawn: readonly Drawn[],
  size: Size,
  onto: Onto = { size, through: (place) => place },
): readonly PlacedZone[] =>
  drawn.flatMap(({ zone: name, outline }, i): PlacedZone[] => {
    const zone = zones.find(({ thing }) => thing === name);
    if (!zone) return [];
    const over = drawn.slice(i + 1).map((other) => other.outline);
    const most = Math.max(...outline.map(ringArea));
    const letters = outline
      .filter((ring) => ringArea(ring) >= lettered * most)
      .sort((a, b) => ringArea(b) - ringArea(a))
      .flatMap((ring) => {
        const label = labelAt([ring], over, size);
        if (!label) return [];
        return [{ at: stagePoint(onto.through(label.at), onto.size), room: label.room * stageWidth }];
      });
    const path = stagePath(outlineThrough(outline, onto.through), onto.size);
    return letters.length > 0 ? [{ zone, path, letters }] : [];
  });
