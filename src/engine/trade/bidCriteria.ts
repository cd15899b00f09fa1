import { named } from './named';
import type { Source } from './source';

/** What bids for a treatment are judged by. */
export interface BidCriterion {
  readonly id: string;
  readonly name: string;
  /** What is looked at. */
  readonly asks: string;
  /** Out of 100, where nobody set another. */
  readonly weight: number;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const own: Source = { text: 'Our own choice.', sure: 'own choice' };
const row = (id: string, weight: number, name: string, asks: string): BidCriterion => ({
  ...{ id, name, asks, weight },
  source: practice,
});

/** The criterion whose marks nobody gives: they follow from the bids. */
export const priceCriterion = 'price';

export const bidCriteria: readonly BidCriterion[] = named('bidCriteria', [
  row('method', 30, 'Method', 'whether it fits this surface, what it takes away, what is tried first'),
  row('people', 25, 'People', 'who is on site, and works of theirs we may look at'),
  row(priceCriterion, 20, 'Price', 'along the lines, on the same quantities'),
  row('documentation', 15, 'Documentation', 'photographs, layer log, report'),
  row('programme', 10, 'Programme and access', 'days, order, closures'),
]);

const byId = new Map(bidCriteria.map((one) => [one.id, one]));
export const bidCriterionOf = (id: string): BidCriterion | undefined => byId.get(id);

/** Weights come to this. */
export const weightsSum = 100;

/** Marks go from nought to this, in whole steps. */
export const mostMark = { value: 10, source: practice } as const;

/** Points of a price: the lowest divided by it, times the weight. */
export const priceFormula = {
  source: {
    text: 'World Bank, Standard Request for Proposals, Selection of Consultants, quality- and cost-based selection: Sf = 100 x Fm / F, Fm the lowest price and F the price of the bid.',
    sure: 'from memory',
  },
} as const satisfies { readonly source: Source };

/** With fewer scorers nothing is known of how far two would differ. */
export const fewestScorers = { value: 2, source: own } as const;

/** Two bids whose totals lie less than so many marks of the weightiest criterion apart cannot be told apart: anybody wavers by one. */
export const marksApart = { value: 1, source: own } as const;
