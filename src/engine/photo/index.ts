/** Places on pictures: outlines of zones, one photo laid on another, coverage measured on a photo. */

export { type Answers, type Counted, counted } from './answers';
export { areaFromOutline } from './areaFromOutline';
export { checkDotsFor, checkDotsIn } from './checkDots';
export { type Classifier, classifierOf, type PixelClass, pixelClass, type Rgb } from './classifier';
export { type CornerAt, joined, nearestCorner, withCorner, withCornerAfter } from './corners';
export { coverageNumbers } from './coverageNumbers';
export { type CoveragePatch, coveragePatch, patchHeight, patchWidth } from './coveragePatch';
export { dotsCoverage } from './dotsCoverage';
export { type Dots, dotsIn } from './dotsIn';
export { fewestPairs, fitNumbers, type PhotoFitKind } from './fitNumbers';
export { type Hatch, hatches, type Ink, inkAt, type Mark } from './hatch';
export { labelAt } from './labelAt';
export { type Mask, maskCoverage } from './maskCoverage';
export { isRefused, type Measured, type Measurement, type Refused } from './measured';
export { measuredAgain } from './measuredAgain';
export { obliquities } from './obliquities';
export { type OutlineFault, outlineFault } from './outlineFault';
export {
  type FitVerdict,
  fitBetween,
  fitFrom,
  fitPhotos,
  type Pair,
  type PhotoFit,
  pairsBetween,
  turnedRound,
} from './photoFit';
export { photosUnlike } from './photosAlike';
export { inverseOf, mapped, type PlaneMap } from './planeMap';
export { aspectOf, type Outline, type Point, type Ring, type Size } from './point';
export { boundsOf, contains, crossesItself, middleOf, outlineArea, ringArea } from './polygon';
export { type PhotoReason, photoReasons } from './reasonCodes';
export { saidByEye } from './saidByEye';
export { readSelector, writeSelector } from './selector';
export { shareInterval } from './shareInterval';
export { outlineThrough } from './throughFit';
export { tracedCoverage } from './tracedCoverage';
export { type Level, wilson } from './wilson';
export { zonePixels } from './zoneOnPhoto';
