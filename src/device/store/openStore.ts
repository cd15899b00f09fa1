import type { Reason } from '../../engine/record';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { connection, isNewer, versionFound } from './connection';
import { type Database, tablesVersion } from './database';
import { deviceStore } from './deviceStore';
import { asProblem, isFull } from './faults';
import { forgetMarker, heldAgainst, readMarker, writeMarker } from './marker';
import { countersIn, newSelf, putSelf, type Self, selfIn } from './self';
import type { Store } from './store';
import { browserSurroundings, type Surroundings } from './surroundings';
import { writingLock } from './writingLock';

export type { Surroundings } from './surroundings';

export interface OpenStore {
  readonly state: 'open';
  readonly store: Store;
}

/** Opening ends with a store, or with the word that the browser removed what was in it. Anything else rejects with a StoreProblem. */
export type StoreOpening =
  | OpenStore
  | {
      readonly state: 'removed';
      readonly reason: Reason;
      /** Forgets what was here and begins with an empty store of a new name. */
      startAfresh(): Promise<StoreOpening>;
    };

/** Opens the database of that name, making it where there is none. `collection` names the collection of a new one. */
export const openStore = async (
  name: string,
  collection: () => string,
  given: Partial<Surroundings> = {},
): Promise<StoreOpening> => {
  const around = { ...browserSurroundings(), ...given };
  let expected: Self | undefined;
  let wanted: () => void = () => undefined;
  const conn = connection(name, {
    opened: async (db) => {
      if (expected && (await selfOf(db))?.store !== expected.store)
        throw new StoreProblem(deviceReason('data removed', { count: readMarker(around.box, name)?.entries ?? 0 }));
    },
    wanted: () => wanted(),
  });
  let db: Database;
  let found: Self | undefined;
  try {
    db = await conn.open();
    found = await selfOf(db);
  } catch (error) {
    conn.close();
    if (error instanceof StoreProblem || isFull(error)) throw asProblem(error, '');
    throw new StoreProblem(
      deviceReason('no database', { said: error instanceof Error ? error.message : String(error) }),
      error,
    );
  }
  const standing = heldAgainst(readMarker(around.box, name), found);
  if (standing.state === 'removed') {
    conn.close();
    return {
      state: 'removed',
      reason: deviceReason('data removed', { count: standing.expected }),
      startAfresh: () => {
        forgetMarker(around.box, name);
        return openStore(name, collection, given);
      },
    };
  }
  const newer = isNewer(db);
  const first = found ?? newSelf(around.newId, collection());
  if (!found && !newer)
    await conn.run('rw', ['meta'], '', async (t) => void (await ((await selfIn(t)) ?? putSelf(t, first))));
  const self = (await selfOf(db)) ?? first;
  expected = self;
  const counters = await conn.run('r', ['meta'], '', countersIn);
  const missing = standing.state === 'missing' ? { count: self.tally.entries, expected: standing.expected } : undefined;
  let lockMoved: (held: boolean) => void = () => undefined;
  const lock = await writingLock(newer ? undefined : around.locks, `${name}.writing`, (held) => lockMoved(held));
  const made = deviceStore({
    name,
    conn,
    lock,
    around,
    self,
    counters,
    notes: missing ? [deviceReason('entries missing', missing)] : [],
    ...(newer ? { newer: deviceReason('newer database', { here: tablesVersion, found: versionFound(db) }) } : {}),
  });
  lockMoved = made.lockMoved;
  wanted = made.wanted;
  if (!missing && made.store.mode === 'writing') writeMarker(around.box, name, self);
  return { state: 'open', store: made.store };
};

const selfOf = (db: Database): Promise<Self | undefined> =>
  Promise.resolve(db.meta.get('self')).then((row) => row?.value as Self | undefined);
