import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { type Database, database, type Tables, tablesVersion } from './database';
import { asProblem, isLost } from './faults';

export type TableName = keyof Tables;

export interface Watching {
  /** Looks at a database just opened or opened again, before anything is done with it; throws what stands against using it. */
  opened(db: Database): Promise<void>;
  /** A newer version of the app wants the database, or another tab deletes it: this page has to be loaded again. */
  wanted(): void;
}

/** The open database; opened anew, once, when a tablet lost it in its sleep. */
export interface Connection {
  open(): Promise<Database>;
  /**
   * Runs `body` in one transaction and resolves after its `complete`. `body` awaits nothing but tables: anything else would let
   * the transaction commit half done. `deed` names what failed, in the problem it rejects with.
   */
  run<T>(mode: 'r' | 'rw', tables: readonly TableName[], deed: string, body: (t: Tables) => Promise<T>): Promise<T>;
  close(): void;
}

export const connection = (name: string, watching: Watching): Connection => {
  let db: Database | undefined;
  let opening: Promise<Database> | undefined;
  let closed = false;
  /** The browser's own connection that was looked at. Dexie opens another by itself when it finds this one dead. */
  let looked: IDBDatabase | undefined;

  const drop = () => {
    const old = db;
    db = undefined;
    opening = undefined;
    old?.close();
  };

  const openAnew = async (): Promise<Database> => {
    const fresh = database(name);
    db = fresh;
    fresh.on('versionchange', () => {
      drop();
      closed = true;
      watching.wanted();
      return false;
    });
    fresh.on('close', () => {
      if (db === fresh) drop();
    });
    const blocked = new Promise<never>((_, reject) => {
      fresh.on('blocked', () => reject(new StoreProblem(deviceReason('update blocked', {}))));
    });
    try {
      await Promise.race([fresh.open(), blocked]);
      await watching.opened(fresh);
      looked = fresh.backendDB();
    } catch (error) {
      if (db === fresh) drop();
      throw error;
    }
    return fresh;
  };

  const open = (): Promise<Database> => {
    if (closed) return Promise.reject(new StoreProblem(deviceReason('reload needed', {})));
    opening ??= openAnew();
    return opening;
  };

  return {
    open,
    run: async (mode, tables, deed, body) => {
      const once = async () => {
        const at = await open();
        return at.transaction(
          mode,
          tables.map((table) => at[table]),
          // Declared async: only then Dexie keeps the transaction open over the awaits inside.
          async () => {
            if (at.backendDB() !== looked) throw new Unlooked();
            return body(at);
          },
        );
      };
      try {
        return await once();
      } catch (error) {
        if (!isLost(error) || closed) throw asProblem(error, deed);
      }
      drop();
      try {
        return await once();
      } catch (error) {
        throw asProblem(error, deed);
      }
    },
    close: () => {
      closed = true;
      drop();
    },
  };
};

/** A connection nobody looked at: behind it may be a database the browser cleared. Taken for a lost one, so it is opened anew. */
class Unlooked extends Error {
  override readonly name = 'DatabaseClosedError';
}

/** Version of the tables in a database as it lies on the disk. */
export const versionFound = (db: Database): number => Math.ceil(db.backendDB().version / 10);

export const isNewer = (db: Database): boolean => versionFound(db) > tablesVersion;
