import type { Classifier, Outline, Size } from '../../engine/photo';
import { type Box, boxOf } from './box';
import { type Classes, noClasses } from './classes';
import { lookedUp, lookUpOf } from './lookUp';
import type { Picture } from './picture';
import { pixelNumbers } from './pixelNumbers';
import { eachSpan } from './spans';

/** Called between two strips with how much is done, 0 to 1; rejects when what is being done is no longer wanted. */
export type Breath = (done: number) => Promise<void>;

/**
 * The class of each pixel of the part, read strip by strip from the picture shown at `size`. One byte a pixel of the box is all that is
 * held beside the picture.
 */
export const classified = async (
  picture: Picture,
  size: Size,
  part: Outline,
  classifier: Pick<Classifier, 'classOf'>,
  breath: Breath,
): Promise<Classes> => {
  const box = boxOf(part, size);
  const classes = noClasses(size, box);
  const table = lookUpOf(classifier);
  const rows = Math.max(1, Math.floor(pixelNumbers.strip / box.width));
  for (let top = 0; top < box.height; top += rows) {
    await breath(top / box.height);
    const strip: Box = { ...box, top: box.top + top, height: Math.min(rows, box.height - top) };
    const pixels = new Uint32Array(picture.read(strip, size).buffer);
    for (let row = 0; row < strip.height; row++) {
      eachSpan(part, size, strip.top + row, (from, to) => {
        const line = row * box.width - box.left;
        lookedUp(table, pixels, line + from, line + to, classes.of, line + from + top * box.width);
      });
    }
  }
  return classes;
};
