import type { BodyOf } from '../record';
import { bidCriteria, bidCriterionOf } from '../trade';

/** One thing bids are judged by, with its weight out of 100. */
export interface Criterion {
  readonly id: string;
  readonly name: string;
  readonly asks: string | undefined;
  readonly weight: number;
}

/** As they were set for a campaign, or those of the trade. A code this version does not know is called by itself. */
export const criteriaOf = (body: BodyOf<'bidCriteria'> | undefined): readonly Criterion[] =>
  (body?.criteria ?? bidCriteria).map(({ id, weight, name }) => {
    const known = bidCriterionOf(id);
    return { id, name: known?.name ?? name ?? id, asks: known?.asks, weight };
  });

type Weighed = Pick<Criterion, 'id' | 'weight'> & { readonly name?: string | undefined };

/** Whether two sets weigh the same things in the same way; names of her own count, order does not. */
export const sameCriteria = (one: readonly Weighed[], other: readonly Weighed[]): boolean =>
  one.length === other.length &&
  one.every((a) => other.some((b) => a.id === b.id && a.weight === b.weight && calledAlike(a, b)));

const calledAlike = (a: Weighed, b: Weighed): boolean => bidCriterionOf(a.id) !== undefined || a.name === b.name;
