/** How firm the order of need is: drawn again and again within what is not known. */
export type { FirmNeed } from './drawable';
export { type Firmness, type FirmnessOptions, type FirmPlace, firmness, firmnessInSteps, groupOf } from './firmness';
export { firmnessNumbers, groupsOfPlaces } from './numbers';
export { type FirmnessReason, firmnessReasons } from './reasonCodes';
