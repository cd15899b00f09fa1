import { type Drawn, drawnFrom } from '../../src/engine/chance';
import {
  type Answers,
  checkDotsIn,
  classifierOf,
  dotsCoverage,
  dotsIn,
  isRefused,
  type Measurement,
  maskCoverage,
  type Outline,
  type Point,
  type Rgb,
  tracedCoverage,
} from '../../src/engine/photo';
import type { DrawnPhoto } from './drawnPhotos';

/** How each measurement is made on a drawn photo by a hand and an eye that are a little off. */

const at = ({ size }: Pick<DrawnPhoto, 'size'>, [x, y]: Point): number =>
  Math.min(size.height - 1, Math.floor(y * size.height)) * size.width +
  Math.min(size.width - 1, Math.floor(x * size.width));

/** Every corner of the patches off by the hand's error, one way and the other; `off` a standard deviation in widths. */
export const shaken = (photo: DrawnPhoto, off: number, drawn: Drawn): Outline => {
  const wide = photo.size.width / photo.size.height;
  const held = (n: number): number => Math.min(1, Math.max(0, n));
  return photo.patches.map((ring) =>
    ring.map(([x, y]) => [held(x + off * drawn.normal()), held(y + off * wide * drawn.normal())] as const),
  );
};

export const tracedOn = (photo: DrawnPhoto, off: number, seed: number): Measurement =>
  tracedCoverage(shaken(photo, off, drawnFrom(seed)), photo.zone, photo.size);

/** What a person says of each dot: glare where the surface cannot be seen, else the truth, but for slips. */
const judged = (photo: DrawnPhoto, dots: readonly Point[], slips: number, drawn: Drawn): Answers =>
  dots
    .map((dot) => {
      const place = at(photo, dot);
      if (photo.inGlare[place]) return 'g';
      return (photo.isGreen[place] === 1) === drawn.uniform() < slips ? 'n' : 'y';
    })
    .join('');

export const dotsOn = (photo: DrawnPhoto, n: number, slips: number, seed: number): Measurement => {
  const { dots } = dotsIn(photo.zone, photo.size, n, seed);
  return dotsCoverage(judged(photo, dots, slips, drawnFrom(seed + 1)), photo.zone, photo.size);
};

/** Half the width of the square a tap takes its colour from, pixels. */
const round = 2;

/** The colour under a tap: the mean of the pixels round it. */
const colourAt = ({ pixels, size }: Pick<DrawnPhoto, 'pixels' | 'size'>, place: number): Rgb => {
  const sum = [0, 0, 0];
  for (let dy = -round; dy <= round; dy++) {
    for (let dx = -round; dx <= round; dx++) {
      for (let c = 0; c < 3; c++)
        sum[c] = (sum[c] as number) + (pixels[3 * (place + dy * size.width + dx) + c] as number);
    }
  }
  return sum.map((all) => Math.round(all / (2 * round + 1) ** 2)) as unknown as Rgb;
};

/** Three places that look as their sort does, a little inside its edge and clear of glare; none where there is no such place. */
const tapsOf = (photo: DrawnPhoto, green: 0 | 1, drawn: Drawn): number[] => {
  const { isGreen, inGlare, isPlain, inZone, size } = photo;
  const clear = (place: number): boolean => {
    for (let dy = -round; dy <= round; dy++) {
      for (let dx = -round; dx <= round; dx++) {
        const near = place + dy * size.width + dx;
        if (isGreen[near] !== green || inGlare[near] || !inZone[near]) return false;
      }
    }
    return true;
  };
  const places = [...isGreen.keys()].filter((place) => isGreen[place] === green && isPlain[place] && clear(place));
  return places.length === 0 ? [] : Array.from({ length: 3 }, () => places[drawn.below(places.length)] as number);
};

/** The mask of a photo as it was kept: three taps a sort, every pixel of the zone judged, check dots by eye. */
export const maskOn = (photo: DrawnPhoto, kept: Pick<DrawnPhoto, 'pixels'>, seed: number) => {
  const drawn = drawnFrom(seed);
  const seen = { pixels: kept.pixels, size: photo.size };
  const taps = ([1, 0] as const).map((sort) => tapsOf(photo, sort, drawn).map((place) => colourAt(seen, place)));
  const classifier = classifierOf(taps[0] as Rgb[], taps[1] as Rgb[]);
  if (isRefused(classifier)) return classifier;
  const outside = 3;
  const classes = photo.inZone.map((inside, place) => {
    if (!inside) return outside;
    const [r, g, b] = [0, 1, 2].map((c) => kept.pixels[3 * place + c] as number) as [number, number, number];
    return classifier.classOf(r, g, b);
  });
  const many = [0, 0, 0, 0];
  for (const one of classes) many[one] = (many[one] as number) + 1;
  const [sound = 0, green = 0, leftOut = 0] = many;
  const mask = { share: green / Math.max(1, green + sound), leftOut: leftOut / (green + sound + leftOut) };
  /** One person's check of it. `again`: the dots that contradict the mask are looked at once more. */
  const checked = (slips: number, checkSeed: number, n?: number, again = false): Measurement => {
    const dots = checkDotsIn(classes, photo.size, checkSeed, n);
    const eye = drawnFrom(checkSeed + 1);
    const answered = (at: readonly Point[], expected: string): Answers => {
      const first = judged(photo, at, slips, eye);
      if (!again) return first;
      const second = judged(photo, at, slips, eye);
      return [...first].map((answer, i) => (answer === expected ? answer : second[i])).join('');
    };
    const inMask = answered(dots.inMask, 'y');
    return maskCoverage(mask, inMask, answered(dots.outsideMask, 'n'), photo.zone, photo.size);
  };
  return { mask, classes, apart: classifier.apart, checked };
};
