import { constants } from '../condition';
import type { Reason } from '../record';
import { benjaminiHochberg } from './falseDiscovery';
import { twoSidedTail } from './normalTail';
import { because } from './reasonCodes';
import { sharedVariance } from './sharedError';
import type { Sum, Ways } from './sums';
import { thresholds } from './thresholds';
import type { Judgement, Verdict } from './verdict';

/** A comparison before the whole page is weighed. */
export interface Draft {
  readonly verdict: Verdict;
  readonly z: number | null;
  /** The part of |z| that rests on no step of unknown error: what the page weighs. Null where it is not among its comparisons. */
  readonly firm: number | null;
  readonly reasons: readonly Reason[];
}

/** |z| over which a difference is called a change: 5 % of comparisons of unchanged things go over it. */
const line = constants.z95.value;
const isOver = (z: number): boolean => Math.abs(z) > line;

export const byZ = (z: number): Verdict => (isOver(z) ? (z > 0 ? 'worse' : 'better') : 'no sure change');

export const notJudged = (verdict: 'carried' | 'not comparable', reasons: readonly Reason[]): Draft => ({
  verdict,
  z: null,
  firm: null,
  reasons,
});

export const weighedByZ = (z: number, reasons: readonly Reason[] = []): Draft => ({
  verdict: byZ(z),
  z,
  firm: Math.abs(z),
  reasons,
});

/** Variance of the difference of a figure: own errors in quadrature, shared ones once. */
export const varianceOf = (sum: Sum, otherPerson: boolean): number =>
  sum.ownEarlier + sum.ownLater + sharedVariance(sum.slopeEarlier, sum.slopeLater, otherPerson);

/**
 * The smallest difference that would be called real between two such rounds, in the unit of the figure: the line times the error
 * of the difference. Null where nothing with a known error is compared.
 */
export const smallestDifference = (sum: Sum, otherPerson: boolean): number | null => {
  const variance = varianceOf(sum, otherPerson);
  return variance > 0 ? line * Math.sqrt(variance) : null;
};

const zOf = (sum: Sum, otherPerson: boolean): number | null => {
  const variance = varianceOf(sum, otherPerson);
  return variance > 0 ? (sum.later - sum.earlier) / Math.sqrt(variance) : null;
};

/**
 * Judges a figure summed over findings or zones. What is firm of z is its least value over the three ways of telling it. Where
 * that is not over the line, the verdict rests on a step of severity, activity or count, whose error nobody knows: it stands
 * and says so, but is never called clear and never escalates.
 */
export const judgeSum = (ways: Ways, otherPerson: boolean): Draft => {
  const z = zOf(ways.asTold, otherPerson);
  if (z === null) {
    const difference = ways.asTold.later - ways.asTold.earlier;
    if (difference === 0) return { verdict: 'no sure change', z, firm: null, reasons: [] };
    return {
      verdict: difference > 0 ? 'worse' : 'better',
      z,
      firm: null,
      reasons: [because('change: rests on a step')],
    };
  }
  const held = [ways.oldSteps, ways.newSteps].map((sum) => (zOf(sum, otherPerson) ?? 0) * Math.sign(z));
  const firm = Math.max(0, Math.min(Math.abs(z), ...held));
  const rests = isOver(z) && !isOver(firm);
  return { verdict: byZ(z), z, firm, reasons: rests ? [because('change: rests on a step')] : [] };
};

export interface Page {
  /** In the order of the drafts. */
  readonly judged: readonly Judgement[];
  readonly comparisons: number;
  readonly expectedByChance: number;
}

/** Weighs all comparisons of a page together, Benjamini-Hochberg; `escalates` false: nothing is called clearly worse. */
export const weighPage = (drafts: readonly Draft[], escalates: boolean): Page => {
  const weighed = drafts.flatMap((draft) => (draft.firm === null ? [] : [{ draft, p: twoSidedTail(draft.firm) }]));
  const stands = benjaminiHochberg(
    weighed.map(({ p }) => p),
    thresholds.falseDiscovery.value,
  );
  const survivors = new Set(weighed.filter((_, i) => stands[i]).map(({ draft }) => draft));
  const comparisons = weighed.length;
  const expectedByChance = comparisons * twoSidedTail(line);
  const judged = drafts.map((draft): Judgement => {
    const { verdict, z, firm, reasons } = draft;
    const changed = firm !== null && isOver(firm);
    const clearly = changed && firm > thresholds.clearlyTimes.value * line;
    const stand = clearly || survivors.has(draft);
    const alone = changed && !stand;
    return {
      verdict,
      z,
      clearly,
      aloneCouldBeChance: alone,
      clearlyWorse: escalates && changed && stand && verdict === 'worse',
      reasons: alone
        ? [...reasons, because('change: alone, could be chance', { comparisons, expected: expectedByChance })]
        : reasons,
    };
  });
  return { judged, comparisons, expectedByChance };
};
