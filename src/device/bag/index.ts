/** Bags written, read and checked beside the page. Light: what does the work is in the worker (inWorker.ts, src/papers/bagWorker.ts). */
export type { BagAsks, BagStep, BagWay } from './asked';
export { bagBeside } from './beside';
export type { BagFaulty, BagWhole, PhotoInBag } from './checkedBag';
export { checkedBeside } from './checkedBeside';
export type { NotOpened, OpenAsked, SurveyOpened } from './opened';
export { openedBeside } from './openedBeside';
export { dropOwn, holdReady, sweepReady } from './ownFiles';
export { unpackedFile } from './unpackedFile';
export type { BagContents, BagPapers, BagWritten, PaperFile, WriteAsked } from './written';
export type { ZipFile } from './zipDirectory';
