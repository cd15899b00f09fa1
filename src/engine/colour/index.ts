/** Colour as an instrument reads it, and as a picture holds it. */
export { type ColourReason, colourReasons } from './reasonCodes';
