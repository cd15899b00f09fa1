import { newId } from './ids';

/** This opening of the app, told apart from the one before. */
const page = newId();

/**
 * The clock on the wall and a clock that nobody can set, read in one moment: milliseconds. The second starts anew with each
 * opening (`page`), and on some tablets stands still while they sleep (High Resolution Time, W3C).
 */
export const steadyTick = () => ({ wall: Date.now(), steady: performance.now(), page });
