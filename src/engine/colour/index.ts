/** Colour as an instrument reads it, and as a picture holds it. */
export { type AgainstAgreed, type AgainstEarlier, againstAgreed, againstLastYear, agreedInForce } from './against';
export { ciede2000 } from './ciede2000';
export {
  type ColourDifference,
  type Compared,
  colourDifference,
  isCompared,
  type NotCompared,
} from './colourDifference';
export { colourFormulaSource, colourNumbers, noFigureFromPhotos } from './colourNumbers';
export { cautionsBetween, comparable, type ReadingConditions } from './conditions';
export type { Lab } from './lab';
export { labOfRgb } from './labOfRgb';
export { type MeanReading, meanReading, strayPlacings } from './meanReading';
export { colourLimits, impossibleFigure } from './possibleColour';
export { type ColourReason, colourReasons } from './reasonCodes';
export { type Spot, spotKey, spotsOf } from './spots';
export { swatchOf } from './swatch';
