import type { Classifier } from './classifier';

/** The class of every colour there is, at red x 65536 + green x 256 + blue: what a worker looks pixels up in. */
export const classTable = ({ classOf }: Pick<Classifier, 'classOf'>): Uint8Array => {
  const table = new Uint8Array(2 ** 24);
  for (let at = 0; at < table.length; at++) table[at] = classOf(at >> 16, (at >> 8) & 255, at & 255);
  return table;
};
