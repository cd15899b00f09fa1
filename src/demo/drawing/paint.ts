import { noiseAt } from '../../engine/chance';
import { type Camera, sameSpot, shownAt } from './camera';
import type { Outline } from './outlines';
import { holds, type Point, type Shape } from './shape';

/** Index into the palette, one byte a pixel. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** Ground, stone, water, two browns, two greens, bare metal, scale, outline: each tone more is another line the picture has to keep. */
export const palette: readonly (readonly [number, number, number])[] = [
  [238, 232, 222],
  [226, 219, 207],
  [176, 170, 160],
  [158, 152, 143],
  [168, 188, 192],
  [74, 53, 39],
  [92, 66, 47],
  [122, 168, 146],
  [142, 186, 162],
  [196, 150, 84],
  [228, 224, 214],
  [34, 26, 22],
];
const GROUND = 0;
const STONE = 2;
const WATER = 4;
const BROWN = 5;
const GREEN = 7;
const BARE = 9;
const SCALE = 10;
const LINE = 11;

/** True for a pixel of one of the two greens. */
export const isGreen = (pixel: number): boolean => pixel >= GREEN && pixel < BARE;

/** True for a pixel of one of the two browns. */
export const isSound = (pixel: number): boolean => pixel >= BROWN && pixel < GREEN;

/** What covers a zone, each a share 0 to 1 of its drawn area; grown in this order, never over one another. */
export interface Cover {
  readonly green?: number;
  readonly bare?: number;
  readonly scale?: number;
}

/** Which zone each pixel shows: 0 none, else 1 + the zone's place in the outline. */
export const zoneMap = (outline: Outline, width: number, height: number, camera: Camera = sameSpot): Uint8Array => {
  const map = new Uint8Array(width * height);
  const unit = width / 100;
  const any = (shapes: readonly Shape[], x: number, y: number) => shapes.some((s) => holds(s, x, y));
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [ux, uy] = shownAt(camera, [(x + 0.5) / unit, (y + 0.5) / unit]);
      for (let i = outline.zones.length - 1; i >= 0; i--) {
        if (any(outline.zones[i]?.shapes ?? [], ux, uy)) {
          map[y * width + x] = i + 1;
          break;
        }
      }
    }
  }
  return map;
};

/** Paints exactly the stated share of a zone's pixels, in the smooth patches a film grows in. */
const grow = (
  places: number[],
  share: number,
  on: (place: number) => Point,
  seed: number,
  paint: (place: number, rank: number) => void,
): number[] => {
  const wanted = Math.round(places.length * share);
  const ranked = places
    .map((p) => ({ p, v: noiseAt(...on(p), 100 / 13, seed) }))
    .sort((a, b) => b.v - a.v || a.p - b.p);
  for (const { p, v } of ranked.slice(0, wanted)) paint(p, v);
  return ranked.slice(wanted).map((r) => r.p);
};

/** One drawn view: brown bronze on pale ground, with the listed cover grown on each zone. The true cover is exact to a pixel. */
export const paintView = (
  outline: Outline,
  covers: Readonly<Record<string, Cover>>,
  seed: number,
  { width = 600, camera = sameSpot }: { readonly width?: number; readonly camera?: Camera } = {},
): Picture => {
  const height = Math.round(width * 1.25);
  const unit = width / 100;
  const pixels = new Uint8Array(width * height);
  const map = zoneMap(outline, width, height, camera);
  // Patches lie on the work, not on the picture: seen from elsewhere they move with it.
  const on = (place: number): Point =>
    shownAt(camera, [((place % width) + 0.5) / unit, (Math.floor(place / width) + 0.5) / unit]);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const place = y * width + x;
      const [ux, uy] = on(place);
      if (outline.water && holds(outline.water, ux, uy)) pixels[place] = WATER;
      else if (outline.stone.some((s) => holds(s, ux, uy)))
        pixels[place] = STONE + (noiseAt(ux, uy, 15, seed) > 0.55 ? 1 : 0);
      else pixels[place] = GROUND + (y > height * 0.86 ? 1 : 0);
      if (map[place]) pixels[place] = BROWN + (noiseAt(ux, uy, 100 / 7, seed + 7) > 0.44 ? 1 : 0);
    }
  }
  outline.zones.forEach(({ letter }, i) => {
    const cover = covers[letter] ?? {};
    const all = Array.from(map.keys()).filter((p) => map[p] === i + 1);
    const total = all.length;
    let free = all;
    const lay = (share: number | undefined, salt: number, colour: (v: number) => number) => {
      if (!share || free.length === 0) return;
      free = grow(free, Math.min(1, (share * total) / free.length), on, seed + i * 31 + salt, (p, v) => {
        pixels[p] = colour(v);
      });
    };
    lay(cover.scale, 3, () => SCALE);
    lay(cover.bare, 5, () => BARE);
    lay(cover.green, 11, (v) => GREEN + (v > 0.6 ? 1 : 0));
  });
  return { width, height, pixels: drawEdges(map, pixels, width, height) };
};

/** A dark line where two zones, or a zone and the ground, meet: on the ground or on sound bronze only, so that no cover is lost under it. */
const drawEdges = (map: Uint8Array, pixels: Uint8Array, width: number, height: number): Uint8Array => {
  const out = pixels.slice();
  for (let y = 1; y < height - 1; y++) {
    for (let x = 1; x < width - 1; x++) {
      const p = y * width + x;
      if (map[p] === 0 && (map[p - 1] || map[p + 1] || map[p - width] || map[p + width])) out[p] = LINE;
      const brown = (pixels[p] ?? 0) >= BROWN && (pixels[p] ?? 0) < GREEN;
      if (map[p] && brown && ((map[p + 1] && map[p + 1] !== map[p]) || (map[p + width] && map[p + width] !== map[p])))
        out[p] = LINE;
    }
  }
  return out;
};
