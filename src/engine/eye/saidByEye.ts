import { type Coverage, constants, coverageSd, logit } from '../condition';
import { ladderStepOf } from '../trade';
import { eyeNumbers } from './numbers';

const floor = constants.coverageFloor.value;

/** A coverage on the logit, held at the half percent under which no eye tells one cover from another. */
export const eyeLogit = (share: number): number => logit(Math.min(1 - floor, Math.max(floor, share)));

/** Variance on the logit that comes of the ladder and of no eye: the width of the bin, and the half point nobody gets under. */
export const ladderVariance = (coverage: Coverage): number => coverageSd(coverage, { sd: 0 }) ** 2;

/** The step a share lies in, as if it had been touched. */
export const onItsStep = (share: number): Coverage => {
  const { value, low, high } = ladderStepOf(share);
  return { value, low, high, method: 'ladder' };
};

/** How much a judgement says of the eye, 0 to 1, where the ladder itself adds this variance: 1 where it adds none. */
export const worthOf = (added: number): number => {
  const assumed = eyeNumbers.assumedSd.value ** 2;
  return (assumed / (assumed + added)) ** 2;
};
