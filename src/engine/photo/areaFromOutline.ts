import { areaMethods } from '../condition';
import type { BodyOf } from '../record';
import { fitNumbers } from './fitNumbers';
import type { Refused } from './measured';
import { patchesInZone } from './patchesInZone';
import { aspectOf, type Outline, type Point, type Size } from './point';
import { because } from './reasonCodes';

type Area = BodyOf<'zone'>['versions'][number]['area'];

/** Two places on a picture and how far apart they are on the work, metres. */
export interface Scale {
  readonly a: Point;
  readonly b: Point;
  readonly metres: number;
}

/**
 * Area of what an outline shows, m2, with the 90 % range of the table of area methods: a quarter to each side, for the picture shows
 * a round thing flat. `scale` is two places on the picture and how far apart they are on the work, in metres; `obliquity` is real
 * surface over what shows flat, 1 or more. Where pieces lie on each other the surface counts once. Refuses an outline without
 * surface, and a scale whose places lie so near each other that a hand's error would tell the area.
 */
export const areaFromOutline = (
  outline: Outline,
  size: Size,
  { a, b, metres }: Scale,
  obliquity = 1,
): (Area & { readonly method: 'outline' }) | Refused => {
  const aspect = aspectOf(size);
  const length = Math.hypot(a[0] - b[0], (a[1] - b[1]) * aspect);
  const least = fitNumbers.shortestScale.value;
  if (length < least) return { refused: [because('area: scale too short', { length, least })] };
  const shown = patchesInZone([], outline).whole * aspect;
  if (!(shown > 0)) return { refused: [because('area: no outline')] };
  const m2 = shown * (metres / length) ** 2 * obliquity;
  const error = areaMethods.find(({ id }) => id === 'outline')?.error ?? 0;
  return { m2, low: m2 * (1 - error), high: m2 * (1 + error), method: 'outline' };
};
