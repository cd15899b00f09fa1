import {
  checkDotsIn,
  classifierOf,
  isRefused,
  type Mark,
  type Point,
  pixelClass,
  type Refused,
} from '../../engine/photo';
import type { MaskAsked, MaskTold } from './asked';
import { cellsOf } from './cells';
import { type Classes, countedIn, outside } from './classes';
import { type Breath, classified } from './classified';
import { hatched } from './hatched';
import { type Picture, pngOf } from './picture';
import { workedSmaller } from './workedSmaller';

const marks: Readonly<Record<number, Mark>> = { [pixelClass.green]: 'green', [pixelClass.leftOut]: 'left out' };

/** A zone told into green, sound and left out, pixel by pixel. */
export const maskIn = async (picture: Picture, asked: MaskAsked, breath: Breath): Promise<MaskTold | Refused> => {
  const classifier = classifierOf(asked.taps.green, asked.taps.sound);
  if (isRefused(classifier)) return classifier;
  const classes = await classified(picture, picture.size, asked.part, classifier, asked.taps.brush ?? [], breath);
  const { sound, green, leftOut } = countedIn(classes);
  const [judged, all] = [sound + green, sound + green + leftOut];
  const { inMask, outsideMask } = checkDotsIn(classes.of, classes.box, asked.seed);
  const cells = cellsOf(classes, outside);
  return {
    share: judged === 0 ? 0 : green / judged,
    leftOut: all === 0 ? 0 : leftOut / all,
    judged,
    inMask: onPhoto(inMask, classes),
    outsideMask: onPhoto(outsideMask, classes),
    overlay: await pngOf(
      cells.size,
      cells.box,
      hatched(cells, (what) => marks[what]),
    ),
    reasons: workedSmaller(picture),
  };
};

/** Places in the box as places on the whole picture. */
const onPhoto = (dots: readonly Point[], { box, size }: Classes): Point[] =>
  dots.map(([x, y]) => [(box.left + x * box.width) / size.width, (box.top + y * box.height) / size.height]);
