/** Places on pictures: outlines of zones, one photo laid on another, coverage measured on a photo. */

export { type Answers, type Counted, counted } from './answers';
export { checkDotsFor, checkDotsIn } from './checkDots';
export { type Classifier, classifierOf, type PixelClass, pixelClass, type Rgb } from './classifier';
export { classTable } from './classTable';
export { type CornerAt, joined, nearestCorner, withCorner, withCornerAfter } from './corners';
export { coverageNumbers } from './coverageNumbers';
export { dotsCoverage } from './dotsCoverage';
export { type Dots, dotsIn } from './dotsIn';
export { labelAt } from './labelAt';
export { type Mask, maskCoverage } from './maskCoverage';
export { isRefused, type Measured, type Measurement, type Refused } from './measured';
export { measuredAgain } from './measuredAgain';
export { obliquities } from './obliquities';
export { type OutlineFault, outlineFault } from './outlineFault';
export { aspectOf, type Outline, type Point, type Ring, type Size } from './point';
export { boundsOf, contains, crossesItself, middleOf, outlineArea, ringArea } from './polygon';
export { type PhotoReason, photoReasons } from './reasonCodes';
export { saidByEye } from './saidByEye';
export { readSelector, writeSelector } from './selector';
export { shareInterval } from './shareInterval';
export { tracedCoverage } from './tracedCoverage';
export { type Level, wilson } from './wilson';
export { zonePixels } from './zoneOnPhoto';
