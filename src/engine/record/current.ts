import type { BodyOf, KindOfThing } from './bodies';
import type { Entry } from './entry';

/** The present state of one thing: its leading head, and how many heads there are (two: a person must settle it). */
export interface Current {
  readonly thing: string;
  readonly kind: string;
  readonly within: string;
  /** The leading entry. */
  readonly lead: Entry;
  /** Length of the line of replacement the lead stands on: 1 for a first entry. */
  readonly line: number;
  /** Ids of all heads, the lead first. */
  readonly heads: readonly string[];
  /** True when the leading head says the thing was taken away; then every head says so. */
  readonly gone: boolean;
}

/** A thing with its body in the shape its kind promises. */
export interface Thing<K extends KindOfThing> {
  readonly thing: string;
  readonly body: BodyOf<K>;
  readonly lead: Entry;
  /** Ids of all heads, the lead first. More than one: not settled. In a merged round they may be entries of two things. */
  readonly heads: readonly string[];
}
