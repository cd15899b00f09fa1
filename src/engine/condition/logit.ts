import { constants } from './constants';

const held = constants.coverageHeld.value;

/** A share held off 0 and 1, so that its logit is finite. */
export const heldShare = (share: number): number => Math.min(1 - held, Math.max(held, share));

/** ln(p / (1 - p)) of a held share. */
export const logit = (share: number): number => {
  const p = heldShare(share);
  return Math.log(p / (1 - p));
};

export const fromLogit = (x: number): number => 1 / (1 + Math.exp(-x));
