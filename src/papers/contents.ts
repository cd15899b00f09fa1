import type { LeftOut } from '../engine/exchange';
import type { Entry } from '../engine/record';

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
}
