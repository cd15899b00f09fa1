import type { Current, Entry, Erased, Reason } from '../../engine/record';
import type { LookStep } from './lookingThrough';

/** An entry as a deed makes it; the store adds this device and its counter inside the transaction. */
export type NewEntry = { [Field in keyof Entry as Field extends 'device' | 'n' ? never : Field]: Entry[Field] };

/** One touch inside an open zone of a round, logged durably before the screen shows it. */
export interface TouchRow {
  /** Rises with each touch; given by the store. */
  readonly n: number;
  readonly round: string;
  readonly zone: string;
  readonly at: string;
  readonly by: string;
  /** What was touched: see engine/record zone drafts. Plain JSON. */
  readonly touch: unknown;
  /** Set once the zone was left and its entries written: the deed that wrote them. */
  readonly deed?: string;
}

/** What an action did, so that Undo can name it; local to this device, not in the record. */
export interface DeedRow {
  readonly deed: string;
  readonly name: Reason;
  readonly at: string;
  readonly undone?: true;
  /** Deeds that take back another are not undone themselves. */
  readonly undoes?: string;
  /** An import: taken back by taking its entries out again. */
  readonly arrived?: true;
  /** What arrived lies in a folder shared with other devices, or came out of it: not taken out again, the folder would bring it back. */
  readonly shared?: true;
  /** Something was erased by it: not taken back. */
  readonly erases?: true;
  /** Things were said again by it without what was erased: deeds before it do not fit any more, and are not taken back either. */
  readonly stops?: true;
}

export interface PhotoBytes {
  readonly sha256: string;
  readonly mime: string;
  readonly bytes: ArrayBuffer;
}

/** Everything that goes into one strict transaction, or none of it. */
export interface Batch {
  readonly entries: readonly NewEntry[];
  readonly deed: { readonly id: string; readonly name: Reason; readonly at: string; readonly undoes?: string };
  /** Touches (by n) whose zone these entries record: marked with the deed. */
  readonly settlesTouches?: readonly number[];
  /** Touches to open again: the undo of leaving a zone. */
  readonly reopensTouches?: readonly number[];
  /** Touches to forget. */
  readonly dropsTouches?: readonly number[];
  /** Noted on this device in the same transaction: where the work stands after it. */
  readonly notes?: { readonly key: string; readonly value: unknown };
  /** Words that go from touches, names of deeds and notes of this device too, and what is put for them. */
  readonly instead?: { readonly words: readonly string[]; readonly put: string };
}

export interface TakeInOptions {
  /** Taken on as this store's own collection, if nothing was entered here yet. */
  readonly collection?: string;
  /** They came out of a shared folder: never taken out again. */
  readonly shared?: true;
  /**
   * Ends the journal of photos that came with them, in the same transaction: a meta row, and the SHA-256 of those whose bytes were not
   * here before. Taking the entries out takes these bytes too.
   */
  readonly ends?: { readonly journal: string; readonly photos: readonly string[] };
  progress?(done: number, all: number): void;
}

export interface TakenIn {
  readonly added: number;
  readonly already: number;
  /** Entries under this device's own name that it never made: the tablet is a copy, and from now on has a name of its own. */
  readonly copiedTablet: boolean;
  /** Entries here that an erasure among them took out for good. */
  readonly erased: number;
  /** Entries of theirs that were erased before, and were not taken. */
  readonly refused: number;
}

/** What lies in the store, by its own count. */
export interface Held {
  readonly entries: number;
  readonly photos: number;
  /** Photos and thumbnails counted, entries estimated. */
  readonly bytes: number;
}

/** What looking through everything came to. */
export interface LookedThrough {
  readonly entries: number;
  readonly photos: number;
  /** Present states that do not follow from the entries. */
  readonly presentWrong: number;
  /** Photos by hash whose bytes are no longer those their name was made from. */
  readonly altered: readonly string[];
  /** Whole photos nothing speaks of, by hash. */
  readonly orphans: readonly string[];
  /** Photos spoken of whose bytes are not here: a normal state. */
  readonly missing: number;
  /** What a person should know of the entries; none where all is well. */
  readonly faults: readonly Reason[];
}

/**
 * One collection on this device. All writing resolves after the transaction's `complete`, with strict durability.
 * Errors reject with a StoreProblem carrying a Reason; nothing of that call was then stored.
 */
export interface Store {
  readonly name: string;
  /** Names this very database; a bag that leaves bears it. */
  readonly id: string;
  readonly collection: string;
  readonly device: string;
  /** Number of the last entry this device made: what has a lower one was there before. */
  readonly made: number;
  /** 'reading' where another tab writes, the database is newer than this build, or the data was removed. */
  readonly mode: 'writing' | 'reading';
  readonly why?: Reason | undefined;
  /** Whether `takeOver` could make this tab the writing one. */
  readonly canTakeOver: boolean;
  /** What a person should be told about this store. */
  readonly notes: readonly Reason[];
  readonly closed: boolean;

