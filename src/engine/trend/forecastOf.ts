import { dayNumber, type Figure, type Reason } from '../record';
import { daysOfYear, trendNumbers } from './numbers';
import { because } from './reasonCodes';
import { lastSpan, type Series } from './series';
import { slopeOf, type Trend } from './trendOf';

export type Forecast = Figure | { readonly reason: Reason };

export const isFigure = (forecast: Forecast): forecast is Figure => 'value' in forecast;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1
    ? (sorted[half] as number)
    : ((sorted[half - 1] as number) + (sorted[half] as number)) / 2;
};

/**
 * A series carried on to a day "if care goes on as now": only where a trend stands and the surface is still the same, and no further than twice the observed span from
 * its first round. The range holds both the interval of the slopes, turned about the middle of the span, and the error of the last
 * round itself. `most` is what the figure cannot pass: 100 for an index, the area for m2.
 */
export const forecastOf = (series: Series, trend: Trend, day: string, most: number): Forecast => {
  const since = series.brokenSince;
  if (since) return { reason: because('trend: broken since', { treatment: since.type, date: since.date }) };
  if (trend.word !== 'trend') return { reason: because('trend: no trend to carry on') };
  const points = lastSpan(series);
  const found = slopeOf(points);
  const [first, last] = [points[0], points.at(-1)];
  if (!found || !first || !last) return { reason: because('trend: no trend to carry on') };
  const t = dayNumber(day) / daysOfYear;
  const span = last.t - first.t;
  if (t - first.t > trendNumbers.spans.value * span)
    return { reason: because('trend: too far to tell', { years: t - last.t }) };
  const away = t - median(points.map((point) => point.t));
  const middle = found.intercept + found.slope * t;
  const { figure } = last;
  const down = Math.hypot((found.slope - found.low) * away, figure.value - figure.low);
  const up = Math.hypot((found.high - found.slope) * away, figure.high - figure.value);
  const held = (value: number): number => Math.min(most, Math.max(0, value));
  return {
    value: held(middle),
    low: held(middle - down),
    high: held(middle + up),
    reasons: [because('trend: if care goes on')],
  };
};
