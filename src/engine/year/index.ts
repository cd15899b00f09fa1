/** The plan of a year: which work gets what, the time it takes, the order of visits, lists, and the verdict at its end. */
export {
  agreementRefused,
  incidentRefused,
  moveRefused,
  sitePlanRefused,
  yearPlanRefused,
  yearVerdictRefused,
} from './checks';
export { type ClosedStep, closeDownOf } from './closeDownOf';
export { factsOf, isAway, type WorkFacts } from './facts';
export { liftsOf } from './liftsOf';
export { type YearNumber, yearNumbers } from './numbers';
export { type OrderOfVisits, orderOfVisits, type Spot } from './orderOfVisits';
export { overfullDays } from './overfullDays';
export { labourOf, type Pace, paceOf, type Span } from './paceOf';
export { type DayOfWork, type Packed, packingOf } from './packingOf';
export { type Proposal, proposalOf, type Row } from './proposalOf';
export { type YearReason, yearReasons } from './reasonCodes';
export { type RoundsOfMove, roundsOfMove } from './roundsOfMove';
export { type Time, timeOf, timeOfAll, type WorkTime } from './timeOf';
export { type Verdict, type VerdictProposal, verdictOf } from './verdictOf';
