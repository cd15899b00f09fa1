export { type Accepted, type AcceptOptions, acceptImport, undoImport } from './acceptImport';
export { sweepArrivals } from './arriving';
export { type CarryPreview, openSurveyFile, type ProblemFound, type SurveyFileOpened } from './openSurveyFile';
export { findingsTable, type Prepared, type PrepareOptions, prepareSurvey, type Without } from './prepareSurvey';
export { saveFile, type Way, waysToSave } from './saveFile';
