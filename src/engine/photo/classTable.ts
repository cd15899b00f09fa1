import type { Classifier } from './classifier';

/**
 * The class of every colour there is, at red x 65536 + green x 256 + blue: what a worker looks pixels up in. Worked out for every
 * second value of each and given to the next one too: an eighth of the work, and far finer than a camera's noise.
 */
export const classTable = ({ classOf }: Pick<Classifier, 'classOf'>): Uint8Array => {
  const table = new Uint8Array(2 ** 24);
  for (let r = 0; r < 256; r += 2) {
    for (let g = 0; g < 256; g += 2) {
      const row = (r << 16) | (g << 8);
      for (let b = 0; b < 256; b += 2) table.fill(classOf(r, g, b), row | b, (row | b) + 2);
      table.copyWithin(row + 256, row, row + 256);
    }
    table.copyWithin((r + 1) << 16, r << 16, (r + 1) << 16);
  }
  return table;
};
