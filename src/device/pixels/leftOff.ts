/** Thrown between two strips when a question is no longer wanted. */
export class LeftOff extends Error {}
