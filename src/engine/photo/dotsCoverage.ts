import type { Reason } from '../record';
import { type Answers, counted } from './answers';
import { coverageNumbers } from './coverageNumbers';
import type { Measured, Measurement } from './measured';
import { aspectOf, type Outline, type Size } from './point';
import { outlineArea } from './polygon';
import { because } from './reasonCodes';
import { shareInterval } from './shareInterval';
import { tooSmall } from './zoneOnPhoto';

/** Share and interval of dots that hit, whatever was asked of where they lie. */
export const dotsHit = (hits: number, judged: number, reasons: readonly Reason[] = []): Measured => {
  const value = judged === 0 ? 0 : hits / judged;
  const [low, high] = shareInterval(hits, judged);
  const [low90, high90] = shareInterval(hits, judged, 0.9);
  const coverage = { value, low: low90, high: high90, method: 'dots' as const };
  return { value, low, high, method: 'dots', coverage, reasons };
};

/** Why a count is not done with; empty where next to all dots are judged, or none lie. */
export const notJudgedYet = (open: number, laid: number): readonly Reason[] =>
  open > coverageNumbers.mostOpen.value * laid ? [because('coverage: dots not judged yet', { open, laid })] : [];

/**
 * Share of the zone told by dots of `dotsIn`. `largestPatch` is the width of the largest patch, share of the photo width, where it is
 * known. Glare is skipped: the share is that of what could be seen.
 */
export const dotsCoverage = (answers: Answers, zone: Outline, size: Size, largestPatch?: number): Measurement => {
  const { laid, hits, judged, glare, open } = counted(answers);
  const spacing = laid === 0 ? 0 : Math.sqrt((outlineArea(zone) * aspectOf(size)) / laid);
  const pixels = spacing * size.width;
  const fewest = coverageNumbers.fewestDots.value;
  const refused = [
    ...tooSmall(zone, size),
    ...(laid > 0 && pixels < coverageNumbers.closestDots.value
      ? [because('coverage: dots closer than pixels tell', { pixels, least: coverageNumbers.closestDots.value })]
      : []),
    ...(laid > 0 && glare / laid > coverageNumbers.mostGlare.value
      ? [because('coverage: too much glare', { share: glare / laid })]
      : []),
    ...notJudgedYet(open, laid),
    ...(judged < fewest ? [because('coverage: too few dots judged', { judged, fewest })] : []),
  ];
  if (refused.length > 0) return { refused };
  const patch = largestPatch ?? 0;
  return dotsHit(hits, judged, [
    because('coverage: dots counted', { hits, judged }),
    ...(glare > 0 ? [because('coverage: glare skipped', { glare, laid })] : []),
    ...(open > 0 ? [because('coverage: dots left open', { open, laid })] : []),
    ...(patch > 0 && spacing < coverageNumbers.patchSpacing.value * patch
      ? [because('coverage: dots closer than a patch', { spacing, patch })]
      : []),
    because('coverage: a wrong dot is not in the range'),
    because('coverage: share of this photo'),
  ]);
};
