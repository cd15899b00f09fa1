import { type Answers, counted } from './answers';
import { coverageNumbers } from './coverageNumbers';
import { notJudgedYet } from './dotsCoverage';
import type { Measurement } from './measured';
import type { Outline, Size } from './point';
import { because } from './reasonCodes';
import { stratified } from './stratified';
import { tooSmall } from './zoneOnPhoto';

/** What the pixels alone say of a zone, shares 0 to 1. */
export interface Mask {
  /** Green pixels of those that could be judged. */
  readonly share: number;
  /** Pixels left out as glare or deep shade, of all of the zone. */
  readonly leftOut?: number;
}

/**
 * Share of the zone by its mask and the check dots a person judged in it and outside it: W x (green of the dots in the mask) +
 * (1 - W) x (green of the dots outside), W the share of the mask. The dots see what the pixels took for the wrong thing.
 */
export const maskCoverage = (
  mask: Mask,
  inMask: Answers,
  outsideMask: Answers,
  zone: Outline,
  size: Size,
): Measurement => {
  const inside = counted(inMask);
  const outside = counted(outsideMask);
  const { fewestChecks, fewestChecksEach, mostGlare, mostWrong, saidGlare, smallSide } = coverageNumbers;
  const judged = inside.judged + outside.judged;
  const leftOut = mask.leftOut ?? 0;
  const short =
    judged < fewestChecks.value ||
    (mask.share > smallSide.value && inside.judged < fewestChecksEach.value) ||
    (1 - mask.share > smallSide.value && outside.judged < fewestChecksEach.value);
  const refused = [
    ...tooSmall(zone, size),
    ...(leftOut > mostGlare.value ? [because('coverage: too dark or too bright', { share: leftOut })] : []),
    ...notJudgedYet(inside.open + outside.open, inside.laid + outside.laid),
    ...(short
      ? [
          because('coverage: too few check dots judged', {
            judged,
            fewest: fewestChecks.value,
            each: fewestChecksEach.value,
          }),
        ]
      : []),
  ];
  if (refused.length > 0) return { refused };
  const { value, low, high } = stratified(mask.share, inside, outside);
  const wrong = inside.judged - inside.hits;
  const range = stratified(mask.share, inside, outside, 0.9);
  return {
    value,
    low,
    high,
    method: 'photo',
    coverage: { value, low: range.low, high: range.high, method: 'photo' },
    reasons: [
      because('coverage: mask and check dots', {
        share: mask.share,
        missed: outside.hits,
        outside: outside.judged,
        wrong,
        inside: inside.judged,
      }),
      ...(wrong > mostWrong.value * inside.judged
        ? [because('coverage: mask mostly wrong', { wrong, inside: inside.judged })]
        : []),
      because('coverage: slips allowed for', { share: coverageNumbers.slips.value }),
      ...(leftOut > saidGlare.value ? [because('coverage: left out of the mask', { share: leftOut })] : []),
      because('coverage: share of this photo'),
    ],
  };
};