  /**
   * Erasures among the entries delete what they name, with bytes and thumbnails, in the same transaction. Rejects entries that speak of
   * something erased before.
   */
  commit(batch: Batch): Promise<readonly Entry[]>;
  touch(row: Omit<TouchRow, 'n'>): Promise<TouchRow>;
  dropTouches(ns: readonly number[]): Promise<void>;
  /** Touches of a round, oldest first, settled ones too. */
  touchesOf(round: string): Promise<TouchRow[]>;
  touchesOfDeed(deed: string): Promise<TouchRow[]>;

  current(thing: string): Promise<Current | undefined>;
  currents(things: readonly string[]): Promise<(Current | undefined)[]>;
  /** All present things within a sculpture or the collection, of the kinds asked for (all, when none are named). */
  within(within: string, kinds?: readonly string[]): Promise<Current[]>;
  /** The present things within, and the name of their heads, read at one moment. */
  standing(within: string): Promise<{ readonly currents: Current[]; readonly heads: string }>;
  /** The names of the heads of everything, as they lie in the database. */
  standings(): Promise<ReadonlyMap<string, string>>;
  ofKind(kind: string): Promise<Current[]>;
  /** Visits, findings, re-ratings and class sets of one round. */
  ofRound(round: string): Promise<Current[]>;
  /** Things with two living versions. */
  unsettled(): Promise<Current[]>;

  entriesOf(thing: string): Promise<Entry[]>;
  entriesOfDeed(deed: string): Promise<Entry[]>;
  allEntries(): Promise<Entry[]>;
  /** Ids of all entries, without the entries. */
  entryIds(): Promise<string[]>;
  /** The entries of these ids, those that are here. */
  entriesWith(ids: readonly string[]): Promise<Entry[]>;
  /** Every erasure there is. */
  erasures(): Promise<Entry[]>;
  /** Newest first; only this device's, only those not undone and not undoing. */
  lastDeed(): Promise<DeedRow | undefined>;

  /**
   * Adds entries that came from elsewhere, exactly as they are, in one strict transaction; those already here are left. Erasures hold
   * both ways: theirs delete what is here, and what was erased here is not taken.
   */
  takeIn(entries: readonly Entry[], deed: Batch['deed'], options?: TakeInOptions): Promise<TakenIn>;
  /** Physically removes exactly the batch a takeIn added; rejects once something here builds on it, or where it erased something. */
  takeOut(deed: string): Promise<void>;
  /** All that ever arrived goes into a shared folder: from now on none of it is taken out again. */
  shareArrived(): Promise<void>;

  /** All that was ever erased here. */
  erased(): Promise<Erased>;

  /** Keeps bytes under their hash, reads them back and compares before it resolves. Rejects those of an erased photo. */
  keepPhoto(photo: PhotoBytes): Promise<void>;
  photo(sha256: string): Promise<PhotoBytes | undefined>;
  photosHere(): Promise<string[]>;
  /** Takes the bytes of a photo off this device, and notes it in the same transaction; what is said of it and its thumbnail stay. */
  dropPhoto(sha256: string, note?: Batch['notes']): Promise<void>;
  /** Takes bytes and thumbnail of a photo nothing speaks of off this device. */
  dropStray(sha256: string): Promise<void>;
  thumb(sha256: string): Promise<PhotoBytes | undefined>;
  keepThumb(photo: PhotoBytes): Promise<void>;
  held(): Promise<Held>;

  meta<T>(key: string): Promise<T | undefined>;
  setMeta(key: string, value: unknown): Promise<void>;
  forgetMeta(key: string): Promise<void>;
  /** Meta rows whose key starts so, by the rest of the key. */
  metas<T>(start: string): Promise<[rest: string, value: T][]>;
  /** Worked-out values that can be lost: not written where this tab only reads, and what the device refuses is no fault. */
  keepWorkedOut(rows: readonly (readonly [key: string, value: unknown])[]): Promise<void>;

  /** Counts entries and their checksum and holds `current` against them; gives the number, or rejects with what differs. */
  checkCounts(): Promise<number>;
  /** Makes the present state of everything anew from the entries. */
  rebuildCurrent(): Promise<void>;
  /** The same in small transactions, photos too, told step by step: for a worker, while work goes on. Changes nothing. */
  lookThrough(): AsyncGenerator<LookStep, void>;

  /** Called after each commit with the withins it touched, here or in the tab that writes. */
  watch(told: (withins: ReadonlySet<string>) => void): () => void;
  /** Calls the watchers, with nothing changed: more was worked out. */
  tell(): void;
  /** Rises whenever something within it changed. */
  counterOf(within: string): number;
  /** Names the heads of all things within it: the same word whenever they are the same, in whatever order they came. */
  headsOf(within: string): string;
  /** The same of everything that was ever entered. */
  allHeads(): ReadonlyMap<string, string>;
  /** Rises with every change. */
  changes(): number;

  /** Makes this the writing tab; the other one is told. */
  takeOver(): Promise<void>;
  watchMode(told: () => void): () => void;

  close(): void;
  /** Deletes the whole database (the demo, left for good). */
  destroy(): Promise<void>;
}
