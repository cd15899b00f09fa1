import { type Drawn, drawnFrom, noiseAt } from '../../src/engine/chance';
import type { Point, Ring } from '../../src/engine/photo';

/** Height of the drawn scene; its width is 1. */
export const sceneHeight = 0.75;
export const sceneMiddle = { x: 0.5, y: sceneHeight / 2 };

/** A zone with twelve corners in the middle of the scene, in its widths. */
export const drawnZone = (drawn: Drawn): Ring =>
  Array.from({ length: 12 }, (_, i) => {
    const reach = 0.26 + 0.07 * drawn.uniform();
    const at = (2 * Math.PI * i) / 12;
    return [sceneMiddle.x + 1.2 * reach * Math.cos(at), sceneMiddle.y + reach * Math.sin(at)];
  });

/** A patch: its edge lies `radius` x (1 + waves) from its middle, in widths of the scene. */
export interface Patch {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly waves: readonly (readonly [times: number, height: number, phase: number])[];
}

const edgeOf = ({ radius, waves }: Patch, angle: number): number =>
  radius * waves.reduce((sum, [times, height, phase]) => sum + height * Math.sin(times * angle + phase), 1);

const covers = (patch: Patch, x: number, y: number): boolean => {
  const [dx, dy] = [x - patch.x, y - patch.y];
  const far = Math.hypot(dx, dy);
  return far < patch.radius * 1.5 && far < edgeOf(patch, Math.atan2(dy, dx));
};

/** Corners a hand would tap: about every seventieth of the width along the edge, eight at least. */
export const cornersOf = (patch: Patch): Point[] => {
  const many = Math.max(8, Math.round((2 * Math.PI * patch.radius) / 0.015));
  return Array.from({ length: many }, (_, i) => {
    const angle = (2 * Math.PI * i) / many;
    const edge = edgeOf(patch, angle);
    return [patch.x + edge * Math.cos(angle), patch.y + edge * Math.sin(angle)];
  });
};

/** Which of the places, all inside the zone or not, are green. */
export interface Surface {
  readonly isGreen: (x: number, y: number) => boolean;
  readonly patches: readonly Patch[];
}

/** Patches laid by chance, all made larger or smaller until they cover the share of the places. */
export const patchedSurface = (seed: number, coverage: number, places: readonly Point[]): Surface => {
  const drawn = drawnFrom(seed);
  const made = Array.from({ length: Math.round(4 + 8 * drawn.uniform() + 25 * coverage) }, (): Patch => {
    const [x, y] = places[drawn.below(places.length)] as Point;
    const radius = 0.02 + 0.05 * drawn.uniform() ** 2;
    const waves = [
      [2, 0.06, 6.28 * drawn.uniform()],
      [3, 0.08, 6.28 * drawn.uniform()],
      [5, 0.07, 6.28 * drawn.uniform()],
    ] as const;
    return { x, y, radius, waves };
  });
  const some = places.filter((_, i) => i % 7 === 0);
  const scaled = (by: number): Patch[] => made.map((patch) => ({ ...patch, radius: patch.radius * by }));
  const green = (patches: readonly Patch[], x: number, y: number) => patches.some((patch) => covers(patch, x, y));
  let [less, more] = [0, 30];
  for (let i = 0; i < 16; i++) {
    const by = (less + more) / 2;
    const patches = scaled(by);
    if (some.filter(([x, y]) => green(patches, x, y)).length < coverage * some.length) less = by;
    else more = by;
  }
  const patches = scaled((less + more) / 2);
  return { isGreen: (x, y) => green(patches, x, y), patches };
};

/** A ragged film, from broad to specks, that covers the share of the places. */
export const raggedSurface = (seed: number, coverage: number, places: readonly Point[]): Surface => {
  const grain = 0.03 + 0.06 * drawnFrom(seed).uniform();
  const fieldAt = (x: number, y: number): number => noiseAt(x, y, grain, seed);
  const sorted = places.map(([x, y]) => fieldAt(x, y)).sort((a, b) => b - a);
  const limit = sorted[Math.round(coverage * sorted.length)] ?? Number.NEGATIVE_INFINITY;
  return { isGreen: (x, y) => fieldAt(x, y) > limit, patches: [] };
};
