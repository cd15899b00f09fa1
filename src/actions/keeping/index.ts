export { type Carried, type CarriedRow, carriedOut, lastFiles, lastFilesOf } from './carriedOut';
export { type ErasedRow, erasedSoFar } from './erased';
export { type EraseName, eraseName } from './eraseName';
export { erasePhoto } from './erasePhoto';
export {
  type Checked,
  type Checking,
  checkStore,
  checkWhenDue,
  clearStray,
  lastChecked,
  makeAnew,
  setDamagedAside,
} from './lookThrough';
export { askToKeep, notNow, persistenceWanted } from './persistence';
export { type SinceCarried, sinceCarried } from './sinceCarried';
export { type NamesFound, type Naming, whatNames } from './whatNames';
