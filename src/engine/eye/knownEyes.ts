import { tQuantile } from '../chance';
import { constants, fromLogit, isByEye } from '../condition';
import type { BodyOf, KnownEye, Reason } from '../record';
import { type BiasCurve, biasCurve, offCurve } from './biasCurve';
import { eyeNumbers } from './numbers';
import { because } from './reasonCodes';
import { eyeLogit, ladderVariance, onItsStep, worthOf } from './saidByEye';

/** A zone asked again, and who looked in that round. */
export interface Rerated {
  readonly surveyor: string;
  readonly ratings: BodyOf<'rerating'>['ratings'];
}

export type EyeCheck = Pick<BodyOf<'eyeCheck'>, 'surveyor' | 'patches'>;

/** All that is known of one surveyor's eye. `sd` is what the sums use. */
export interface EyeKnown extends KnownEye {
  readonly patches: number;
  /** How many pairs without a ladder's bin they are worth together: a bin as wide as the spread hides most of it. */
  readonly worth: number;
  /** Spread seen in them alone, on the logit; null where they say nothing of it. */
  readonly seen: number | null;
  /** Spread after the assumed pairs were added, before it is widened. */
  readonly own: number;
  readonly curve: BiasCurve | null;
  readonly reasons: readonly Reason[];
}

/** Half the squared difference of a pair, or a squared distance from the curve: what it is expected to be, less the ladder's part, is s^2. */
interface Look {
  readonly square: number;
  readonly ladder: number;
  /** 1, or less where a fitted curve took freedom away. */
  readonly freedom: number;
}

type Rating = Rerated['ratings'][number];

/**
 * Two judgements of one place by one eye: the variance of their difference is twice that of each. The ladder's part is that of the step
 * between the two, or a pair would weigh by how far apart it fell.
 */
const pairLook = ({ first, coverage }: Rating): Look => {
  const [a, b] = [eyeLogit(first.value), eyeLogit(coverage.value)];
  return { square: (b - a) ** 2 / 2, ladder: ladderVariance(onItsStep(fromLogit((a + b) / 2))), freedom: 1 };
};

const patchLooks = (patches: EyeCheck['patches'], curve: BiasCurve | undefined): Look[] => {
  if (!curve) return [];
  const freedom = (curve.patches - 2) / curve.patches;
  return patches
    .filter(({ said }) => isByEye(said))
    .map((patch) => ({
      square: offCurve(curve, patch) ** 2 / freedom,
      ladder: ladderVariance(onItsStep(patch.truth)),
      freedom,
    }));
};

/** Weighted by what each look is worth; the sum of the worths takes the place of the number of pairs. */
const seenIn = (looks: readonly Look[]): { readonly worth: number; readonly variance: number } => {
  const weighed = looks.map((look) => ({ ...look, weight: worthOf(look.ladder) * look.freedom }));
  const worth = weighed.reduce((sum, { weight }) => sum + weight, 0);
  const sum = weighed.reduce((total, { weight, square, ladder }) => total + weight * (square - ladder), 0);
  return { worth, variance: worth > 0 ? Math.max(0, sum / worth) : 0 };
};

const { assumedSd, assumedPairs, leastSd, toHundredths } = eyeNumbers;

/** How much wider the spread is used than found, for how few pairs it rests on: t over the normal quantile, both of 95 %. */
const widening = (worth: number): number => tQuantile(0.95, assumedPairs.value + worth) / constants.z90.value;

const eyeOf = (ratings: readonly Rating[], patches: EyeCheck['patches']): EyeKnown | undefined => {
  const pairs = ratings.filter(({ first, coverage }) => isByEye(first) && isByEye(coverage));
  const curve = biasCurve(patches);
  const { worth, variance } = seenIn([...pairs.map(pairLook), ...patchLooks(patches, curve)]);
  if (worth === 0) return undefined;
  const pooled = (assumedPairs.value * assumedSd.value ** 2 + worth * variance) / (assumedPairs.value + worth);
  const own = Math.max(leastSd.value, Math.sqrt(pooled));
  const times = widening(worth);
  const counts = { pairs: pairs.length, patches: curve?.patches ?? 0 };
  return {
    ...counts,
    sd: Math.round((own * times) / toHundredths.value) * toHundredths.value,
    worth,
    seen: Math.sqrt(variance),
    own,
    curve: curve ?? null,
    reasons: [
      because('eye: known from', { ...counts, worth }),
      ...(own > Math.sqrt(pooled) ? [because('eye: not held steadier than', { sd: leastSd.value })] : []),
      because('eye: widened for few pairs', { times }),
    ],
  };
};

/**
 * How well each surveyor's eye is known, by thing name: s^2 = (10 x 0.30^2 + v x s_obs^2) / (10 + v), not under 0.20, from zones asked
 * again and from the spread about the bias curve in eye checks. v counts each by what it is worth beside the ladder's bin. Who has neither, or
 * was not named, is not in the answer: the assumed spread holds for them.
 */
export const knownEyes = (
  rerated: readonly Rerated[],
  checks: readonly EyeCheck[],
): Readonly<Record<string, EyeKnown>> => {
  const names = new Set([...rerated, ...checks].map(({ surveyor }) => surveyor).filter((name) => name !== ''));
  const known: Record<string, EyeKnown> = {};
  for (const name of [...names].sort()) {
    const of = <T extends { readonly surveyor: string }>(rows: readonly T[]): T[] =>
      rows.filter(({ surveyor }) => surveyor === name);
    const eye = eyeOf(
      of(rerated).flatMap(({ ratings }) => ratings),
      of(checks).flatMap(({ patches }) => patches),
    );
    if (eye) known[name] = eye;
  }
  return known;
};
