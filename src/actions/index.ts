/** What the curator can do, and what a screen can ask. Screens import nothing of the device but through here. */
export { addZone, type Area, type ZoneFields } from './addZone';
export {
  acceptImport,
  type CarryPreview,
  findingsTable,
  openSurveyFile,
  type Prepared,
  prepareSurvey,
  type PrepareOptions,
  saveFile,
  type SurveyFileOpened,
  undoImport,
  type Way,
  waysToSave,
  type Without,
} from './carry';
export { renameCollection, setUpCollection } from './collection';
export {
  type Change,
  commitChanges,
  type Patched,
  type Said,
  type TakenAway,
  type TouchChanges,
} from './commitChanges';
export type { Desk, Known, Outcome, Question } from './desk';
export { editZone, orderZones, removeZone } from './editZone';
export { addElevation, removeElevation } from './elevations';
export { addInsert, editInsert, removeInsert, setInsertValue } from './inserts';
export { addInterpretation, removeInterpretation } from './interpretations';
export { leaveDemo, openDemo, removeDemo } from './demo';
export { deskOn, type Opening, openDesk } from './opening';
export { closePersonCheck, openPersonCheck } from './personChecks';
export { keepPhoto, type PhotoRole } from './photos';
export {
  type AskedRound,
  aroundTheWork,
  type AroundTheWork,
  type CollectionState,
  collectionState,
  elevationsOf,
  interpretationsOf,
  type LastDeed,
  lastDeed,
  type Need,
  needList,
  openPersonChecks,
  type OpenPersonCheck,
  ownScale,
  photoUrl,
  roundScore,
  roundsThatMayBeOne,
  type RoundsThatMayBeOne,
  roundSetting,
  type SculptureRow,
  sculptureList,
  sculptureRecordOf,
  type SculptureSummary,
  surveyors,
  type SurveyorRow,
  thenAndNowOf,
  type Unsettled,
  unsettled,
} from './questions';
export { type DeedCode, deedCodes, type RefusalCode, refusalCodes } from './reasonCodes';
export { addSculpture, editSculpture, removeSculpture, setAccess, setPlace } from './sculptures';
export { clearClass, type ClassesSet, setClass } from './setClass';
export { setScale } from './setScale';
export { sayApart, sayOne, type SettleChoice, settle } from './settle';
export { type Settings, setSetting, settings } from './settings';
export { joinZones, type SplitPart, splitZone } from './splitZone';
export { askPersistence, checkStore, type StorageHealth, storageHealth } from './storageHealth';
export { addSurveyor, editSurveyor, setSurveyor } from './surveyors';
export { type TabState, tabs, takeOver } from './tabs';
export { editTreatment, recordTreatment, removeTreatment, type TreatmentFields } from './treatments';
export { undoLast } from './undoLast';
export * from './look';
export * from './round';
