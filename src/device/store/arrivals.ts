import { assemble, type Entry, erasedBy, nameOf, sameEntry, withoutErased } from '../../engine/record';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { type CurrentRow, currentRow, type Tables } from './database';
import { erasuresIn } from './erased';
import { eraseIn, insteadOf, sayInstead } from './erasing';
import { historiesOf } from './histories';
import { dropBytesOf } from './photosKept';
import { restsOn } from './restsOn';
import { arrivedKey, photosArrivedKey, putSelf, raiseCounters, type Self, selfIn } from './self';
import type { Batch, TakeInOptions, TakenIn } from './store';
import { withEntries, withoutEntries } from './tally';
import { refreshCurrent, type Written } from './writing';

/** Rows handed to the database at once: between two such bites the person sees how far it got. */
const bite = 2000;

/** Inside a transaction: entries from elsewhere, as they are. One id with another content ends the whole of it. */
export const takeEntriesIn = async (
  t: Tables,
  coming: readonly Entry[],
  deed: Batch['deed'],
  options: TakeInOptions,
  newId: () => string,
): Promise<Written & TakenIn> => {
  const before = (await selfIn(t)) as Self;
  const empty = before.tally.entries === 0;
  const erased = erasedBy([...coming, ...(await erasuresIn(t))]);
  const standing = withoutErased(coming, erased);
  const fresh = empty ? distinct(standing) : await notHere(t, standing);
  const steps = fresh.length * 2;
  for (let at = 0; at < fresh.length; at += bite) {
    await t.entries.bulkAdd(fresh.slice(at, at + bite));
    options.progress?.(Math.min(at + bite, fresh.length), steps);
  }
  const gone = await eraseIn(t, fresh);
  const instead = await insteadOf(t, gone);
  const spoken = instead ? await t.current.bulkGet(await sayInstead(t, instead)) : [];
  const { others, went, emptied } = empty ? nothing : await othersOf(t, fresh, gone);
  if (emptied.length > 0) await t.current.bulkDelete([...emptied]);
  const whole = [...fresh, ...others];
  const currents = [...assemble(whole).values()].map(currentRow);
  for (let at = 0; at < currents.length; at += bite) {
    await t.current.bulkPut(currents.slice(at, at + bite));
    options.progress?.(
      fresh.length + Math.round((fresh.length * Math.min(at + bite, currents.length)) / currents.length),
      steps,
    );
  }
  const ids = fresh.map((entry) => entry.id);
  const copiedTablet = fresh.some((entry) => entry.device === before.device);
  const self: Self = {
    ...before,
    ...(copiedTablet ? { device: newId(), n: 0 } : {}),
    ...(empty && options.collection ? { collection: options.collection } : {}),
    tally: withoutEntries(
      withEntries(before.tally, ids),
      gone.map((entry) => entry.id),
    ),
    out: (before.out ?? 0) + gone.length,
  };
  const written = {
    self,
    added: fresh.length,
    already: standing.length - fresh.length,
    copiedTablet,
    erased: gone.length,
    refused: coming.length - standing.length,
  };
  const { ends } = options;
  if (ends) await t.meta.delete(ends.journal);
  if (fresh.length === 0) return { ...written, counters: new Map() };
  if (ends && ends.photos.length > 0) await t.meta.put({ key: photosArrivedKey(deed.id), value: ends.photos });
  await putSelf(t, self);
  await t.meta.put({ key: arrivedKey(deed.id), value: ids });
  const stays = gone.length > 0 ? { erases: true as const } : {};
  const shared = options.shared ? { shared: true as const } : {};
  await t.deeds.add({ deed: deed.id, name: deed.name, at: deed.at, arrived: true, ...stays, ...shared } as never);
  const withins = new Set([...fresh, ...gone, ...spoken.flatMap((round) => round ?? [])].map(({ within }) => within));
  const counters = await raiseCounters(t, withins, currents, went);
  return { ...written, counters };
};

const distinct = (coming: readonly Entry[]): Entry[] => {
  const byId = new Map<string, Entry>();
  for (const entry of coming) {
    const other = byId.get(entry.id);
    if (other && !sameEntry(other, entry)) throw new StoreProblem(deviceReason('id twice', { id: entry.id }));
    byId.set(entry.id, entry);
  }
  return [...byId.values()];
};

const notHere = async (t: Tables, coming: readonly Entry[]): Promise<Entry[]> => {
  const all = distinct(coming);
  const fresh: Entry[] = [];
  for (let at = 0; at < all.length; at += bite) {
    const part = all.slice(at, at + bite);
    const here = await t.entries.bulkGet(part.map((entry) => entry.id));
    part.forEach((entry, i) => {
      const same = here[i];
      if (!same) fresh.push(entry);
      else if (!sameEntry(same, entry)) throw new StoreProblem(deviceReason('id twice', { id: entry.id }));
    });
  }
  return fresh;
};

