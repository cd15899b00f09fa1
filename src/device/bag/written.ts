import type { Held, LeftOut } from '../../engine/exchange';
import type { Entry } from '../../engine/record';

/** What to write into a bag, and where to. */
export interface WriteAsked {
  /** Names this bag among those that lie here waiting to leave. */
  readonly id: string;
  /** Name of the database. */
  readonly store: string;
  /** Names that very database in bag-info. */
  readonly storeId: string;
  /** Thing name of the collection. */
  readonly collection: string;
  /** Name of the file; without its ending it names the base folder in it. */
  readonly name: string;
  /** Calendar day, YYYY-MM-DD. */
  readonly day: string;
  readonly sculptures?: readonly string[] | undefined;
  readonly without: readonly LeftOut[];
  /** Straight into a file the person picked; otherwise into this device's own files until it is handed over. */
  readonly into?: FileSystemFileHandle | undefined;
}

/** A bag that was written, and read back whole. */
export interface BagWritten {
  readonly file: File;
  readonly entries: number;
  /** Photos in it, and their bytes. */
  readonly photos: number;
  readonly photoBytes: number;
  /** How many photos it speaks of and does not hold. */
  readonly missing: number;
  /** Of them those whose bytes are here and no longer what their name was made from, by hash. */
  readonly damaged: readonly string[];
  readonly holds: readonly Held[];
  readonly keptAtHome: number;
}

/** What lies in a bag to be read without this app. Handed in: their sentences live above this floor. */
export interface BagPapers {
  report(contents: BagContents, papers: readonly PaperFile[]): string;
  /** Papers to be printed or handed over, each a file of its own. */
  papers(contents: BagContents): readonly PaperFile[];
  readme(contents: BagContents): string;
  /** What may stand in survey.json. It lies beside the app, ready made. Rejects where it cannot be read. */
  schema(): Promise<string>;
}

/** A paper in a bag: its path from the base of the bag, what it is and of what, and the file itself. */
export interface PaperFile {
  readonly path: string;
  readonly title: string;
  readonly over: string;
  readonly html: string;
}

/** What a bag holds, as the papers in it tell of it. */
export interface BagContents {
  /** Thing name of the collection. */
  readonly collection: string;
  readonly entries: readonly Entry[];
  /** Calendar day it is written on, YYYY-MM-DD. */
  readonly made: string;
  /** Pictures in the bag; `path` from its base, "data/photos/<sha256>.jpg". */
  readonly photos: readonly { readonly sha256: string; readonly path: string; readonly bytes: number }[];
  /** SHA-256 of photos spoken of whose bytes are not in it. */
  readonly missing: readonly string[];
  readonly leftOut: readonly LeftOut[];
  /** Names the state of the record, by work and for the collection, as it is at home. */
  readonly states?: ReadonlyMap<string, string> | undefined;
}
