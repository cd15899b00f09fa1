import type { Shortening } from '../life';
import type { Figure, Reason } from '../record';

/**
 * What counts as "the green is back", one for each zone and never mixed. 'spot': where looks are made, a look's "green" or any
 * green in the metal in a round. 'cover': elsewhere, green in the metal at the return level in a round.
 */
export type HoldEvent = 'spot' | 'cover';

/** How long one coating kept the green away: it came back after `lower` and not after `upper` months. */
export interface Hold {
  /** Thing names of the zone and of the coating (several of one day: the first by name). */
  readonly zone: string;
  readonly coating: string;
  /** Code of trade/treatments. */
  readonly type: string;
  /** Day of the coating, YYYY-MM-DD; the first it may have been where the date is vague. */
  readonly start: string;
  /** Seen clear within two weeks, or assumed. */
  readonly clean: 'verified' | 'assumed';
  /** Months, 0 or more. */
  readonly lower: number;
  /** Months, over `lower`; null where it was not seen to come back. */
  readonly upper: number | null;
  /** Days. */
  readonly lastClear: string | null;
  readonly firstSeen: string | null;
  /** 'still clear': when last looked at, before today or before the series was broken off (the reasons say which). */
  readonly end: 'returned' | 'coated again' | 'still clear';
  /** An end of the interval rests on something noticed in passing, outside the planned looks. */
  readonly inPassing: boolean;
  /** Which of the zone's spans it lies in. */
  readonly span: number;
  readonly reasons: readonly Reason[];
}

/** A coating from which nothing can be told, and why. */
export interface NoHold {
  readonly zone: string;
  readonly coating: string;
  readonly type: string;
  /** Day of the coating, or its date as entered where no day can be read from it. */
  readonly start: string;
  readonly reasons: readonly Reason[];
}

/** A stretch of a zone's history between treatments that break its series. */
export interface Span {
  /** First day it may have begun; null for the first. */
  readonly since: string | null;
  /** What broke the series there. */
  readonly treatments: readonly { readonly treatment: string; readonly type: string; readonly date: string }[];
  /** A cause was removed there. */
  readonly causeRemoved: boolean;
  /** Whether the holds of this span get shorter. */
  readonly shortening: Shortening;
}

export interface ZoneHolds {
  readonly zone: string;
  /** Exposure group, see groupOf. */
  readonly group: string;
  readonly event: HoldEvent;
  /** In order of time. */
  readonly holds: readonly Hold[];
  readonly noHolds: readonly NoHold[];
  /** In order of time; the last is the one that goes on. */
  readonly spans: readonly Span[];
  /** Of the last span. */
  readonly shortening: Shortening;
  /** The latest coating that can be placed in time and still counts (no break since); null where there is none. */
  readonly onNow: CoatingOn | null;
  readonly reasons: readonly Reason[];
}

/** The coating that lies on a zone now. */
export interface CoatingOn {
  readonly coating: string;
  readonly type: string;
  /** First and last day it may have been put on. */
  readonly from: string;
  readonly to: string;
  /** 'back': green was seen since. 'not clean': it stood there right after. 'unknown': nobody has looked since. */
  readonly state: 'clear' | 'back' | 'not clean' | 'unknown';
  readonly lastClear: string | null;
  readonly firstSeen: string | null;
}

/** A figure one or both ends of which may not be known. */
export interface OpenFigure {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly reasons: readonly Reason[];
}

/** A day with its range, each YYYY-MM-DD; an end not known is null. */
export interface DayFigure {
  readonly day: string;
  readonly low: string | null;
  readonly high: string | null;
}

export type { Figure };
