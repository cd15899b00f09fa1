import { currentOf, type Entry, isErasure } from '../../engine/record';
import { type CurrentRow, currentRow, type Tables } from './database';
import { erasedIn, refuseErased } from './erased';
import { eraseIn, sayInstead } from './erasing';
import { historiesOf } from './histories';
import { type Counter, putSelf, raiseCounters, type Self, selfIn } from './self';
import type { Batch, DeedRow, NewEntry, TouchRow } from './store';
import { withEntries, withoutEntries } from './tally';

/** What a transaction left behind for the memory of the page. */
export interface Written {
  readonly self: Self;
  readonly counters: ReadonlyMap<string, Counter>;
}

/** Inside a transaction: the batch with this device's name and counter, present states, touches, deed, counts. */
export const writeBatch = async (t: Tables, batch: Batch): Promise<Written & { readonly entries: Entry[] }> => {
  const before = (await selfIn(t)) as Self;
  const entries = batch.entries.map((entry, i) => named(entry, before.device, before.n + i + 1));
  refuseErased(await erasedIn(t), entries);
  if (entries.length > 0) await t.entries.bulkAdd(entries);
  const gone = await eraseIn(t, entries);
  const moved = await refreshCurrent(t, new Set([...entries, ...gone].map((entry) => entry.thing)));
  await markTouches(t, batch);
  const spoken = batch.instead ? await t.current.bulkGet(await sayInstead(t, batch.instead)) : [];
  if (batch.notes) await t.meta.put(batch.notes);
  await writeDeed(t, batch.deed, erasing(entries));
  const self = {
    ...before,
    n: before.n + entries.length,
    tally: withoutEntries(withEntries(before.tally, idsOf(entries)), idsOf(gone)),
    out: (before.out ?? 0) + gone.length,
  };
  await putSelf(t, self);
  const withins = new Set([...entries, ...gone, ...spoken.flatMap((round) => round ?? [])].map(({ within }) => within));
  const counters = await raiseCounters(t, withins, moved.came, moved.went);
  return { entries, self, counters };
};

/** `replaces` is a set: sorted here as a survey file writes it, so that what comes back is what went out. */
const named = (entry: NewEntry, device: string, n: number): Entry =>
  ({ ...entry, replaces: [...entry.replaces].sort(), device, n }) as Entry;

/**
 * Works the present state of these things out from all their entries; a thing without entries has none. Gives the states they
 * came to and those they had before.
 */
export const refreshCurrent = async (
  t: Tables,
  things: ReadonlySet<string>,
): Promise<{ readonly came: readonly CurrentRow[]; readonly went: readonly (CurrentRow | undefined)[] }> => {
  const names = [...things];
  const went = await t.current.bulkGet(names);
  const histories = await historiesOf(t, things);
  const came = [...histories.values()].map((entries) => currentRow(currentOf(entries)));
  if (came.length > 0) await t.current.bulkPut(came);
  const emptied = names.filter((thing) => !histories.has(thing));
  if (emptied.length > 0) await t.current.bulkDelete(emptied);
  return { came, went };
};

const markTouches = async (t: Tables, batch: Batch): Promise<void> => {
  const put = async (ns: readonly number[] | undefined, change: (row: TouchRow) => TouchRow) => {
    if (!ns || ns.length === 0) return;
    const rows = await t.touches.bulkGet([...ns]);
    await t.touches.bulkPut(rows.flatMap((row) => (row ? [change(row)] : [])));
  };
  await put(batch.settlesTouches, (row) => ({ ...row, deed: batch.deed.id }));
  await put(batch.reopensTouches, ({ deed: _, ...row }) => row);
  if (batch.dropsTouches && batch.dropsTouches.length > 0) await t.touches.bulkDelete([...batch.dropsTouches]);
};

const idsOf = (entries: readonly Entry[]): string[] => entries.map((entry) => entry.id);

const erasing = (entries: readonly Entry[]): Pick<DeedRow, 'erases' | 'stops'> => {
  if (!entries.some(isErasure)) return {};
  return entries.every(isErasure) ? { erases: true } : { erases: true, stops: true };
};

type Erasing = ReturnType<typeof erasing>;

const writeDeed = async (t: Tables, { id, name, at, undoes }: Batch['deed'], erased: Erasing): Promise<void> => {
  await t.deeds.add({ deed: id, name, at, ...(undoes ? { undoes } : {}), ...erased } as never);
  if (undoes === undefined) return;
  const undone = await t.deeds.where('deed').equals(undoes).first();
  if (undone) await t.deeds.put({ ...undone, undone: true });
};
