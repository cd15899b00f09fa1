import { dayNumber, type Figure, type Reason } from '../record';
import { daysOfYear, trendNumbers } from './numbers';
import { because } from './reasonCodes';
import { lastSpan, type Series } from './series';
import { slopeOf, type Trend } from './trendOf';

export type Forecast = Figure | { readonly reason: Reason };

export const isFigure = (forecast: Forecast): forecast is Figure => 'value' in forecast;

/**
 * A series carried on to a day "if care goes on as now": only where a trend stands and the surface is still the same, and no further than twice the observed span from
 * its first round. It starts at the last round: a line through the middle of all rounds, tilted by one step, may miss where the work
 * stands now by far. The range holds both the interval of the slopes and the error of the last round itself. `most` is what the figure cannot pass: 100 for an index, the area for m2.
 */
export const forecastOf = (series: Series, trend: Trend, day: string, most: number): Forecast => {
  const since = series.brokenSince;
  if (since) return { reason: because('trend: broken since', { treatment: since.type, date: since.date }) };
  if (trend.word !== 'trend') return { reason: because('trend: no trend to carry on') };
  const points = lastSpan(series);
  const slope = slopeOf(points);
  const [first, last] = [points[0], points.at(-1)];
  if (!slope || !first || !last) return { reason: because('trend: no trend to carry on') };
  const t = dayNumber(day) / daysOfYear;
  const span = last.t - first.t;
  if (t - first.t > trendNumbers.spans.value * span)
    return { reason: because('trend: too far to tell', { years: t - last.t }) };
  const away = t - last.t;
  const { figure } = last;
  const middle = figure.value + slope.slope * away;
  const down = Math.hypot((slope.slope - slope.low) * away, figure.value - figure.low);
  const up = Math.hypot((slope.high - slope.slope) * away, figure.high - figure.value);
  const held = (value: number): number => Math.min(most, Math.max(0, value));
  return {
    value: held(middle),
    low: held(middle - down),
    high: held(middle + up),
    reasons: [because('trend: if care goes on')],
  };
};
