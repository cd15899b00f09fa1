import { type Drawn, drawnFrom } from '../../../src/engine/chance';
import { type Coverage, fromLogit, logit } from '../../../src/engine/condition';
import type { EyeCheck, Rerated } from '../../../src/engine/eye';
import { ladder } from '../../../src/engine/trade';

/** An invented eye: what it sees of a share, on the logit, is intercept + slope x truth + a chance of its own. */
export interface InventedEye {
  readonly sd: number;
  readonly intercept?: number;
  readonly slope?: number;
}

const steps = ladder.filter((step) => step.value > 0);

/** The step touched for a share: the one whose bin holds it. */
export const onLadder = (share: number): Coverage => {
  const { value, low, high } = steps.find((step) => share <= step.high) ?? (steps.at(-1) as (typeof steps)[number]);
  return { value, low, high, method: 'ladder' };
};

export const seenBy = (eye: InventedEye, truth: number, drawn: Drawn): Coverage =>
  onLadder(fromLogit((eye.intercept ?? 0) + (eye.slope ?? 1) * logit(truth) + eye.sd * drawn.normal()));

/** Shares as zones have them: most between 2 and 50 %. */
const share = (drawn: Drawn, from = -3.9, to = 0): number => fromLogit(from + (to - from) * drawn.uniform());

/** Zones asked again, one coverage each. */
export const asked = (eye: InventedEye, pairs: number, seed: number, surveyor = 'surveyor/a'): Rerated[] => {
  const drawn = drawnFrom(seed);
  return Array.from({ length: pairs }, () => {
    const truth = share(drawn);
    const [first, coverage] = [seenBy(eye, truth, drawn), seenBy(eye, truth, drawn)];
    return { surveyor, ratings: [{ kind: 'green film', origin: 'metal' as const, first, coverage }] };
  });
};

const truths = [0.007, 0.014, 0.027, 0.045, 0.066, 0.09, 0.12, 0.18, 0.27, 0.38, 0.52, 0.7];

export const checked = (eye: InventedEye, checks: number, seed: number, surveyor = 'surveyor/a'): EyeCheck[] => {
  const drawn = drawnFrom(seed);
  return Array.from({ length: checks }, () => ({
    surveyor,
    patches: truths.map((t) => {
      const truth = t * (0.85 + 0.3 * drawn.uniform());
      return { truth, said: seenBy(eye, truth, drawn) };
    }),
  }));
};
