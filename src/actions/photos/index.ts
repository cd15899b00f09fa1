/** Stations, outlines, photos laid on one another, measuring on photos, colour readings: one file a deed. */

export {
  answersOf,
  type DotAnswer,
  type DotList,
  judgeDot,
  layCheckDots,
  layDots,
  takeBackDot,
} from './judgeDot';
export { keepMeasure, removeMeasure } from './keepMeasure';
export {
  keepTouches,
  type MeasureAtHand,
  type MeasureDraft,
  type MeasureOf,
  measureAtHand,
  type WayOfMeasuring,
  type Working,
} from './measureAtHand';
export { type MeasureOfWork, measuresOf } from './measuresOf';
export { type Measuring, measuringOf } from './measuringOf';
export { type MeasuringPlace, setMeasuringPlace } from './measuringPlace';
export type { PartFrom } from './partOnPhoto';
export { thingsOf } from './thingsOf';
