/** Bags written, read and checked beside the page. Light: what does the work is in the worker (src/papers/bagWorker.ts). */
export type { BagAnswer, BagAnswers, BagAsks, BagStep, BagWay } from './asked';
export { bagBeside } from './beside';
export { goOn, LeftOff } from './leftOff';
export { serve } from './serve';
export type { BagWritten, WriteAsked } from './written';
