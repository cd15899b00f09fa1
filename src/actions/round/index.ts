/** The round: walking a work zone by zone, and what stands at its end. */
export { type AgainTouch, type AskedAgain, askedAgain, rateAgain, skipAskingAgain } from './askAgain';
export { closeRound, reopenRound } from './closeRound';
export { leaveZone } from './leaveZone';
export { roundDeed, roundDeedCodes, roundRefusalCodes } from './reasonCodes';
export { noteZone, roundsUnderWay, type UnderWay } from './roundUnderWay';
export { type RoundView, roundView, type ZoneView, zoneView } from './roundViews';
export { type RoundStart, startRound } from './startRound';
export { photoForZone, touchZone } from './touchZone';
export { type Undoable, undoInRound } from './undoInRound';
export type { ZoneOnWalk, ZoneStanding } from './walk';
