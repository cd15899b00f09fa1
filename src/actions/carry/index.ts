export { type Accepted, type AcceptOptions, acceptImport, undoImport } from './acceptImport';
export { sweepArrivals } from './arriving';
export { type BagSize, bagSize } from './bagSize';
export { type CarryPreview, openSurveyFile, type ProblemFound, type SurveyFileOpened } from './openSurveyFile';
export { type PhotosFound, photosFound } from './photosFound';
export { type BagOptions, type BagPrepared, prepareBag } from './prepareBag';
export { prepareCalendar } from './prepareCalendar';
export { findingsTable, type Prepared, type PrepareOptions, prepareSurvey, type Without } from './prepareSurvey';
export { canSaveStraight, saveFile, type Way, waysToSave } from './saveFile';
