import type { Followup, Forecast, Trends } from '../engine/trend';
import { isFigure } from '../engine/trend';
import type { Say } from './said';

const forecast = (next: Forecast | null, said: Say) => {
  if (next === null) return null;
  return isFigure(next)
    ? { value: next.value, low: next.low, high: next.high, reasons: said(next.reasons) }
    : { value: null, low: null, high: null, reasons: said([next.reason]) };
};

const followed = ({ series, trend, next }: Followup, said: Say) => ({
  what: series.what,
  zone: series.zone,
  points: series.points.map(({ round, day, figure, seenShare, span }) => ({
    round,
    day,
    value: figure.value,
    low: figure.low,
    high: figure.high,
    seenShare,
    span,
  })),
  breaks: series.breaks,
  coatings: series.ticks,
  otherSurveyor: series.marks,
  trend: {
    word: trend.word,
    rounds: trend.n,
    s: trend.s,
    p: trend.p,
    slope: trend.slope && { value: trend.slope.value, low: trend.slope.low, high: trend.slope.high },
    coverage: trend.coverage,
    reasons: said(trend.reasons),
  },
  forecast: forecast(next, said),
  reasons: said(series.reasons),
});

/** Series of one work and of its zones with what they show; index 0 to 100, areas in m2, slopes a year, days YYYY-MM-DD. */
export const shownTrends = ({ nextRound, work, zones }: Trends, said: Say) => ({
  nextRound,
  work: {
    index: followed(work.index, said),
    green: followed(work.green, said),
    bare: followed(work.bare, said),
    scale: followed(work.scale, said),
  },
  zones: zones.map(({ zone, index, active }) => ({
    zone,
    index: followed(index, said),
    green: followed(active.green, said),
    bare: followed(active.bare, said),
    scale: followed(active.scale, said),
  })),
});
