/** What to treat within a sum, exactly, and what is left undone. */
export { type CurvePoint, curveOf, nextStep } from './curve';
export { type BudgetPlan, type LeftUndone, planWithin, type Treated } from './planWithin';
export { type BudgetReason, budgetReasons } from './reasonCodes';
export type { Price, ZoneToTreat } from './waysOfZone';
export { isWeighed, type Weighed, weigh, zonesToTreat } from './weigh';
