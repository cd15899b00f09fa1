/** How long coatings keep the green away: holds, what a collection of them tells, when to wax again and when to look next. */
export type * from './advice';
export { adviceOf } from './adviceOf';
export { bandAt } from './curveOf';
export { codesOfGroup, exposureOf, facings, groupOf, notSaid, weathers, wholeCollection } from './exposureGroup';
export type * from './hold';
export { holdsOf } from './holdsOf';
export type * from './life';
export { type HoldsOfWork, livesOf } from './livesOf';
export { type HoldRules, holdNumbers, rulesOf, severeExposures } from './numbers';
export { type HoldReason, holdReasons } from './reasonCodes';
