import { type Desk, keepMeasure, keepTouches } from '../actions';
import {
  checkDotsIn,
  classifierOf,
  contains,
  isRefused,
  type Outline,
  type Point,
  pixelClass,
  type Rgb,
  type Size,
} from '../engine/photo';
import { isGreen, isSound, type Picture, palette } from './drawing/paint';
import { done } from './walkRound';

const seed = 7;

/** Green told from sound by three tapped spots of each, the check dots judged as the drawing has it. */
export const maskGreen = async (
  desk: Desk,
  about: { readonly photo: string; readonly about: string; readonly kind: string },
  part: Outline,
  picture: Picture,
  light: number,
): Promise<void> => {
  const { width, height, pixels } = picture;
  const size: Size = { width, height };
  const placeOf = (at: number): Point => [((at % width) + 0.5) / width, (Math.floor(at / width) + 0.5) / height];
  const at = ([x, y]: Point): number => Math.floor(y * height) * width + Math.floor(x * width);
  const colourAt = (pixel: number): Rgb => {
    const [r, g, b] = palette[pixels[pixel] ?? 0] ?? [0, 0, 0];
    const lit = (c: number) => Math.min(255, Math.round(c * light));
    return [lit(r), lit(g), lit(b)];
  };
  const inside = [...pixels.keys()].filter((pixel) => contains(part, placeOf(pixel)));
  const taps = (is: (pixel: number) => boolean) => {
    const fitting = inside.filter((pixel) => is(pixels[pixel] ?? 0));
    return [0.2, 0.5, 0.8].map((share) => {
      const pixel = fitting[Math.floor(fitting.length * share)] ?? 0;
      const [r, g, b] = colourAt(pixel);
      return { at: placeOf(pixel) as [number, number], colour: [r, g, b] as [number, number, number] };
    });
  };
  const [green, sound] = [taps(isGreen), taps(isSound)];
  const classifier = classifierOf(
    green.map(({ colour }) => colour),
    sound.map(({ colour }) => colour),
  );
  if (isRefused(classifier)) throw new Error(`No mask of ${about.photo}: ${JSON.stringify(classifier.refused)}`);
  const classes = new Uint8Array(pixels.length).fill(pixelClass.leftOut);
  for (const pixel of inside) classes[pixel] = classifier.classOf(...colourAt(pixel));
  const many = (of: number) => inside.filter((pixel) => classes[pixel] === of).length;
  const judged = (dots: readonly Point[]) => dots.map((dot) => (isGreen(pixels[at(dot)] ?? 0) ? 'y' : 'n')).join('');
  const dots = checkDotsIn(classes, size, seed);
  const working = {
    seed,
    green,
    sound,
    maskShare: many(pixelClass.green) / (many(pixelClass.green) + many(pixelClass.sound)),
    leftOut: many(pixelClass.leftOut) / inside.length,
    inMask: judged(dots.inMask),
    outsideMask: judged(dots.outsideMask),
  };
  const of = { ...about, way: 'photo' as const };
  await done(keepTouches(desk, of, { part, working, corners: [] }));
  await done(keepMeasure(desk, of));
};
