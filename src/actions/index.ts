/** What the curator can do, and what a screen can ask. Screens import nothing of the device but through here. */
export { keepAwake } from '../device/awake';
export { type Battery, watchBattery } from '../device/battery';
export { type Area, addZone, type ZoneFields } from './addZone';
export * from './bring';
export {
  acceptImport,
  type BagOptions,
  type BagPrepared,
  type BagSize,
  bagSize,
  type CarryPreview,
  canSaveStraight,
  findingsTable,
  openSurveyFile,
  type PhotosFound,
  type Prepared,
  type PrepareOptions,
  photosFound,
  prepareBag,
  prepareCalendar,
  preparePaper,
  prepareSurvey,
  type SurveyFileOpened,
  saveFile,
  undoImport,
  type Way,
  type Without,
  waysToSave,
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
export { demoWasOpen, leaveDemo, openDemo, removeDemo } from './demo';
export type { Desk, Known, Outcome, Question } from './desk';
export { editZone, orderZones, removeZone } from './editZone';
export { addElevation, removeElevation } from './elevations';
export * from './eye-check';
export * from './field';
export { deviceFull, fullUnderstood } from './fullDevice';
export * from './in-step';
export { addInsert, editInsert, removeInsert } from './inserts';
export { addInterpretation, addInterpretations, removeInterpretation } from './interpretations';
export * from './keeping';
export { keepPhoto, type PhotoFacts, type PhotoRole } from './keepPhoto';
export * from './look';
export { dayOfGarden, deskOn, type Opening, openDesk } from './opening';
export { closePersonCheck, openPersonCheck } from './personChecks';
export * from './photos';
export * from './plan';
export {
  type AroundTheWork,
  type AskedRound,
  aroundTheWork,
  type CollectionInsights,
  type CollectionState,
  climateSet,
  collectionInsights,
  collectionState,
  type EyesKnown,
  elevationsOf,
  firmnessOf,
  goOnWorkingOut,
  type Insights,
  insightsOf,
  interpretationsOf,
  type LastDeed,
  lastDeed,
  type Need,
  needList,
  type OpenPersonCheck,
  openPersonChecks,
  ownHoldRules,
  ownScale,
  type PaperSourceAsked,
  paperSource,
  photoUrl,
  type RoundsThatMayBeOne,
  recordState,
  roundScore,
  roundSetting,
  roundsThatMayBeOne,
  type SculptureRow,
  type SculptureSummary,
  type SurveyorRow,
  sculptureList,
  sculptureRecordOf,
  stopWorkingOut,
  surveyors,
  thenAndNowOf,
  type Unsettled,
  unsettled,
  type WorkInsights,
  type WorkingOut,
  workingOut,
} from './questions';
export { type DeedCode, deedCodes, type RefusalCode, refusalCodes } from './reasonCodes';
export * from './round';
export { addSculpture, editSculpture, removeSculpture, setAccess, setPlace } from './sculptures';
export { type ClassesSet, clearClass, setClass } from './setClass';
export { setClimate } from './setClimate';
export { setHoldRules } from './setHoldRules';
export { setScale } from './setScale';
export { type Settings, setSetting, settings } from './settings';
export { type SettleChoice, sayApart, sayOne, settle } from './settle';
export { joinZones, type SplitPart, splitZone } from './splitZone';
export { askPersistence, type StorageHealth, storageHealth } from './storageHealth';
export { addSurveyor, editSurveyor, setSurveyor } from './surveyors';
export { type TabState, tabs, takeOver } from './tabs';
export { setTourStep, tourStep } from './tour';
export { editTreatment, recordTreatment, removeTreatment, type TreatmentFields } from './treatments';
export * from './typed';
export { undoLast } from './undoLast';
