/** Tripwires, what is due, whether a treatment held, and the calendar file. */
export { decisionRefused, dueAnswerRefused, taskRefused, tripwireAnswerRefused } from './bodyChecks';
export { type CalendarDay, type CalendarOptions, calendarFile, escapedText, folded } from './calendar';
export { didItHold, type MonthsHeld, type ZoneHeld } from './didItHold';
export { type Due, type DueSort, dueSorts } from './due';
export { dueAfterTreatment, treatedOf } from './dueAfterTreatment';
export { dueOfRecord, type RecordDueOptions, type WorkKnown } from './dueOfRecord';
export { type DueKind, duePlanned } from './duePlanned';
export { type AllDue, type DueStanding, type DueWhen, dueOfTripwires, dueStanding } from './dueStanding';
export { evaluateTripwire, type TripwireFacts } from './evaluateTripwire';
export type { MoneyLists } from './moneyTripwire';
export { addMonths } from './months';
export type { Lists } from './planned';
export { because, type WatchReason, watchReasons } from './reasonCodes';
export { type Recall, recallList } from './recall';
export { type TripwireStanding, tripwiresStanding } from './standing';
export { type StopWordSeen, stopWordsSeen, stopWordsStanding } from './stopWordsSeen';
export {
  type TripwireSort,
  type TripwireSortId,
  type TripwireUnit,
  tripwireSortOf,
  tripwireSorts,
} from './tripwireSorts';
export type { Tripwire, TripwireState, TripwireWord } from './tripwireState';
export { watchMonths, watchNumbers } from './watchNumbers';
export { beganOf, endOfCampaign, type Treated, type WatchMark, watchPlan } from './watchPlan';
