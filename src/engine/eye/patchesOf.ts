import { drawnFrom, seedOf, shuffle } from '../chance';
import { type Growth, growths, readinessOf } from './growth';
import { eyeNumbers } from './numbers';
import { paintPatch } from './paintPatch';
import { drawShares } from './strata';

/** A drawn piece of bronze, of which it is known how much is green. */
export interface DrawnPatch {
  /** Pixels to a side. */
  readonly side: number;
  /** RGBA, row by row. */
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
  /** Share of the pixels that are green, counted: 0 to 1. */
  readonly truth: number;
  readonly growth: Growth;
}

export const patchSide = 240;

interface Planned {
  readonly growth: Growth;
  readonly share: number;
}

/** Each growth as often as the others, over strata drawn apart from it, so that a shape never tells a share. */
const planned = (seed: number): readonly Planned[] => {
  const drawn = drawnFrom(seedOf('plan', seed));
  const shares = drawShares(drawn);
  const shapes = shuffle(
    shares.map((_, i) => growths[i % growths.length] as Growth),
    drawn,
  );
  return shares.map((share, i) => ({ share, growth: shapes[i] as Growth }));
};

/** The patch in place `index`, 0 to 11, of the check with this seed; drawn anew each time, the same each time. */
export const patchOf = (seed: number, index: number): DrawnPatch => {
  const plan = planned(seed)[index];
  if (!plan) throw new RangeError(`There is no patch ${index} in an eye check of ${eyeNumbers.patches.value}.`);
  const { growth, share } = plan;
  const side = patchSide;
  const drawn = drawnFrom(seedOf(`patch ${index}`, seed));
  const ground = drawn.below(1_000_000);
  const ready = readinessOf(growth, share, side, ground, drawn);
  const field = new Float32Array(side * side);
  for (let y = 0; y < side; y++) for (let x = 0; x < side; x++) field[y * side + x] = ready(x, y);
  const rising = field.slice().sort();
  const wanted = Math.round(share * field.length);
  const level = rising[field.length - wanted] as number;
  const top = rising[field.length - 1] as number;
  const mask = new Uint8Array(field.length);
  const thickness = new Float32Array(field.length);
  let green = 0;
  for (let i = 0; i < field.length; i++) {
    const high = field[i] as number;
    if (high < level) continue;
    mask[i] = 1;
    green++;
    thickness[i] = Math.min(1, (high - level) / (top - level || 1) + 0.25);
  }
  return { side, pixels: paintPatch(mask, thickness, side, ground, drawn), truth: green / field.length, growth };
};

/** The twelve patches of one eye check: the same for the same seed, others for any other. */
export const patchesOf = (seed: number): readonly DrawnPatch[] =>
  Array.from({ length: eyeNumbers.patches.value }, (_, index) => patchOf(seed, index));
