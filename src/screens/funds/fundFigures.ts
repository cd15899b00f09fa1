import type { Planned } from '../../actions';
import {
  type Course,
  type Cover,
  courseOf,
  coverOf,
  type Pipeline,
  pipelineOf,
  type Saving,
  savingFor,
  targetOf,
  targetOn,
} from '../../engine/fund';
import { isMoney, type Money, type MoneyRules, noCurrency } from '../../engine/money';
import type { Reason, Thing } from '../../engine/record';

/** All that is worked out of one fund. */
export interface FundFigures {
  readonly fund: Thing<'fund'>;
  readonly gifts: readonly Thing<'gift'>[];
  readonly currency: string;
  readonly target: Money;
  readonly pipeline: Pipeline;
  readonly cover: Cover;
}

/** The gifts of a fund, those that come soonest first. */
export const giftsOf = (planned: Planned, fund: string): readonly Thing<'gift'>[] =>
  planned.gift
    .filter(({ body }) => body.fund === fund)
    .sort((a, b) => dayOf(a).localeCompare(dayOf(b)) || (a.thing < b.thing ? -1 : 1));

const dayOf = ({ body }: Thing<'gift'>): string => body.received ?? body.expected ?? '9999';

/** The figures, or why there are none: amounts of two currencies. */
export const figuresOf = (
  fund: Thing<'fund'>,
  gifts: readonly Thing<'gift'>[],
  rules: MoneyRules,
): FundFigures | Reason => {
  const { lines } = fund.body;
  const currency = lines[0]?.amount.currency ?? gifts[0]?.body.amount.currency ?? rules.currency ?? noCurrency;
  const target = targetOf(fund.body, currency);
  if (!isMoney(target)) return target;
  const bodies = gifts.map(({ body }) => body);
  const pipeline = pipelineOf(bodies, currency);
  if (!('inHand' in pipeline)) return pipeline;
  return { fund, gifts, currency, target, pipeline, cover: coverOf(lines, bodies) };
};

export const isFigures = (x: FundFigures | Reason): x is FundFigures => 'cover' in x;

/** How it goes on from today. */
export const courseFrom = ({ fund, gifts, target, cover }: FundFigures, rules: MoneyRules, today: string): Course =>
  courseOf({
    ...{ target, priced: fund.body.priced, gifts: gifts.map(({ body }) => body), used: cover.used },
    ...{ yearly: fund.body.yearly, today, growth: rules.growth, years: rules.years },
  });

/** What to lay by each year for the day it is wanted: beside what is in hand, and if the pledges come too. Null where that day is past. */
export const savingsOf = (
  { fund, target, cover, currency }: FundFigures,
  rules: MoneyRules,
  today: string,
  wanted: string,
): { readonly inHand: Saving; readonly pledged: Saving } | null => {
  const then = targetOn(target, fund.body.priced, wanted, rules.growth);
  const has = (minor: number) => savingFor(then, { minor, currency }, today, wanted, rules.rate);
  const [inHand, pledged] = [has(cover.inHand), has(cover.inHand + cover.pledged)];
  return inHand && pledged && { inHand, pledged };
};
