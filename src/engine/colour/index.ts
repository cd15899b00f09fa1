/** Colour as an instrument reads it, and as a picture holds it. */
export type { Lab } from './lab';
export { labOfRgb } from './labOfRgb';
export { type ColourReason, colourReasons } from './reasonCodes';
