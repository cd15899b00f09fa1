import { converter } from 'culori';
import sharp from 'sharp';
import { lookedUp, lookUpOf } from '../../src/device/pixels/lookUp';
import { type Classifier, classifierOf, coverageNumbers, isRefused, pixelClass } from '../../src/engine/photo';
import type { LargePhoto } from '../files/largePhoto';
import { type Line, median } from './figures';

const runs = 5;

const timed = (work: () => number): { readonly ms: number; readonly came: number } => {
  const began = performance.now();
  const came = work();
  return { ms: performance.now() - began, came };
};

const medianOf = (work: () => number): { readonly ms: number; readonly came: number } => {
  const all = Array.from({ length: runs }, () => timed(work));
  return { ms: median(all.map(({ ms }) => ms)), came: all[0]?.came ?? Number.NaN };
};

/** The floor: the same bytes, only added up. */
const summed = (bytes: Uint8Array): number => {
  let sum = 0;
  for (let at = 0; at < bytes.length; at++) sum += bytes[at] as number;
  return sum;
};

/** The pass as the worker does it, its table made anew; how many pixels came out green. */
const passed = (pixels: Uint32Array, classifier: Classifier, classes: Uint8Array): number => {
  lookedUp(lookUpOf(classifier), pixels, 0, pixels.length, classes, 0);
  let green = 0;
  for (let at = 0; at < classes.length; at++) if (classes[at] === pixelClass.green) green++;
  return green;
};

/** The same rule, each pixel's colour told by a colour library. */
const byLibrary = (bytes: Uint8Array, { green, sound }: Classifier): number => {
  const toLab = converter('lab65');
  const { clipped, brightest, darkest } = coverageNumbers;
  let many = 0;
  for (let at = 0; at < bytes.length; at += 4) {
    const [r, g, b] = [bytes[at] as number, bytes[at + 1] as number, bytes[at + 2] as number];
    const lab = toLab({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 });
    if (Math.max(r, g, b) >= clipped.value || lab.l > brightest.value || lab.l < darkest.value) continue;
    if (Math.hypot(lab.a - green.a, lab.b - green.b) < Math.hypot(lab.a - sound.a, lab.b - sound.b)) many++;
  }
  return many;
};

/** The loop that meets every pixel of a mask, over the whole of a large photo, beside its floor and beside a colour library. */
export const linesOfPixels = async (photo: LargePhoto): Promise<readonly Line[]> => {
  const raw = await sharp(photo.jpeg).ensureAlpha().raw().toBuffer();
  const bytes = new Uint8Array(raw);
  const pixels = new Uint32Array(bytes.buffer);
  const classifier = classifierOf(photo.green, photo.sound);
  if (isRefused(classifier)) throw new Error('The photo of the bench cannot be told.');
  const classes = new Uint8Array(pixels.length);
  const sum = medianOf(() => summed(bytes));
  const pass = medianOf(() => passed(pixels, classifier, classes));
  const library = timed(() => byLibrary(bytes, classifier));
  if (library.came !== pass.came)
    throw new Error(`The pass finds ${pass.came} green pixels, the colour library ${library.came}.`);
  const megapixels = pixels.length / 1e6;
  return [
    {
      what: `mask, pass over ${megapixels.toFixed(1)} megapixels, a megapixel`,
      measured: pass.ms / megapixels,
      unit: 'ms',
    },
    { what: '  against adding up the same bytes', measured: pass.ms / sum.ms, most: 6, unit: 'times' },
    { what: '  a colour library against the pass, same classes', measured: library.ms / pass.ms, unit: 'times' },
  ];
};
