import { median } from '../chance';
import { labOfRgb } from '../colour';
import type { Reason } from '../record';
import { coverageNumbers } from './coverageNumbers';
import type { Refused } from './measured';
import { because } from './reasonCodes';

export type Rgb = readonly [r: number, g: number, b: number];

/** What a pixel is taken for. */
export const pixelClass = { sound: 0, green: 1, leftOut: 2 } as const;
export type PixelClass = (typeof pixelClass)[keyof typeof pixelClass];

/** Middle of one sort in a*b*. */
interface Middle {
  readonly a: number;
  readonly b: number;
}

export interface Classifier {
  readonly green: Middle;
  readonly sound: Middle;
  /** How far green lies from sound in a*b*. */
  readonly apart: number;
  /** Class of one pixel, red, green and blue 0 to 255. */
  readonly classOf: (r: number, g: number, b: number) => PixelClass;
}

/** Glare has lost its colour, deep shade has next to none: neither can be told apart. */
export const isLeftOut = (r: number, g: number, b: number, L: number): boolean =>
  Math.max(r, g, b) >= coverageNumbers.clipped.value ||
  L > coverageNumbers.brightest.value ||
  L < coverageNumbers.darkest.value;

const sorted = (values: readonly number[]): number[] => [...values].sort((x, y) => x - y);

const middleOf = (of: readonly Middle[]): Middle => ({
  a: median(sorted(of.map(({ a }) => a))),
  b: median(sorted(of.map(({ b }) => b))),
});

const between = (one: Middle, other: Middle): number => Math.hypot(one.a - other.a, one.b - other.b);

const usable = (samples: readonly Rgb[]) =>
  samples.map((rgb) => ({ rgb, lab: labOfRgb(...rgb) })).filter(({ rgb, lab }) => !isLeftOut(...rgb, lab.L));

/**
 * Tells green from sound surface by tapped colours: a pixel is of the sort whose middle (median of the taps) lies nearer in a*b*.
 * Refuses where taps of a sort are too few or in glare or deep shade, or where the two sorts are too alike: nearer than pixels can be
 * told apart by, or a tap lies nearer to the other sort.
 */
export const classifierOf = (greenTaps: readonly Rgb[], soundTaps: readonly Rgb[]): Classifier | Refused => {
  const taps = { green: usable(greenTaps), sound: usable(soundTaps) };
  const least = coverageNumbers.samplesEach.value;
  const short: Reason[] = (['green', 'sound'] as const)
    .filter((sort) => taps[sort].length < least)
    .map((sort) => because('coverage: too few spots tapped', { sort, usable: taps[sort].length, least }));
  if (short.length > 0) return { refused: short };
  const labs = { green: taps.green.map(({ lab }) => lab), sound: taps.sound.map(({ lab }) => lab) };
  const green = middleOf(labs.green);
  const sound = middleOf(labs.sound);
  const apart = between(green, sound);
  const strays =
    labs.green.filter((lab) => between(lab, green) >= between(lab, sound)).length +
    labs.sound.filter((lab) => between(lab, sound) >= between(lab, green)).length;
  if (apart < coverageNumbers.apart.value || strays > 0) {
    return {
      refused: [because('coverage: green and sound too alike', { apart, least: coverageNumbers.apart.value, strays })],
    };
  }
  const classOf = (r: number, g: number, b: number): PixelClass => {
    const lab = labOfRgb(r, g, b);
    if (isLeftOut(r, g, b, lab.L)) return pixelClass.leftOut;
    return between(lab, green) < between(lab, sound) ? pixelClass.green : pixelClass.sound;
  };
  return { green, sound, apart, classOf };
};
