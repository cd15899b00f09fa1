import {
  type Classifier,
  checkDotsIn,
  classifierOf,
  isRefused,
  type Mark,
  type Point,
  pixelClass,
  type Refused,
} from '../../engine/photo';
import type { MaskAsked, MaskTold } from './asked';
import type { AtHand } from './atHand';
import { brushed } from './brushed';
import { cellsOf } from './cells';
import { type Classes, countedIn, outside } from './classes';
import { type Breath, classified } from './classified';
import { hatched } from './hatched';
import { type Picture, pngOf } from './picture';
import { workedSmaller } from './workedSmaller';

const marks: Readonly<Record<number, Mark>> = { [pixelClass.green]: 'green', [pixelClass.leftOut]: 'left out' };

/** A zone told into green, sound and left out, pixel by pixel. */
export const maskIn = async (hand: AtHand, asked: MaskAsked, breath: Breath): Promise<MaskTold | Refused> => {
  const classifier = classifierOf(asked.taps.green, asked.taps.sound);
  if (isRefused(classifier)) return classifier;
  const picture = await hand.picture(asked.photo);
  const classes = await plainClasses(hand, picture, asked, classifier, breath);
  brushed(classes, asked.taps.brush ?? []);
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

/** As the colours alone tell it; a copy, to be brushed. */
const plainClasses = async (
  hand: AtHand,
  picture: Picture,
  { part, taps }: MaskAsked,
  classifier: Classifier,
  breath: Breath,
): Promise<Classes> => {
  const name = JSON.stringify([part, taps.green, taps.sound]);
  const plain = hand.told(name) ?? (await classified(picture, picture.size, part, classifier, breath));
  hand.keepTold(name, plain);
  await breath(1);
  return { ...plain, of: plain.of.slice() };
};

/** Places in the box as places on the whole picture. */
const onPhoto = (dots: readonly Point[], { box, size }: Classes): Point[] =>
  dots.map(([x, y]) => [(box.left + x * box.width) / size.width, (box.top + y * box.height) / size.height]);
