import type { LeftOut } from '../../engine/exchange';

/** What to write into a bag, and where to. */
export interface WriteAsked {
  /** Name of the database. */
  readonly store: string;
  /** Thing name of the collection. */
  readonly collection: string;
  /** Name of the file, and of the base folder in it without its ending. */
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
  /** SHA-256 of photos it speaks of and does not hold. */
  readonly missing: readonly string[];
  /** Of them those whose bytes are here and no longer what their name was made from. */
  readonly damaged: readonly string[];
}
