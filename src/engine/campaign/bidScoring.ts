import type { Reason, Thing } from '../record';
import { fewestScorers, marksApart, mostMark, priceCriterion } from '../trade';
import type { BidComparison } from './bidComparison';
import type { Criterion } from './bidCriteria';
import { byHand, markOf, type SheetStanding } from './bidSheets';
import { because } from './reasonCodes';

/** Points out of the weight: the mean of all scorers, and the lowest and highest of them. */
export interface Points {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface ScoredBid {
  readonly bid: Thing<'bid'>;
  /** By criterion; one without points is not here. */
  readonly points: ReadonlyMap<string, Points>;
  /** Out of 100; undefined where nobody's sheet counts, or where a price gives no points. */
  readonly total: Points | undefined;
  /** By scorer, in the order of the sheets that count. */
  readonly totals: readonly number[];
  /** The best and the worst place it may have: more than one where it cannot be told apart from others. */
  readonly place: { readonly best: number; readonly worst: number } | undefined;
  readonly reasons: readonly Reason[];
}

export interface BidScoring {
  readonly criteria: readonly Criterion[];
  /** Whose sheets count: handed in, with a mark for each bid. */
  readonly scorers: readonly SheetStanding[];
  /** In the order of the comparison. */
  readonly bids: readonly ScoredBid[];
  /** Points two totals must lie apart. */
  readonly apart: number;
  readonly reasons: readonly Reason[];
}

/**
 * The bids of one currency by the marks of all scorers. The price has the points of the lowest divided by it, over the lines all of
 * them priced. Two bids are told apart where at least two scorers all put the same one ahead and their totals lie further apart than
 * one mark of the weightiest criterion.
 */
export const scoreBids = (
  comparison: BidComparison,
  criteria: readonly Criterion[],
  sheets: readonly SheetStanding[],
): BidScoring => {
  const scorers = sheets.filter(({ whole }) => whole);
  const prices = pricePoints(comparison, criteria);
  const marked = byHand(criteria);
  const apart = (Math.max(0, ...marked.map(({ weight }) => weight)) / mostMark.value) * marksApart.value;
  const priced = prices !== undefined || !criteria.some(({ id }) => id === priceCriterion);
  const points = comparison.bids.map(({ bid }) => {
    const hands = scorers.map(({ sheet }) =>
      marked.map(({ id, weight }) => ((markOf(sheet, bid.thing, id) ?? 0) / mostMark.value) * weight),
    );
    const price = prices?.get(bid.thing) ?? 0;
    return { bid, hands, price, totals: priced ? hands.map((each) => sum(each) + price) : [] };
  });
  const bids = points.map((one): ScoredBid => {
    const others = points.filter(({ bid }) => bid.thing !== one.bid.thing);
    const alike = others.filter((other) => standing(one.totals, other.totals, apart) === 'alike');
    const ahead = others.filter((other) => standing(other.totals, one.totals, apart) === 'ahead').length;
    const bothKnown = one.totals.length > 0;
    return {
      bid: one.bid,
      points: new Map([
        ...(scorers.length > 0
          ? marked.map(({ id }, i) => [id, spread(one.hands.map((each) => each[i] ?? 0))] as const)
          : []),
        ...(prices ? [[priceCriterion, spread([one.price])] as const] : []),
      ]),
      total: bothKnown ? spread(one.totals) : undefined,
      totals: one.totals,
      place: bothKnown ? { best: ahead + 1, worst: ahead + 1 + alike.length } : undefined,
      reasons: bothKnown ? alike.map((other) => whyAlike(one, other, apart)) : [],
    };
  });
  return { criteria, scorers, bids, apart, reasons: reasonsOf(comparison, criteria, sheets, prices !== undefined) };
};

const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Beyond what a sum of many shares may be off. */
const clearly = (gap: number, apart: number): boolean => Math.abs(gap) - apart > 1e-9;

const spread = (numbers: readonly number[]): Points => ({
  value: sum(numbers) / numbers.length,
  low: Math.min(...numbers),
  high: Math.max(...numbers),
});

/** By bid; undefined where the price is no criterion, or where a price of nothing leaves nothing to divide. */
const pricePoints = (
  { bids }: BidComparison,
  criteria: readonly Criterion[],
): ReadonlyMap<string, number> | undefined => {
  const weight = criteria.find(({ id }) => id === priceCriterion)?.weight;
  const lowest = Math.min(...bids.map(({ shared }) => shared.minor));
  if (weight === undefined || !(lowest > 0)) return undefined;
  return new Map(bids.map(({ bid, shared }) => [bid.thing, (lowest / shared.minor) * weight]));
};

/** How one bid stands to another by the totals of the same scorers. */
const standing = (one: readonly number[], other: readonly number[], apart: number): 'ahead' | 'behind' | 'alike' => {
  const gaps = one.map((total, i) => total - (other[i] ?? 0));
  const gap = sum(gaps) / gaps.length;
  if (gaps.length < fewestScorers.value || !clearly(gap, apart)) return 'alike';
  if (gaps.every((each) => each > 0)) return 'ahead';
  return gaps.every((each) => each < 0) ? 'behind' : 'alike';
};

interface Totals {
  readonly bid: Thing<'bid'>;
  readonly totals: readonly number[];
}

const whyAlike = (one: Totals, other: Totals, apart: number): Reason => {
  const bid = other.bid.thing;
  const gap = Math.abs(sum(one.totals) - sum(other.totals)) / one.totals.length;
  if (one.totals.length < fewestScorers.value) return because('campaign: one scorer tells none apart', { bid, gap });
  return clearly(gap, apart)
    ? because('campaign: scorers differ on the order', { bid, gap })
    : because('campaign: totals too close', { bid, gap, apart });
};

const reasonsOf = (
  { bids, lines, sharedLines }: BidComparison,
  criteria: readonly Criterion[],
  sheets: readonly SheetStanding[],
  hasPrices: boolean,
): readonly Reason[] => {
  const asksPrice = criteria.some(({ id }) => id === priceCriterion);
  const whole = sheets.filter((one) => one.whole).length;
  return [
    because('campaign: sheets that count', { count: whole, all: sheets.length }),
    ...(asksPrice && !hasPrices ? [because('campaign: no price points')] : []),
    ...(asksPrice && hasPrices && bids.length > 1 && sharedLines < lines.length
      ? [because('campaign: price points on shared lines', { lines: sharedLines, all: lines.length })]
      : []),
  ];
};
