import type { Figure, Reason } from '../record';
import type { ActiveArea } from '../trade';

/** What is followed: the condition index, or the m2 of one active area. */
export type Followed = 'index' | ActiveArea;

export interface SeriesPoint {
  /** Thing name. */
  readonly round: string;
  readonly day: string;
  /** Years since 1970. */
  readonly t: number;
  /** With its 90 % range. */
  readonly figure: Figure;
  /** Share of the area seen in that round, 0 to 1; below 1 the point is drawn open. */
  readonly seenShare: number;
  readonly surveyor: string;
  /** Which unbroken stretch it stands in, from 0; null where a break of vague date may lie on either side of it. */
  readonly span: number | null;
}

/** A treatment after which the surface is another one. */
export interface Break {
  readonly treatment: string;
  readonly type: string;
  readonly date: string;
  /** Latest day it may mean. */
  readonly day: string;
  readonly sure: boolean;
  /** Share of the area followed that it touched, 0 to 1. */
  readonly share: number;
}

/** A coating: marked on the axis, and no break. */
export interface CoatTick {
  readonly treatment: string;
  readonly type: string;
  readonly day: string;
}

/** From this round on another person looked. */
export interface SurveyorMark {
  readonly day: string;
  readonly surveyor: string;
}

export interface Series {
  readonly what: Followed;
  /** Thing name; null for the work as a whole. */
  readonly zone: string | null;
  readonly points: readonly SeriesPoint[];
  readonly breaks: readonly Break[];
  readonly ticks: readonly CoatTick[];
  readonly marks: readonly SurveyorMark[];
  /** The first break that lies wholly after the last point: what the rounds show is the surface as it was before. */
  readonly brokenSince: Break | null;
  /** What was left out, and why. */
  readonly reasons: readonly Reason[];
}

/** Points of the last unbroken stretch. */
export const lastSpan = ({ points }: Series): readonly SeriesPoint[] => {
  const last = points.at(-1)?.span;
  return last === null || last === undefined ? [] : points.filter(({ span }) => span === last);
};
