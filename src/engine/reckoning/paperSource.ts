import type { NeedOf } from '../condition';
import type { Advice, Life, ZoneHolds } from '../hold';
import type { Current, SculptureRecord } from '../record';

/** One work as a paper reads it. */
export interface WorkOnPaper {
  /** All of its rounds. */
  readonly record: SculptureRecord;
  /** Everything living within the work: photos, places, stations, what is planned for it. */
  readonly within: readonly Current[];
  /** Names the state of everything within the work, the same on every device that holds the same entries. */
  readonly state: string;
  /** Latest round scored and classed, holds and advice; undefined where they are not worked out yet. */
  readonly figures?:
    | { readonly need: NeedOf | null; readonly holds: readonly ZoneHolds[]; readonly advice: readonly Advice[] }
    | undefined;
}

/** What papers are made from: plain data, the same whether it comes from the open survey or from a file on its way out. */
export interface PaperSource {
  /** Thing name of the collection. */
  readonly collection: string;
  readonly name: string;
  /** The demo: marked on every page. */
  readonly invented: boolean;
  /** Calendar day on which the paper is made, YYYY-MM-DD. */
  readonly today: string;
  /** By number. One of them only where the paper is about that one. */
  readonly works: readonly WorkOnPaper[];
  /** Everything living that belongs to the collection itself: people, products, funds, agreements, plans of years. */
  readonly around: readonly Current[];
  /** What the holds of all works tell together. */
  readonly lives: readonly Life[];
  /** Names the state of what belongs to the collection itself, as that of a work. */
  readonly aroundState: string;
  /** Names the state of all of it. */
  readonly state: string;
}
