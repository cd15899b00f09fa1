import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { connection } from './connection';
import { lookingThrough } from './lookingThrough';
import { reading } from './reading';
import { selfKey } from './self';
import type { Store } from './store';

/** A store as far as it can be read: what a worker has of it. */
export type Reader = Pick<
  Store,
  | 'current'
  | 'standing'
  | 'standings'
  | 'ofKind'
  | 'meta'
  | 'metas'
  | 'lookThrough'
  | 'allEntries'
  | 'photo'
  | 'photosHere'
> & {
  close(): void;
};

/** A connection of its own to a store that is there: it reads, asks for no lock and steps aside when the database is wanted. */
export const openReader = (name: string): Reader => {
  const conn = connection(name, {
    opened: async (db) => {
      if (!(await db.meta.get(selfKey))) throw new StoreProblem(deviceReason('data removed', { count: 0 }));
    },
    wanted: () => undefined,
  });
  return { ...reading(conn.run), lookThrough: () => lookingThrough(conn.run), close: conn.close };
};
