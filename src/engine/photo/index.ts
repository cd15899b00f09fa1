/** Places on pictures: outlines of zones, one photo laid on another, coverage measured on a photo. */
export { aspectOf, type Outline, type Point, type Ring, type Size } from './point';
export { boundsOf, contains, crossesItself, middleOf, outlineArea, ringArea } from './polygon';
export { type PhotoReason, photoReasons } from './reasonCodes';
export { readSelector, writeSelector } from './selector';
