export { acceptImport, undoImport } from './acceptImport';
export { type CarryPreview, openSurveyFile, type SurveyFileOpened } from './openSurveyFile';
export { findingsTable, type Prepared, prepareSurvey, type PrepareOptions, type Without } from './prepareSurvey';
export { saveFile, type Way, waysToSave } from './saveFile';
