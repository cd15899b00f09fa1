import { type Current, isPlanned } from '../../engine/record';
import { hash } from './tally';

/**
 * Hash of all heads within a sculpture or the collection: the XOR of the hashes of their ids, so that order does not matter and what is
 * taken out again leaves no trace. The lead counts as another than the rest: of two heads the other may come to lead.
 */
export type HeadsHash = readonly [number, number];

export const noHeads: HeadsHash = [0, 0];

export const together = ([a, b]: HeadsHash, [c, d]: HeadsHash): HeadsHash => [(a ^ c) >>> 0, (b ^ d) >>> 0];

const ofThing = ({ heads }: Current): HeadsHash =>
  heads.reduce<HeadsHash>((sum, id, i) => {
    const said = i === 0 ? `lead ${id}` : id;
    return together(sum, [hash(said, 0x811c9dc5), hash(said, 0x050c5d1f)]);
  }, noHeads);

/** What comes to the hash of each within, or goes from it, with these present states: both are the same sum. */
export const headsWithin = (currents: Iterable<Current | undefined>): Map<string, HeadsHash> => {
  const sums = new Map<string, HeadsHash>();
  for (const current of currents) {
    // A bid or a reading of the air must not have every figure worked out anew; two versions of one are to be told, so they count.
    if (!current || (isPlanned(current.kind) && current.heads.length < 2)) continue;
    sums.set(current.within, together(sums.get(current.within) ?? noHeads, ofThing(current)));
  }
  return sums;
};

/** As one word, for a stamp. */
export const headsWord = ([a, b]: HeadsHash): string => a.toString(36) + b.toString(36).padStart(7, '0');