interface Others {
  readonly others: readonly Entry[];
  readonly went: readonly (CurrentRow | undefined)[];
  /** Things of which nothing is left. */
  readonly emptied: readonly string[];
}
const nothing: Others = { others: [], went: [], emptied: [] };

/** Entries already here of the things the fresh and the erased ones speak of, and the states those things had. */
const othersOf = async (t: Tables, fresh: readonly Entry[], gone: readonly Entry[]): Promise<Others> => {
  const things = [...new Set([...fresh, ...gone].map((entry) => entry.thing))];
  const went = await t.current.bulkGet(things);
  const known = new Set(went.flatMap((row) => row?.thing ?? []));
  const arrived = new Set(fresh.map((entry) => entry.id));
  const histories = known.size === 0 ? [] : [...(await historiesOf(t, known)).values()].flat();
  const others = histories.filter((entry) => !arrived.has(entry.id));
  const left = new Set([...fresh, ...others].map((entry) => entry.thing));
  return { others, went, emptied: things.filter((thing) => !left.has(thing)) };
};

/** Inside a transaction: removes exactly what that import added, unless something made or carried in later rests on it. */
export const takeEntriesOut = async (t: Tables, deed: string): Promise<Written> => {
  const row = await t.deeds.where('deed').equals(deed).first();
  const ids = (await t.meta.get(arrivedKey(deed)))?.value as readonly string[] | undefined;
  if (!row?.arrived || !ids) throw new StoreProblem(deviceReason('no such import', {}));
  if (row.shared) throw new StoreProblem(deviceReason('in step already', {}));
  if (row.erases) throw new StoreProblem(deviceReason('erasing stands', {}));
  const batch = (await t.entries.bulkGet([...ids])).flatMap((entry) => entry ?? []);
  const things = new Set(batch.map((entry) => entry.thing));
  const arrived = new Set(ids);
  const left = new Set(
    [...(await historiesOf(t, things))]
      .filter(([, all]) => all.some(({ id }) => !arrived.has(id)))
      .map(([thing]) => thing),
  );
  const vanishing = new Set([...things].filter((thing) => !left.has(thing)));
  const resting = (await laterEntries(t, row.n)).filter(restsOn(arrived, vanishing));
  const touching = await t.touches.filter(({ round, zone }) => vanishing.has(round) || vanishing.has(zone)).count();
  const count = resting.length + touching;
  if (count > 0) throw new StoreProblem(deviceReason('built upon', { count }));

  await t.entries.bulkDelete([...ids]);
  const vanished = await t.current.bulkGet([...vanishing]);
  await t.current.bulkDelete([...vanishing]);
  const { came, went } = await refreshCurrent(t, left);
  await t.deeds.delete(row.n);
  await t.meta.delete(arrivedKey(deed));
  await dropPhotosOf(t, deed, vanishing);
  const before = (await selfIn(t)) as Self;
  // What was erased since has been counted off already.
  const self = {
    ...before,
    tally: withoutEntries(
      before.tally,
      batch.map((entry) => entry.id),
    ),
    out: (before.out ?? 0) + batch.length,
  };
  await putSelf(t, self);
  const withins = new Set(batch.map((entry) => entry.within));
  return { self, counters: await raiseCounters(t, withins, came, [...went, ...vanished]) };
};

/** Bytes that came with an import go with it; the thumbnails of those that are spoken of all the same stay. */
const dropPhotosOf = async (t: Tables, deed: string, vanishing: ReadonlySet<string>): Promise<void> => {
  const key = photosArrivedKey(deed);
  const came = ((await t.meta.get(key))?.value ?? []) as readonly string[];
  const gone = came.filter((sha256) => vanishing.has(nameOf.photo(sha256)));
  await dropBytesOf(t, gone);
  await dropBytesOf(
    t,
    came.filter((sha256) => !gone.includes(sha256)),
    ['photoBytes'],
  );
  await t.meta.delete(key);
};

/** Inside a transaction: no import that is here is ever taken out again. */
export const shareArrivedIn = async (t: Tables): Promise<void> => {
  await t.deeds.filter((row) => row.arrived === true && row.shared !== true).modify({ shared: true });
};

/** Everything that came into the store after a deed, by this device's deeds and by later imports. */
const laterEntries = async (t: Tables, n: number): Promise<Entry[]> => {
  const later = await t.deeds.where('n').above(n).toArray();
  const own = await Promise.all(
    later.filter((row) => !row.arrived).map((row) => t.entries.where('deed').equals(row.deed).toArray()),
  );
  const imports = await t.meta.bulkGet(later.filter((row) => row.arrived).map((row) => arrivedKey(row.deed)));
  const ids = imports.flatMap((arrived) => (arrived?.value ?? []) as readonly string[]);
  const carried = (await t.entries.bulkGet(ids)).flatMap((entry) => entry ?? []);
  return [...own.flat(), ...carried];
};
