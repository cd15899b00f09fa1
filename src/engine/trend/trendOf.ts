import type { Figure, Reason } from '../record';
import { mannKendall } from './mannKendall';
import { trendNumbers } from './numbers';
import { because } from './reasonCodes';
import { lastSpan, type Series, type SeriesPoint } from './series';
import { type TheilSen, theilSen } from './theilSen';

export type TrendWord =
  | 'trend'
  | 'rising each time so far'
  | 'falling each time so far'
  | 'no trend shown'
  | 'too few rounds';

export interface Trend {
  /** Rounds of the last unbroken stretch. */
  readonly n: number;
  readonly word: TrendWord;
  /** Which way, where it goes one way. */
  readonly up: boolean;
  /** Change a year, in the unit of the series; `low` and `high` are the interval of ranked slopes. Null under three rounds. */
  readonly slope: Figure | null;
  /** Share of the time such an interval holds the slope, as attained. */
  readonly coverage: number | null;
  readonly s: number;
  /** Two-sided, over all orders; in (0, 1]. */
  readonly p: number;
  readonly reasons: readonly Reason[];
}

const wordOf = (n: number, s: number, p: number): TrendWord => {
  if (n < trendNumbers.someRounds.value) return 'too few rounds';
  if (n >= trendNumbers.rounds.value && p <= trendNumbers.chance.value) return 'trend';
  const pairs = (n * (n - 1)) / 2;
  if (s === pairs) return 'rising each time so far';
  return s === -pairs ? 'falling each time so far' : 'no trend shown';
};

/** Ranked slopes of the points of a stretch; null where there are too few. */
export const slopeOf = (points: readonly SeriesPoint[]): TheilSen | null =>
  points.length < trendNumbers.someRounds.value
    ? null
    : theilSen(
        points.map(({ t, figure }) => ({ t, y: figure.value })),
        trendNumbers.coverage.value,
      );

/** Whether the last unbroken stretch of a series goes one way. The word trend stands only for what five rounds show and chance would not. */
export const trendOf = (series: Series): Trend => {
  const points = lastSpan(series);
  const n = points.length;
  const { s, p } = mannKendall(points.map(({ figure }) => figure.value));
  const found = slopeOf(points);
  const word = wordOf(n, s, p);
  const reasons: Reason[] =
    found === null
      ? [because('trend: too few rounds', { n, least: trendNumbers.someRounds.value })]
      : [
          word === 'no trend shown' ? because('trend: not shown', { n, p }) : because('trend: all pairs', { n, p }),
          because('trend: slope interval', { coverage: found.coverage, n }),
        ];
  return {
    n,
    word,
    up: s > 0,
    slope: found && { value: found.slope, low: found.low, high: found.high, reasons },
    coverage: found?.coverage ?? null,
    s,
    p,
    reasons,
  };
};
