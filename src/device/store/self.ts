import Dexie from 'dexie';
import type { Current } from '../../engine/record';
import type { Tables } from './database';
import { type HeadsHash, headsWithin, noHeads, together } from './headsHash';
import { noTally, type Tally } from './tally';

/** What the store knows of itself: one row, written in every transaction that adds or takes out entries. */
export interface Self {
  /** Names this very database; also kept outside, so that a cleared one is noticed. */
  readonly store: string;
  readonly collection: string;
  /** This device as its entries name it, and the number of the last one it made. */
  readonly device: string;
  readonly n: number;
  readonly tally: Tally;
  /** How many entries were ever taken out again: by undoing an import, or by erasing. None where it is missing. */
  readonly out?: number;
}

/** Every entry that ever came in: it never falls, whatever is taken out. */
export const everIn = ({ tally, out = 0 }: Self): number => tally.entries + out;

export const selfKey = 'self';
export const counterStart = 'counter ';

/** Ids of the entries an import added. */
export const arrivedKey = (deed: string): string => `arrived ${deed}`;

/** Photos whose bytes came with an import. */
export const photosArrivedKey = (deed: string): string => `photos of ${arrivedKey(deed)}`;

export const newSelf = (newId: () => string, collection: string): Self => ({
  store: newId(),
  collection,
  device: newId(),
  n: 0,
  tally: noTally,
});

export const selfIn = async (t: Tables): Promise<Self | undefined> =>
  (await t.meta.get(selfKey))?.value as Self | undefined;

export const putSelf = (t: Tables, self: Self): PromiseLike<unknown> => t.meta.put({ key: selfKey, value: self });

/** Where a sculpture, or the collection, stands: how often something changed within it, and the hash of its heads. */
export interface Counter {
  readonly n: number;
  readonly heads: HeadsHash;
}

/** Databases of the first version count without a hash. */
type KeptCounter = Counter | number;
const numberIn = (kept: KeptCounter | undefined): number => (typeof kept === 'object' ? kept.n : (kept ?? 0));

export const countersIn = async (t: Tables): Promise<Map<string, Counter>> => {
  const rows = await t.meta.where('key').startsWith(counterStart).toArray();
  return new Map(
    rows.map(({ key, value }) => {
      const kept = value as KeptCounter;
      return [key.slice(counterStart.length), typeof kept === 'object' ? kept : { n: kept, heads: noHeads }];
    }),
  );
};

/**
 * Counts one more change within each, in the transaction that made it and after the present states were written. `came` and `went` are
 * the present states this changed, as they are and as they were.
 */
export const raiseCounters = async (
  t: Tables,
  withins: ReadonlySet<string>,
  came: readonly (Current | undefined)[],
  went: readonly (Current | undefined)[],
): Promise<Map<string, Counter>> => {
  const moved = headsWithin([...came, ...went]);
  const names = [...new Set([...withins, ...moved.keys()])];
  const before = await t.meta.bulkGet(names.map((within) => counterStart + within));
  const raised = new Map<string, Counter>();
  for (const [i, within] of names.entries()) {
    const kept = before[i]?.value as KeptCounter | undefined;
    const heads =
      typeof kept === 'number'
        ? await headsIn(t, within)
        : together(kept?.heads ?? noHeads, moved.get(within) ?? noHeads);
    raised.set(within, { n: numberIn(kept) + 1, heads });
  }
  await t.meta.bulkPut([...raised].map(([within, value]) => ({ key: counterStart + within, value })));
  return raised;
};

/** The hash of all heads within, from the present states themselves. */
export const headsIn = async (t: Tables, within: string): Promise<HeadsHash> => {
  const rows = await t.current.where('[within+kind]').between([within, Dexie.minKey], [within, Dexie.maxKey]).toArray();
  return headsWithin(rows).get(within) ?? noHeads;
};

/** Counts and hashes made anew from all present states, every within one change further. */
export const renewCounters = async (t: Tables, currents: readonly Current[]): Promise<Map<string, Counter>> => {
  const before = await countersIn(t);
  const sums = headsWithin(currents);
  const names = [...new Set([...before.keys(), ...sums.keys()])];
  const renewed = new Map(
    names.map((within): [string, Counter] => [
      within,
      { n: (before.get(within)?.n ?? 0) + 1, heads: sums.get(within) ?? noHeads },
    ]),
  );
  await t.meta.bulkPut([...renewed].map(([within, value]) => ({ key: counterStart + within, value })));
  return renewed;
};
