import { useMemo } from 'react';
import { needList, plannedOfCollection } from '../../actions';
import { isWeighed, type Price, type Weighed, weigh, zonesToTreat } from '../../engine/budget';
import type { NeedOf } from '../../engine/condition';
import { isMoney, type Money, sumOf } from '../../engine/money';
import type { Reason, Thing } from '../../engine/record';
import { w, worksNamed } from '../../words';
import { useDesk, useQuestion } from '../shell';

/** All a budget's screen shows. */
export interface BudgetAtHand {
  readonly plans: readonly Thing<'yearPlan'>[];
  readonly plan: Thing<'yearPlan'> | undefined;
  readonly prices: readonly Price[];
  /** Null while there is no price. */
  readonly weighed: Weighed | null;
  /** Why nothing can be weighed: prices of two currencies. */
  readonly refused: Reason | null;
  /** What the lift days of the year cost. */
  readonly lifts: Money | null | 'mixed';
  /** Works with a round, by name. */
  readonly works: readonly { readonly thing: string; readonly name: string }[];
  readonly notJudged: number;
  readonly workingOut: boolean;
  zoneName(zone: string): string;
  workName(sculpture: string): string;
}

const none: readonly Price[] = [];
const isIn = (works: readonly string[], { record }: NeedOf): boolean => works.includes(record.sculpture.thing);

/** Undefined while it is read for the first time. */
export const useBudget = (year: number, without: readonly string[]): BudgetAtHand | undefined => {
  const desk = useDesk();
  const need = useQuestion(needList(desk));
  const planned = useQuestion(plannedOfCollection(desk));
  const plan = planned?.yearPlan.find(({ body }) => body.year === year);
  const prices = plan?.body.prices ?? none;
  const needs = need?.needs;
  const weighed = useMemo(
    () => (needs && prices.length > 0 ? weigh(zonesToTreat(needs.filter((one) => !isIn(without, one))), prices) : null),
    [needs, prices, without],
  );
  if (!need || !planned) return undefined;
  const works = new Map(need.needs.map(({ record }) => [record.sculpture.thing, record.sculpture.body]));
  const zones = new Map(
    need.needs.flatMap(({ record }) => record.zones.map(({ thing, body }) => [thing, { work: record, body }] as const)),
  );
  return {
    plans: planned.yearPlan,
    plan,
    prices,
    weighed: weighed && isWeighed(weighed) ? weighed : null,
    refused: weighed && !isWeighed(weighed) ? weighed : null,
    lifts: liftsOf(plan, prices[0]?.each.currency),
    works: worksNamed([...works].map(([thing, body]) => ({ thing, body }))),
    notJudged: need.order.notRanked.filter(({ sculpture }) => !without.includes(sculpture)).length,
    workingOut: need.workingOut > 0,
    workName: (sculpture) => nameOfWork(works.get(sculpture)),
    zoneName: (zone) => {
      const found = zones.get(zone);
      return found ? w.budget.zoneOf(nameOfWork(found.work.sculpture.body), found.body.letter, found.body.name) : zone;
    },
  };
};

const nameOfWork = (body: { readonly number: string; readonly title: string } | undefined): string =>
  body ? body.number || body.title : '';

const liftsOf = (plan: Thing<'yearPlan'> | undefined, currency: string | undefined): Money | null | 'mixed' => {
  const costs = (plan?.body.liftDays ?? []).flatMap(({ cost }) => cost ?? []);
  if (costs.length === 0) return null;
  const sum = sumOf(costs, currency ?? costs[0]?.currency);
  return isMoney(sum) ? sum : 'mixed';
};
