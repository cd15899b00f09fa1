/** What the trade knows, as data with sources. Nothing here computes a score. */
export { type Caution, type CautionPlace, cautions, cautionsAt } from './cautions';
export { type ClassRow, enClasses, type Level } from './classes';
export { type LadderStep, ladder, ladderStepOf } from './coverageLadder';
export { type CoverageMethod, coverageMethodOf, coverageMethods } from './coverageMethods';
export type { ActiveArea, ExclusiveLayer, Group, KindOfFinding, Measure } from './kindOfFinding';
export { kindOf, kinds } from './kinds';
export { roundTypes } from './roundTypes';
export { type RustGrade, rustGradeOf, rustGrades, rustPictures } from './rustGrades';
export { defaultScale, type Scale, scaleOf, stainKey } from './scale';
export type { Source } from './source';
export { type Treatment, treatmentOf, treatments } from './treatments';
export {
  activities,
  activityOf,
  countOf,
  counts,
  originOf,
  origins,
  severities,
  severityOf,
  type Weighted,
} from './weights';
export {
  beadings,
  type Exposure,
  exposures,
  type Reach,
  reaches,
  reasonsNotLooked,
  type Substrate,
  sides,
  substrates,
} from './zoneSetting';
