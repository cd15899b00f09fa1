import { fQuantile, tQuantile } from '../chance';
import { type Coverage, constants, fromLogit, isByEye } from '../condition';
import type { BodyOf, Figure, Reason } from '../record';
import { heightAt, heightSdAt, type Line, lineThrough } from './line';
import { eyeNumbers } from './numbers';
import { because } from './reasonCodes';
import { eyeLogit, ladderVariance, onItsStep } from './saidByEye';

export type Patch = BodyOf<'eyeCheck'>['patches'][number];

/**
 * What an eye says against what is true, both on the logit of coverage: a straight line, for eyes tend to see more of little
 * and less of much, and that is a line there.
 */
export interface BiasCurve {
  readonly line: Line;
  /** Patches it is drawn through. */
  readonly patches: number;
  /** The line differs from "says what is true" by more than chance allows. */
  readonly shown: boolean;
}

const pointOf = ({ truth, said }: Patch) => ({
  x: eyeLogit(truth),
  y: eyeLogit(said.value),
  // By the step the truth lies in and not by the one said, or who says too little would weigh less for it.
  weight: 1 / (eyeNumbers.assumedSd.value ** 2 + ladderVariance(onItsStep(truth))),
});

/** F test of the line against "says what is true": two numbers fitted. */
const isShown = (points: readonly ReturnType<typeof pointOf>[], line: Line): boolean => {
  const rest = line.residualSd ** 2 * (line.n - 2);
  const plain = points.reduce((sum, { x, y, weight }) => sum + weight * (y - x) ** 2, 0);
  if (rest === 0) return plain > 0;
  return (plain - rest) / 2 / (rest / (line.n - 2)) > fQuantile(1 - eyeNumbers.biasFrom.value, 2, line.n - 2);
};

/** Undefined for fewer patches than a curve takes, or where all have one truth. What was not judged by eye is left out. */
export const biasCurve = (patches: readonly Patch[]): BiasCurve | undefined => {
  const points = patches.filter(({ said }) => isByEye(said)).map(pointOf);
  if (points.length < eyeNumbers.curveFrom.value) return undefined;
  const line = lineThrough(points);
  return line && { line, patches: points.length, shown: isShown(points, line) };
};

/** How far each patch was said from the curve, on the logit. */
export const offCurve = (curve: BiasCurve, { truth, said }: Patch): number =>
  eyeLogit(said.value) - heightAt(curve.line, eyeLogit(truth));

/** What this eye says on average where a share is true, with the 90 % range of the curve. Shares, 0 to 1. */
export const saidAt = ({ line }: BiasCurve, truth: number): Omit<Figure, 'reasons'> => {
  const x = eyeLogit(truth);
  const at = heightAt(line, x);
  const reach = tQuantile(0.95, line.n - 2) * heightSdAt(line, x);
  return { value: fromLogit(at), low: fromLogit(at - reach), high: fromLogit(at + reach) };
};

/** A curve that hardly rises tells nothing of the truth: from this slope, and surely over nothing, it can be turned around. */
const steepEnough = ({ slope, slopeSd, n }: Line): boolean =>
  slope - tQuantile(0.95, n - 2) * slopeSd > 0 && slope > 1 / 3;

/**
 * What is likely true where this eye said a coverage, with its 90 % range: the eye's own spread, the ladder's bin and the error of
 * the curve together. `sd` is the spread as the sums use it. Without a curve, or with one that shows no bias, the value stays and the reason says so.
 * The entry itself is never altered by it.
 */
export const likelyTrue = (said: Coverage, sd: number, curve?: BiasCurve): Figure => {
  const y = eyeLogit(said.value);
  const own = sd ** 2 + ladderVariance(said);
  const around = (at: number, variance: number, reasons: readonly Reason[]): Figure => {
    const reach = constants.z90.value * Math.sqrt(variance);
    return { value: fromLogit(at), low: fromLogit(at - reach), high: fromLogit(at + reach), reasons };
  };
  if (!curve) return around(y, own, [because('eye: no curve yet')]);
  if (!curve.shown) return around(y, own, [because('eye: bias not shown')]);
  if (!steepEnough(curve.line)) return around(y, own, [because('eye: curve too flat')]);
  const { line } = curve;
  const at = (y - line.intercept) / line.slope;
  const variance = (own + heightSdAt(line, at) ** 2) / line.slope ** 2;
  return around(at, variance, [because('eye: corrected by the curve', { patches: curve.patches })]);
};
