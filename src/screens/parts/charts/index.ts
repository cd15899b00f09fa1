/** Drawings: scales and shapes by d3, everything else our own. Each has the numbers behind it. */
export { type HoldBarRow, HoldBars, reach } from './HoldBars';
export { LifeCurve, type LifeCurveProps } from './LifeCurve';
export { LineChart, type LineChartProps } from './LineChart';
export { SeriesChart, type SeriesChartPoint, type SeriesChartProps } from './SeriesChart';
export { type SignedBar, SignedBars } from './SignedBars';
