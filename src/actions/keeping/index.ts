export { rememberedAnew, rememberedVersion } from '../remembered';
export { type Carried, type CarriedRow, carriedOut, lastFiles, lastFilesOf } from './carriedOut';
export { type ErasedRow, erasedPhoto, erasedSoFar } from './erased';
export { type EraseName, eraseName } from './eraseName';
export { erasePhoto } from './erasePhoto';
export { type Freeable, type FreeableWork, freeableWorks, type WhichPhotos } from './freeable';
export { type Away, type BagSeen, type Freed, freePhotos, photoAway } from './freePhotos';
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
export { photosInBag } from './photosInBag';
export { type SinceCarried, sinceCarried } from './sinceCarried';
export { type NamesFound, type Naming, namesFound, whatNames } from './whatNames';
