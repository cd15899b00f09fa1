export { asThing } from './asThing';
export type * from './bodies';
export { byWithin } from './byWithin';
export { coverageBetween } from './coverageBetween';
export type * from './current';
export { currentAfter } from './currentAfter';
export { type DayRange, dayRange } from './dayRange';
export { addDays, dayNumber, dayOfNumber, daysBetween, weekdayOf } from './days';
export { type Double, doublesIn, settlingDouble, type Written } from './doubles';
export type { Entry } from './entry';
export { type Erased, erasedBy, erasureOf, isErased, isErasure, withoutErased } from './erasing';
export { gather } from './gather';
export { assemble, currentOf, headsOf } from './heads';
export { bodyVersion, isKnown, kindsOfThing } from './kindsOfThing';
export { latestRound } from './latestRound';
export { earlierRound, findingsOf, visitOf } from './lookingUp';
export { roundsCountedAs } from './mergedRounds';
export { idPart, nameOf, type Origin, seriesOf } from './names';
export { daysApart, type PairOfRounds, roundsThatMayBeOne } from './oneRound';
export { inOwnWords } from './ownWords';
export { isPlanned, type PlannedBody, type PlannedKind, plannedKinds } from './plannedKinds';
export type * from './reason';
export { sameContent, sameEntry } from './sameEntry';
export type * from './sculptureRecord';
export { isTimeOfDay } from './timeOfDay';
export { type EntryToBe, type Undoing, undoingEntries } from './undoing';
export { vagueDateOrder } from './vagueDateOrder';
export { holdsWords, type Where, withAnyWords, withWords } from './wordsIn';
export {
  type Count,
  type Coverage,
  type DraftFinding,
  type DraftStart,
  type EarlierFinding,
  type ExtentMeasure,
  isJudged,
  keyOf,
  startDraft,
  type ZoneDraft,
} from './zoneDraft';
export { type Asking, asking, nextQuestion } from './zoneDraftAsks';
export { bodiesOf, type Leaving, refusal, standing, type ZoneBodies } from './zoneDraftBodies';
export { applyTouch, awaitsAgainst, draftFrom, type ZoneTouch } from './zoneDraftTouch';
export { areaOn, endOf, zonesAt, zoneVersionAt } from './zonesInTime';
