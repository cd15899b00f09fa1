/** How good an eye is: patches of known coverage to try it on, what it says against what is true, and its own spread. */
export { type BiasCurve, biasCurve, likelyTrue, offCurve, type Patch, saidAt } from './biasCurve';
export type { Growth } from './growth';
export { type EyeCheck, type EyeKnown, knownEyes, type Rerated } from './knownEyes';
export { heightAt, heightSdAt, type Line, lineThrough, type Point } from './line';
export { eyeNumbers } from './numbers';
export { type DrawnPatch, patchesOf, patchOf, patchSide } from './patchesOf';
export { type EyeReason, eyeReasons } from './reasonCodes';
