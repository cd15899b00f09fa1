import type { SculptureSummary } from '../../engine/reckoning';
import { wordOf } from '../wordOf';

/** Rises when the way figures are worked out changes, so that none made the old way is shown. */
const way = 5;

/** What every work's figures rest on beside its own heads. */
export interface Words {
  /** Of what the collection owns: scale, hold rules, eyes. */
  readonly own: string;
  /** Of what all holds together tell. */
  readonly lives: string;
}

/** Something worked out, with what it rests on and the days on which it holds. */
export interface Kept<T> {
  readonly stamp: string;
  readonly from: string;
  /** First day on which it no longer does; null where no date changes it. */
  readonly until: string | null;
  readonly value: T;
}

/** The first pass rests on the work's heads and what the collection owns. */
export const firstStamp = (heads: string, own: string): string => `${way} ${heads} ${own}`;

/** The second on what all works teach as well. */
export const stampOf = (heads: string, { own, lives }: Words): string => `${firstStamp(heads, own)} ${lives}`;

/** What is told of a work in its list, and what its larger rows must be named for to belong to it. */
export interface KeptSummary extends Kept<SculptureSummary> {
  /**
   * Names what the second pass came to. Where the lives changed and it came to the same, only this row is written anew.
   */
  readonly content: string;
}

/** The rows of a second pass that are large bear what they came to. */
export const contentStamp = (first: string, content: string): string => `${first} ${content}`;

export const holds = <T>(kept: Kept<T> | undefined, stamp: string, today: string): kept is Kept<T> =>
  kept?.stamp === stamp && kept.from <= today && (kept.until === null || today < kept.until);

/** One word for where everything stands. */
export const everythingWord = (heads: ReadonlyMap<string, string>): string =>
  wordOf([way, [...heads].map(([within, word]) => `${within} ${word}`).sort()]);

/** Where the collection stood when its figures were last seen to be right, all of them. */
export interface Standing {
  readonly everything: string;
  readonly words: Words;
}

/** Rows beside the record; they can be lost and are then worked out again. By work: the first three bear the stamp of a first pass. */
export const rowOf = {
  first: (work: string) => `first ${work}`,
  holds: (work: string) => `holds ${work}`,
  trends: (work: string) => `trends ${work}`,
  need: (work: string) => `need ${work}`,
  advice: (work: string) => `advice ${work}`,
  summary: (work: string) => `summary ${work}`,
  lives: 'lives',
  standing: 'standing',
  firmness: 'firmness',
} as const;
