/** Whether a series rises or falls over the years, how fast, and how far it may be carried on. */
export { type ByNextRound, byNextRound } from './byNextRound';
export { type Forecast, forecastOf, isFigure } from './forecastOf';
export { type MannKendall, mannKendall, varianceOfS } from './mannKendall';
export { trendNumbers } from './numbers';
export { type TrendReason, trendReasons } from './reasonCodes';
export {
  type Break,
  type CoatTick,
  type Followed,
  lastSpan,
  type Series,
  type SeriesPoint,
  type SurveyorMark,
} from './series';
export { seriesOf, seriesRounds, workSeries, zoneSeries } from './seriesOf';
export { type Point, type TheilSen, theilSen } from './theilSen';
export { type Trend, type TrendWord, trendOf } from './trendOf';
export { type Followup, type IndexTrends, indexTrendsOf, type Trends, trendsOf } from './trendsOf';
