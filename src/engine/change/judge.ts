import { constants } from '../condition';
import type { Reason } from '../record';
import { benjaminiHochberg } from './falseDiscovery';
import { twoSidedTail } from './normalTail';
import { because } from './reasonCodes';
import { sharedVariance } from './sharedError';
import type { Sum } from './sums';
import { thresholds } from './thresholds';
import type { Judgement, Verdict } from './verdict';

/** A comparison before the whole page is weighed. */
export interface Draft {
  readonly verdict: Verdict;
  readonly z: number | null;
  /** Its error is known, so that it counts among the page's comparisons. */
  readonly weighed: boolean;
  readonly reasons: readonly Reason[];
}

/** |z| over which a difference is called a change: 5 % of comparisons of unchanged things go over it. */
const line = constants.z95.value;
const isOver = (z: number): boolean => Math.abs(z) > line;

export const byZ = (z: number): Verdict => (isOver(z) ? (z > 0 ? 'worse' : 'better') : 'no sure change');

export const notJudged = (verdict: 'carried' | 'not comparable', reasons: readonly Reason[]): Draft => ({
  verdict,
  z: null,
  weighed: false,
  reasons,
});

export const weighedByZ = (z: number, reasons: readonly Reason[] = []): Draft => ({
  verdict: byZ(z),
  z,
  weighed: true,
  reasons,
});

/**
 * Judges a figure summed over findings or zones. Only coverage has a known error. Where the verdict would not stand with
 * severity, activity and count held as they were (or as they are), it rests on a step whose error nobody knows: it stands,
 * says so, is never called clear and is not weighed among the others.
 */
export const judgeSum = (sum: Sum, otherPerson: boolean): Draft => {
  const difference = sum.later - sum.earlier;
  const sd = Math.sqrt(sum.ownEarlier + sum.ownLater + sharedVariance(sum.slopeEarlier, sum.slopeLater, otherPerson));
  if (sd === 0) {
    if (difference === 0) return { verdict: 'no sure change', z: null, weighed: false, reasons: [] };
    const verdict = difference > 0 ? 'worse' : 'better';
    return { verdict, z: null, weighed: false, reasons: [because('change: rests on a step')] };
  }
  const z = difference / sd;
  const inSteps = [sum.laterInOldSteps - sum.earlier, sum.later - sum.earlierInNewSteps].map(
    (d) => (d / sd) * Math.sign(z),
  );
  const rests = isOver(z) && inSteps.some((held) => held <= line);
  if (rests) return { verdict: byZ(z), z, weighed: false, reasons: [because('change: rests on a step')] };
  return weighedByZ(z);
};

export interface Page {
  /** In the order of the drafts. */
  readonly judged: readonly Judgement[];
  readonly comparisons: number;
  readonly expectedByChance: number;
}

/** Weighs all comparisons of a page together, Benjamini-Hochberg; `escalates` false: nothing is called clearly worse. */
export const weighPage = (drafts: readonly Draft[], escalates: boolean): Page => {
  const weighed = drafts.filter((d) => d.weighed && d.z !== null);
  const stands = benjaminiHochberg(
    weighed.map((d) => twoSidedTail(d.z ?? 0)),
    thresholds.falseDiscovery.value,
  );
  const survives = new Map(weighed.map((d, i) => [d, stands[i] ?? false]));
  const comparisons = weighed.length;
  const expectedByChance = comparisons * twoSidedTail(line);
  const judged = drafts.map((d) => {
    const inPage = survives.has(d);
    const changed = d.verdict === 'worse' || d.verdict === 'better';
    const clearly = inPage && changed && Math.abs(d.z ?? 0) > thresholds.clearlyTimes.value * line;
    const firm = clearly || (survives.get(d) ?? false);
    const aloneCouldBeChance = inPage && changed && !firm;
    return {
      verdict: d.verdict,
      z: d.z,
      clearly,
      aloneCouldBeChance,
      clearlyWorse: escalates && d.verdict === 'worse' && inPage && firm,
      reasons: aloneCouldBeChance
        ? [...d.reasons, because('change: alone, could be chance', { comparisons, expected: expectedByChance })]
        : d.reasons,
    };
  });
  return { judged, comparisons, expectedByChance };
};
