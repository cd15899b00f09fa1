/** Running count of the entries and a checksum of their ids: the XOR of their hashes, so that order does not matter. */
export interface Tally {
  readonly entries: number;
  readonly sum: readonly [number, number];
}

export const noTally: Tally = { entries: 0, sum: [0, 0] };

/** FNV-1a over the id, twice with different starts: 64 bits. */
export const hash = (id: string, start: number): number => {
  let h = start;
  for (let i = 0; i < id.length; i++) h = Math.imul(h ^ id.charCodeAt(i), 0x01000193);
  return h >>> 0;
};

const xorAll = (tally: Tally, ids: readonly string[]): readonly [number, number] => {
  let [a, b] = tally.sum;
  for (const id of ids) {
    a = (a ^ hash(id, 0x811c9dc5)) >>> 0;
    b = (b ^ hash(id, 0x050c5d1f)) >>> 0;
  }
  return [a, b];
};

export const withEntries = (tally: Tally, ids: readonly string[]): Tally => ({
  entries: tally.entries + ids.length,
  sum: xorAll(tally, ids),
});

export const withoutEntries = (tally: Tally, ids: readonly string[]): Tally => ({
  entries: tally.entries - ids.length,
  sum: xorAll(tally, ids),
});
