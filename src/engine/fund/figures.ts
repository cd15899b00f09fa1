import { isMoney, type Money, type MoneyRules, noCurrency } from '../money';
import type { Reason, Thing } from '../record';
import { type Course, courseOf } from './course';
import { type Cover, coverOf } from './cover';
import { type Fund, type Pipeline, pipelineOf } from './pipeline';
import { type Saving, savingFor } from './saving';
import { linesOn, targetOf, targetOn } from './target';

/** All that is worked out of one fund. */
export interface FundFigures {
  readonly fund: Thing<'fund'>;
  readonly gifts: readonly Thing<'gift'>[];
  readonly currency: string;
  readonly target: Money;
  /** The costs at the prices of today. */
  readonly now: readonly Fund['lines'][number][];
  readonly pipeline: Pipeline;
  readonly cover: Cover;
}

/** The gifts of a fund, those that come soonest first. */
export const giftsOf = (gifts: readonly Thing<'gift'>[], fund: string): readonly Thing<'gift'>[] =>
  gifts
    .filter(({ body }) => body.fund === fund)
    .sort((a, b) => dayOf(a).localeCompare(dayOf(b)) || (a.thing < b.thing ? -1 : 1));

const dayOf = ({ body }: Thing<'gift'>): string => body.received ?? body.expected ?? '9999';

/** The figures, or why there are none: amounts of two currencies. What gifts pay is reckoned at the prices of today. */
export const fundFiguresOf = (
  fund: Thing<'fund'>,
  gifts: readonly Thing<'gift'>[],
  rules: MoneyRules,
  today: string,
): FundFigures | Reason => {
  const { lines, priced } = fund.body;
  const currency = lines[0]?.amount.currency ?? gifts[0]?.body.amount.currency ?? rules.currency ?? noCurrency;
  const target = targetOf(fund.body, currency);
  if (!isMoney(target)) return target;
  const bodies = gifts.map(({ body }) => body);
  const pipeline = pipelineOf(bodies, currency);
  if (!('inHand' in pipeline)) return pipeline;
  const now = linesOn(lines, priced, today, rules.growth);
  return { fund, gifts, currency, target, now, pipeline, cover: coverOf(now, bodies) };
};

export const isFundFigures = (x: FundFigures | Reason): x is FundFigures => 'cover' in x;

const bodiesOf = (gifts: FundFigures['gifts']) => gifts.map(({ body }) => body);

/** How it goes on from today. */
export const courseFrom = ({ fund, gifts }: FundFigures, { growth, years }: MoneyRules, today: string): Course => {
  const { lines, priced, yearly } = fund.body;
  return courseOf({ lines, priced, gifts: bodiesOf(gifts), yearly, today, growth, years });
};

/** What to lay by each year for the day it is wanted: beside what is in hand, and if the pledges come too. Null where that day is past. */
export const savingsOf = (
  { fund, gifts, target, currency }: FundFigures,
  rules: MoneyRules,
  today: string,
  wanted: string,
): { readonly inHand: Saving; readonly pledged: Saving } | null => {
  const { lines, priced } = fund.body;
  const then = targetOn(target, priced, wanted, rules.growth);
  const cover = coverOf(linesOn(lines, priced, wanted, rules.growth), bodiesOf(gifts));
  const has = (minor: number) => savingFor(then, { minor, currency }, today, wanted, rules.rate);
  const [inHand, pledged] = [has(cover.inHand), has(cover.inHand + cover.pledged)];
  return inHand && pledged && { inHand, pledged };
};
