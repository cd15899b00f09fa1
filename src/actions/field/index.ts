export { touchedNow, wasAway } from './atWork';
export { checkReady } from './checkReady';
export { type ReadyAbout, type ReadyCode, type ReadyLine, type ReadyState, readyAbout, readyCodes } from './readiness';
export { tryRoom } from './tryRoom';
