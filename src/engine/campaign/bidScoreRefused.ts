import type { BodyOf, Reason, Thing } from '../record';
import { bidCriterionOf, weightsSum } from '../trade';
import { criteriaOf, sameCriteria } from './bidCriteria';
import { missingMarks } from './bidSheets';
import { because } from './reasonCodes';

type Criteria = BodyOf<'bidCriteria'>;

/** What is kept of the weights and sheets of a campaign already. */
export interface KeptOfBids {
  readonly before: Criteria | undefined;
  readonly bids: readonly Thing<'bid'>[];
}

/** Weights that come to 100, each thing once and with a name; once a bid is in, a change says why and what was before. */
export const bidCriteriaRefused = (body: Criteria, { before, bids }: KeptOfBids): Reason | undefined => {
  const sum = body.criteria.reduce((all, { weight }) => all + weight, 0);
  if (Math.abs(sum - weightsSum) > 1e-9) return because('campaign: weights come to', { sum, whole: weightsSum });
  const ids = new Set(body.criteria.map(({ id }) => id));
  if (ids.size < body.criteria.length) return because('campaign: criterion twice');
  if (body.criteria.some(({ id, name }) => !bidCriterionOf(id) && !name?.trim()))
    return because('campaign: criterion without a name');
  return changeRefused(body, before, bids.length > 0);
};

const changeRefused = (body: Criteria, before: Criteria | undefined, bidsIn: boolean): Reason | undefined => {
  const earlier = before?.changed?.length ?? 0;
  const now = body.changed ?? [];
  const was = criteriaOf(before);
  const changes = bidsIn && !sameCriteria(was, body.criteria);
  if (now.length < earlier + (changes ? 1 : 0)) return because('campaign: weights changed after a bid');
  const last = now.at(-1);
  const told = !changes || (last !== undefined && last.why.trim() !== '' && sameCriteria(last.before, was));
  return told ? undefined : because('campaign: weights changed after a bid');
};

/** No mark twice; what is handed in has a mark for each bid that stands, and the marks that were handed in stay. */
export const bidScoreRefused = (
  body: BodyOf<'bidScore'>,
  before: BodyOf<'bidScore'> | undefined,
  { before: criteria, bids }: KeptOfBids,
): Reason | undefined => {
  const keys = new Set(body.marks.map(keyOf));
  if (keys.size < body.marks.length) return because('campaign: mark twice');
  if (before?.handedIn !== undefined) {
    const now = new Map(body.marks.map((one) => [keyOf(one), one.mark]));
    if (!body.handedIn || before.marks.some((one) => now.get(keyOf(one)) !== one.mark))
      return because('campaign: sheet was handed in', { date: before.handedIn });
  }
  if (!body.handedIn) return undefined;
  const standing = bids.filter((bid) => bid.body.withdrawn === undefined);
  const count = missingMarks(body, criteriaOf(criteria), standing);
  return count > 0 ? because('campaign: sheet not whole', { count }) : undefined;
};

const keyOf = ({ bid, criterion }: BodyOf<'bidScore'>['marks'][number]): string => `${bid} ${criterion}`;
