/** The question is no longer wanted. */
export class LeftOff extends Error {}

/** To be asked between bites of work. */
export const goOn = (signal: AbortSignal): void => {
  if (signal.aborted) throw new LeftOff();
};
