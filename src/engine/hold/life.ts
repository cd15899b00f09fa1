import type { CommonShape, Redraw, Turnbull } from '../life';
import type { Reason } from '../record';
import type { HoldEvent, OpenFigure } from './hold';

/** Weibull lives in months, S(t) = exp(-(t / scale)^shape). */
export interface Fit {
  /** 'borrowed': the shape is that of the whole collection, and only the scale was sought. */
  readonly from: 'own' | 'borrowed';
  /** With their 90 % ranges over zones drawn anew. */
  readonly shape: OpenFigure;
  readonly scale: OpenFigure;
  /** What the ranges come from, one row a draw. */
  readonly draws: readonly Redraw[];
}

/** What some holds tell together. */
export interface HoldCurve {
  readonly zones: number;
  readonly holds: number;
  /** Holds whose end was seen. */
  readonly ends: number;
  /** Without assuming a shape; null where there are too few zones. */
  readonly turnbull: Turnbull | null;
  readonly fit: Fit | null;
  /** Months until half of them have come back. */
  readonly median: OpenFigure | null;
  readonly reasons: readonly Reason[];
}

/** How long coatings last in one exposure group, or in the whole collection ('all'). Events are never mixed. */
export interface Life extends HoldCurve {
  readonly group: string;
  readonly event: HoldEvent;
  /** Holds an end of which was noticed in passing. */
  readonly inPassing: number;
  /** Of the whole collection only: the shape of holds within a zone, which a zone with few holds borrows. Null where too few zones tell. */
  readonly withinZones?: CommonShape | null;
  /** Likewise of holds within an exposure group, which a group borrows. Null where fewer than two groups tell. */
  readonly withinGroups?: CommonShape | null;
  /** Zones of this group in which a cause was removed: what was told before, and since. Side by side, no more. */
  readonly withAndWithout?: {
    readonly with: HoldCurve;
    readonly without: HoldCurve;
    readonly removed: readonly { readonly zone: string; readonly date: string }[];
  };
}
