import { labelAt, type Outline, type Point, type Size } from '../../engine/photo';
import type { Thing } from '../../engine/record';
import { stagePath, stagePoint, stageWidth } from '../parts';

/** A zone as it lies on a picture, in units of the drawing over it. */
export interface PlacedZone {
  readonly zone: Thing<'zone'>;
  readonly path: string;
  /** Where its letter stands, and how far that is from every edge. */
  readonly at: Point;
  readonly room: number;
}

interface Drawn {
  readonly zone: string;
  readonly outline: Outline;
}

/** Zones that are drawn, in the order their outlines come: the larger first. Outlines of other zones are left out. */
export const placedZones = (
  zones: readonly Thing<'zone'>[],
  drawn: readonly Drawn[],
  size: Size,
): readonly PlacedZone[] =>
  drawn.flatMap(({ zone: name, outline }, i): PlacedZone[] => {
    const zone = zones.find(({ thing }) => thing === name);
    const over = drawn.slice(i + 1).map((other) => other.outline);
    const label = zone && labelAt(outline, over, size);
    if (!zone || !label) return [];
    const at = stagePoint(label.at, size);
    return [{ zone, path: stagePath(outline, size), at, room: label.room * stageWidth }];
  });
