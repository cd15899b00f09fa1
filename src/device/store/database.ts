import Dexie, { type Table } from 'dexie';
import type { Current, Entry } from '../../engine/record';
import type { DeedRow, PhotoBytes, TouchRow } from './store';

/** Version of the tables. IndexedDB itself counts ten times as much. */
export const tablesVersion = 1;

/** A present thing with the plain keys it is found by. */
export interface CurrentRow extends Current {
  /** Of what belongs to a round. */
  readonly round?: string;
  /** There only where two living versions wait to be settled: the index then holds nothing else. */
  readonly unsettled?: 1;
}

export interface MetaRow {
  readonly key: string;
  readonly value: unknown;
}

export interface Tables {
  readonly entries: Table<Entry, string>;
  readonly current: Table<CurrentRow, string>;
  readonly touches: Table<TouchRow, number, Omit<TouchRow, 'n'>>;
  readonly deeds: Table<DeedRow & { readonly n: number }, number, DeedRow>;
  readonly photoBytes: Table<PhotoBytes, string>;
  readonly thumbs: Table<PhotoBytes, string>;
  readonly meta: Table<MetaRow, string>;
}

export type Database = Dexie & Tables;

/**
 * Never opened by itself: a database the browser cleared would come back empty without a word. Strict durability, so that
 * what was said to be saved is on the disk; Dexie hands the option to every browser, whatever its name.
 */
export const database = (name: string): Database => {
  const db = new Dexie(name, { autoOpen: false, chromeTransactionDurability: 'strict' }) as Database;
  db.version(tablesVersion).stores({
    entries: 'id, thing, deed',
    current: 'thing, kind, [within+kind], [round+kind], unsettled',
    touches: '++n, round, deed',
    deeds: '++n, &deed',
    photoBytes: 'sha256',
    thumbs: 'sha256',
    meta: 'key',
  });
  return db;
};

/** Kinds of thing that are found by their round. */
const ofARound = new Set(['visit', 'finding', 'rerating', 'classSet']);

export const currentRow = (current: Current): CurrentRow => {
  const { round } = current.lead.body;
  return {
    ...current,
    ...(ofARound.has(current.kind) && typeof round === 'string' ? { round } : {}),
    ...(current.heads.length > 1 && !current.gone ? { unsettled: 1 as const } : {}),
  };
};
