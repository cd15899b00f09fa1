import type { Reason } from '../record';

/** What is due, by what it is about. Dangers come first, whatever their day. */
export const dueSorts = [
  'danger',
  'incident',
  'hot day',
  'tripwire',
  'warranty',
  'watch',
  'look',
  'wax',
  'round',
  'review',
  'quote',
  'gift',
  'loan',
  'agreement',
  'product',
  'task',
  'lift',
] as const;

export type DueSort = (typeof dueSorts)[number];

/** One thing to be done, whoever asks for it: a hold, a plan, a promise, a person. */
export interface Due {
  /** The same for the same thing on every day and every tablet, so that an answer stays with it: names a dueAnswered. */
  readonly key: string;
  readonly sort: DueSort;
  /** Thing name; null where it is of no one work. */
  readonly sculpture: string | null;
  readonly zones: readonly string[];
  /** The thing it is about. */
  readonly about: string;
  readonly day: string;
  /** First day it is told of. */
  readonly from: string;
  /** Last day on which it can still be done; null where there is none. */
  readonly until: string | null;
  /** It is undone by the record itself or by its own screen, and an answer here would only hide it. */
  readonly ownEnd: boolean;
  /** The first says what it is. */
  readonly reasons: readonly Reason[];
}
