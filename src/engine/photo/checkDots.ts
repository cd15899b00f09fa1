import { drawnFrom } from '../chance';
import { coverageNumbers } from './coverageNumbers';
import type { Point, Size } from './point';

/** How many check dots are laid in a mask and outside it: more where there is more, never fewer in one than can be judged by. */
export const checkDotsFor = (
  maskShare: number,
  n: number = coverageNumbers.checkDots.value,
): { readonly inMask: number; readonly outsideMask: number } => {
  if (maskShare <= 0) return { inMask: 0, outsideMask: n };
  if (maskShare >= 1) return { inMask: n, outsideMask: 0 };
  const least = Math.ceil(n / 4);
  const inMask = Math.min(n - least, Math.max(least, Math.round(n * maskShare)));
  return { inMask, outsideMask: n - inMask };
};

/**
 * Places of the check dots. `classes` holds one number a pixel of a picture of `size`, row by row: 0 sound, 1 green; anything else
 * (left out, outside the zone) gets no dot. Each pixel of a class has the same chance; the dots of a class are spread along its rows, never two
 * on one pixel.
 */
export const checkDotsIn = (
  classes: Uint8Array,
  size: Size,
  seed: number,
  n: number = coverageNumbers.checkDots.value,
): { readonly inMask: readonly Point[]; readonly outsideMask: readonly Point[] } => {
  const drawn = drawnFrom(seed);
  const many = [0, 0];
  for (let at = 0; at < classes.length; at++) {
    const one = classes[at] as number;
    if (one < 2) many[one] = (many[one] as number) + 1;
  }
  const [sound = 0, green = 0] = many;
  if (sound + green === 0) return { inMask: [], outsideMask: [] };
  const asked = checkDotsFor(green / (sound + green), n);
  const spread = (of: 0 | 1, total: number, most: number): Point[] => {
    const dots = Math.min(most, total);
    const wanted = Array.from({ length: dots }, (_, i) => Math.floor(((i + drawn.uniform()) * total) / dots));
    const places: Point[] = [];
    let seen = -1;
    for (let at = 0; at < classes.length && places.length < wanted.length; at++) {
      if (classes[at] !== of) continue;
      seen++;
      while (wanted[places.length] === seen) {
        places.push([((at % size.width) + 0.5) / size.width, (Math.floor(at / size.width) + 0.5) / size.height]);
      }
    }
    return places;
  };
  return { inMask: spread(1, green, asked.inMask), outsideMask: spread(0, sound, asked.outsideMask) };
};
