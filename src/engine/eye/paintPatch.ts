import { type Drawn, noiseAt } from '../chance';
import { ridgeAt } from './growth';

type Colour = readonly [red: number, green: number, blue: number];

/** Browns of a waxed bronze and greens of what grows on it: from thin and dark to thick and pale. */
const browns: readonly (readonly [Colour, Colour])[] = [
  [
    [52, 36, 26],
    [104, 74, 50],
  ],
  [
    [44, 34, 28],
    [92, 72, 54],
  ],
  [
    [60, 38, 24],
    [118, 80, 46],
  ],
];
const greens: readonly (readonly [Colour, Colour])[] = [
  [
    [96, 146, 122],
    [172, 208, 184],
  ],
  [
    [88, 140, 130],
    [158, 204, 196],
  ],
  [
    [112, 150, 110],
    [182, 208, 166],
  ],
];

/** Light from the upper left, as far as a step across the relief changes what it gives. */
const relief = { scale: 90, rough: 16, steep: 11, roughSteep: 2.4 } as const;

const between = (low: number, high: number, t: number): number => low + (high - low) * t;

/** RGBA of a patch: relief and grain over all of it, brown ground, green where the mask says so. Nothing else is green. */
export const paintPatch = (
  mask: Uint8Array,
  thickness: Float32Array,
  side: number,
  ground: number,
  drawn: Drawn,
): Uint8ClampedArray<ArrayBuffer> => {
  const [dark, light] = browns[drawn.below(browns.length)] as (typeof browns)[number];
  const [thin, thick] = greens[drawn.below(greens.length)] as (typeof greens)[number];
  const height = (x: number, y: number): number =>
    relief.steep * noiseAt(x, y, relief.scale, ground + 11) +
    relief.roughSteep * noiseAt(x, y, relief.rough, ground + 13) +
    2 * ridgeAt(x, y, ground);
  const pixels = new Uint8ClampedArray(side * side * 4);
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      const at = y * side + x;
      const here = height(x, y);
      const slope = here - height(x - 1, y - 1);
      const lit = Math.max(0.62, Math.min(1.42, 1 + 1.1 * slope));
      const grain = 1 + 0.07 * drawn.normal();
      const tone = noiseAt(x, y, side / 3, ground + 17);
      const [from, to, how] = mask[at]
        ? [thin, thick, Math.min(1, 0.15 + 0.85 * (thickness[at] ?? 0) + 0.25 * (tone - 0.5))]
        : [dark, light, tone];
      const strength = lit * grain;
      for (let c = 0; c < 3; c++) pixels[4 * at + c] = between(from[c] ?? 0, to[c] ?? 0, how) * strength;
      pixels[4 * at + 3] = 255;
    }
  }
  return pixels;
};
