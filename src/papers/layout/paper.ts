import type { PaperSource } from '../../engine/reckoning';
import type { PaperPiece } from './tree';

/** Words a person writes for a paper herself, kept with the survey (kind `paperText`). */
export interface OwnWords {
  /** Code of the place in the paper. */
  readonly part: string;
  readonly label: string;
  readonly hint?: string;
  /** What she wrote, or ''. */
  readonly text: string;
  /** What stands in the paper until she writes something: her field begins with it. */
  readonly drafted?: string;
  readonly longest: number;
}

/** A paper ready to be shown, printed or saved. */
export interface Paper {
  readonly title: string;
  /** Small line above the title: number and name of the work, or of the collection. */
  readonly over: string;
  /** Work number, or what else stands at the foot of each page. */
  readonly number: string;
  /** Names the state of what the paper was made from. */
  readonly state: string;
  /** Version of the scale its figures were made with, where it has any. */
  readonly scale?: string | undefined;
  readonly body: readonly PaperPiece[];
  /** Places for words of her own, in the order of the paper. */
  readonly own: readonly OwnWords[];
  /** Sentences on what the record lacks for this paper to be whole: shown beside it, never on it. */
  readonly lacks: readonly string[];
  /** Wide tables: the sheet is turned. */
  readonly turned?: true;
}

export type PaperAbout = 'work' | 'campaign' | 'fund' | 'year' | 'collection';

/** A kind of paper. */
export interface PaperSort {
  readonly id: string;
  readonly about: PaperAbout;
  /** Pages of A4 it may take with the demo: fewest and most. */
  readonly pages: readonly [fewest: number, most: number];
  /** Words for its list: what it is called, who reads it. */
  readonly title: string;
  readonly reader: string;
  /** What it may speak of that not every file may hold: words written for it, and notes of its copies, stay behind with that. */
  readonly speaksOf?: readonly ('money' | 'access')[];
  /** Goes out with a bag of the work it is about. */
  readonly withBag?: true;
  /**
   * The things this paper can be made of, from what is there: thing names (works, campaigns, funds), years as text, or the
   * collection's. None: there is nothing to make it of yet.
   */
  choices(source: PaperSource): readonly { readonly about: string; readonly label: string }[];
  /** Undefined where `about` is not in the source. */
  make(source: PaperSource, about: string): Paper | undefined;
}
