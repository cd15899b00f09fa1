/** From what was seen to what to do first: coverage and its error, zone index, sculpture index, classes, order of need. */
export { type Classes, type ClassOptions, classesOf, levelOf, type RoundClasses } from './classesOf';
export type { Proposal } from './conditionClass';
export { constants, groupsInMetal } from './constants';
export { type Contribution, contributionsOf, workContributions } from './contributions';
export { type Coverage, coverageInterval, coverageSd, type EyeError, isByEye } from './coverageError';
export { coverageConflicts } from './exclusiveKinds';
export { type FindingScore, type ScoringOptions, scoreFinding } from './findingLoss';
export { fromLogit, heldShare, logit } from './logit';
export { type NeedOf, type OrderOfNeed, orderOfNeed, type PersonFirst, type Rank } from './orderOfNeed';
export { dangersAt, dangersWithoutRound, type PersonDanger } from './personChecks';
export { because, type ConditionReason, conditionReasons } from './reasonCodes';
export type { Recommendation } from './recommendationClass';
export { type RoundOptions, roundDay, type SculptureScore, scoreRound, type Unscored } from './sculptureIndex';
export { activeOver, type DayScores, dayOver, indexOf } from './sharedDay';
export { pressesFrom, type Urgency } from './urgencyClass';
export { areaMethods, areaOf, partArea, type Solid, type SolidRow, solids, typedArea, typedErrors } from './zoneArea';
export { judgedAfresh, scoreZone, type ZoneScore, type ZoneSeen, zoneRange } from './zoneIndex';
export { type Standing, type ZoneInRound, zoneInRound } from './zoneInRound';
