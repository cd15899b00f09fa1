/** How long coatings keep the green away: holds, what a collection of them tells, when to wax again and when to look next. */
export { codesOfGroup, exposureOf, facings, groupOf, notSaid, weathers, wholeCollection } from './exposureGroup';
export type * from './hold';
export { holdsOf } from './holdsOf';
export { type HoldRules, holdNumbers, rulesOf, severeExposures } from './numbers';
export { type HoldReason, holdReasons } from './reasonCodes';
