import type { Tables } from './database';
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
}

export const selfKey = 'self';
const counterStart = 'counter ';

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

/** How often something changed within each sculpture, and within the collection. */
export const countersIn = async (t: Tables): Promise<Map<string, number>> => {
  const rows = await t.meta.where('key').startsWith(counterStart).toArray();
  return new Map(rows.map(({ key, value }) => [key.slice(counterStart.length), value as number]));
};

/** Counts one more change within each, in the transaction that made it. */
export const raiseCounters = async (t: Tables, withins: ReadonlySet<string>): Promise<Map<string, number>> => {
  const names = [...withins];
  const before = await t.meta.bulkGet(names.map((within) => counterStart + within));
  const raised = new Map(names.map((within, i) => [within, ((before[i]?.value as number | undefined) ?? 0) + 1]));
  await t.meta.bulkPut([...raised].map(([within, value]) => ({ key: counterStart + within, value })));
  return raised;
};
