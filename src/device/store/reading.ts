import Dexie from 'dexie';
import type { TableName } from './connection';
import type { CurrentRow, Tables } from './database';
import { erasedIn, erasuresIn } from './erased';
import { headsWord, noHeads } from './headsHash';
import { countersIn } from './self';
import type { DeedRow, Store } from './store';

type Run = <T>(mode: 'r', tables: readonly TableName[], deed: string, body: (t: Tables) => Promise<T>) => Promise<T>;

type Reading = Pick<
  Store,
  | 'touchesOf'
  | 'touchesOfDeed'
  | 'current'
  | 'currents'
  | 'within'
  | 'standing'
  | 'standings'
  | 'ofKind'
  | 'ofRound'
  | 'unsettled'
  | 'entriesOf'
  | 'entriesOfDeed'
  | 'allEntries'
  | 'entryIds'
  | 'entriesWith'
  | 'erasures'
  | 'lastDeed'
  | 'erased'
  | 'photo'
  | 'photosHere'
  | 'thumb'
  | 'meta'
  | 'metas'
>;

const present = (rows: readonly CurrentRow[]): CurrentRow[] => rows.filter((row) => !row.gone);

/** By index and all at once: asking row by row costs many times as much. Bodies are not judged again on reading. */
export const reading = (run: Run): Reading => ({
  touchesOf: (round) => run('r', ['touches'], '', (t) => t.touches.where('round').equals(round).sortBy('n')),
  touchesOfDeed: (deed) => run('r', ['touches'], '', (t) => t.touches.where('deed').equals(deed).sortBy('n')),
  current: (thing) => run('r', ['current'], '', (t) => promised(t.current.get(thing))),
  currents: (things) => run('r', ['current'], '', (t) => promised(t.current.bulkGet([...things]))),
  within: (within, kinds) =>
    run('r', ['current'], '', async (t) => {
      const all = t.current.where('[within+kind]');
      if (!kinds) return present(await all.between([within, Dexie.minKey], [within, Dexie.maxKey]).toArray());
      const lists = await Promise.all(
        kinds.map((kind) => t.current.where('[within+kind]').equals([within, kind]).toArray()),
      );
      return present(lists.flat());
    }),
  standing: (within) =>
    run('r', ['current', 'meta'], '', async (t) => {
      const rows = await t.current
        .where('[within+kind]')
        .between([within, Dexie.minKey], [within, Dexie.maxKey])
        .toArray();
      const heads = headsWord((await countersIn(t)).get(within)?.heads ?? noHeads);
      return { currents: present(rows), heads };
    }),
  standings: () =>
    run(
      'r',
      ['meta'],
      '',
      async (t) => new Map([...(await countersIn(t))].map(([within, { heads }]) => [within, headsWord(heads)])),
    ),
  ofKind: (kind) =>
    run('r', ['current'], '', async (t) => present(await t.current.where('kind').equals(kind).toArray())),
  ofRound: (round) =>
    run('r', ['current'], '', async (t) =>
      present(await t.current.where('[round+kind]').between([round, Dexie.minKey], [round, Dexie.maxKey]).toArray()),
    ),
  unsettled: () => run('r', ['current'], '', (t) => promised(t.current.where('unsettled').equals(1).toArray())),
  entriesOf: (thing) => run('r', ['entries'], '', (t) => promised(t.entries.where('thing').equals(thing).toArray())),
  entriesOfDeed: (deed) => run('r', ['entries'], '', (t) => promised(t.entries.where('deed').equals(deed).toArray())),
  allEntries: () => run('r', ['entries'], '', (t) => promised(t.entries.toArray())),
  entryIds: () => run('r', ['entries'], '', (t) => promised(t.entries.toCollection().primaryKeys())),
  entriesWith: (ids) =>
    run('r', ['entries'], '', async (t) => (await t.entries.bulkGet([...ids])).flatMap((entry) => entry ?? [])),
  erasures: () => run('r', ['entries'], '', erasuresIn),
  lastDeed: () =>
    run('r', ['deeds'], '', async (t) => {
      const found = await t.deeds
        .reverse()
        .until((row) => row.stops === true)
        .filter(takesBack)
        .first();
      if (!found) return undefined;
      const { n: _, ...row } = found;
      return row;
    }),
  erased: () => run('r', ['entries'], '', erasedIn),
  photo: (sha256) => run('r', ['photoBytes'], '', (t) => promised(t.photoBytes.get(sha256))),
  photosHere: () => run('r', ['photoBytes'], '', (t) => promised(t.photoBytes.toCollection().primaryKeys())),
  thumb: (sha256) => run('r', ['thumbs'], '', (t) => promised(t.thumbs.get(sha256))),
  meta: <T>(key: string) => run('r', ['meta'], '', async (t) => (await t.meta.get(key))?.value as T | undefined),
  metas: <T>(start: string) =>
    run('r', ['meta'], '', async (t) =>
      (await t.meta.where('key').startsWith(start).toArray()).map(({ key, value }): [string, T] => [
        key.slice(start.length),
        value as T,
      ]),
    ),
});

/** Dexie's own promise as the plain one the transaction waits for. */
const promised = <T>(answer: PromiseLike<T>): Promise<T> => answer as Promise<T>;

const takesBack = (row: DeedRow): boolean => !row.undone && !row.erases && !row.shared && row.undoes === undefined;
