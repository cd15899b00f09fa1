export { findingsCsv } from './findingsCsv';
export { format, limits, version } from './limits';
export { type CarryOptions, type Held, holdsOf, type LeftOut, type PartialCarry, partialCarry } from './partialCarry';
export { type Preview, type PreviewRow, previewImport, type Side } from './previewImport';
export { type NoSurvey, readSurvey, type Survey } from './readSurvey';
export { type AdviceCode, advice, adviceOn, exchangeReasons, type ProblemCode, problemReasons } from './reasonCodes';
export { surveySchema } from './surveySchema';
export { type United, unite } from './unite';
export { writeSurvey } from './writeSurvey';
