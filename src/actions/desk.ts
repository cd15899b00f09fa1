import type { Store } from '../device/store';
import type { Reason } from '../engine/record';

/** One open collection, and what every deed needs from the device: time, ids, the person at work. */
export interface Desk {
  readonly store: Store;
  /** Collection thing name. */
  readonly collection: string;
  /** True for the invented demo collection. */
  readonly invented: boolean;
  /** ISO 8601 with offset. */
  now(): string;
  /** Local calendar day, YYYY-MM-DD. */
  today(): string;
  /** UUIDv7. */
  newId(): string;
  /** Thing name of the surveyor at work, or ''. */
  surveyor(): string;
}

/** What a deed came to: done, or the sentence that says why not. Nothing is stored when it is not ok. */
export type Outcome<T = object> = ({ readonly ok: true } & T) | { readonly ok: false; readonly reason: Reason };

/**
 * Something a screen reads. `get` gives undefined while it is being read for the first time, and the same
 * reference until it changes, so that one `useSyncExternalStore` hook serves every screen.
 */
export interface Question<T> {
  subscribe(changed: () => void): () => void;
  get(): T | undefined;
  /** False while it is read for the first time. Left out where nothing need wait for it. */
  answered?(): boolean;
}

/** A question whose answer is at hand from the start. */
export interface Known<T> extends Question<T> {
  get(): T;
}
