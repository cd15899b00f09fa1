import type { Classifier } from '../../engine/photo';

const notYet = 255;

/**
 * The class of every colour, at blue x 65536 + green x 256 + red, as the pixels of a canvas lie in memory. A class is worked out when its
 * colour is first met: a photo holds a hundredth of the 16.7 million colours there are.
 */
export interface LookUp {
  readonly table: Uint8Array;
  readonly classOf: Classifier['classOf'];
}

export const lookUpOf = ({ classOf }: Pick<Classifier, 'classOf'>): LookUp => ({
  table: new Uint8Array(2 ** 24).fill(notYet),
  classOf,
});

/** Classes of the pixels from `from` up to, not including, `to`, written from `into` on. The one loop that meets every pixel. */
export const lookedUp = (
  { table, classOf }: LookUp,
  pixels: Uint32Array,
  from: number,
  to: number,
  classes: Uint8Array,
  into: number,
): void => {
  for (let at = from, put = into; at < to; at++, put++) {
    const colour = (pixels[at] as number) & 0xffffff;
    let found = table[colour] as number;
    if (found === notYet) {
      found = classOf(colour & 255, (colour >> 8) & 255, colour >> 16);
      table[colour] = found;
    }
    classes[put] = found;
  }
};
