import { equivalentAnnualCost, type MoneyRules } from '../money';
import type { Reason } from '../record';
import { bestBuy } from './compare';
import type { OptionFigures } from './figures';
import { colourHolds, optionNumbers } from './numbers';
import { paymentsOf, type Scenario } from './payments';
import { because } from './reasonCodes';

/** The five questions, each of all options at once; `price` is of the one asked about alone. */
export type WhatIf = 'colour' | 'interval' | 'growth' | 'rate' | 'price';

/** One answer: what a good month (a year where months are not known) of the option asked about would then cost, and of the next best. */
export interface Answer {
  /** Years, times, or shares, in the unit of the question; see WhatIfBar. */
  readonly at: number;
  readonly cost: number;
  readonly next: number;
  /** The option that would then be the better buy; undefined where the one asked about stays it. */
  readonly turnsTo: string | undefined;
}

export interface WhatIfBar {
  readonly what: WhatIf;
  /** At least two. */
  readonly answers: readonly Answer[];
  /** From the cheapest to the dearest, what stands as entered among them. */
  readonly low: number;
  readonly high: number;
}

export interface WhatIfs {
  /** Of whole units a good month, or a year where an option's months are not known. */
  readonly per: 'good month' | 'year';
  readonly cost: number;
  readonly next: { readonly option: string; readonly cost: number };
  /** The widest first. */
  readonly bars: readonly WhatIfBar[];
}

interface Asked {
  readonly scenario: Scenario;
  readonly rate?: number;
  readonly onlyOne?: true;
}

const questions = (
  rules: MoneyRules,
): readonly { readonly what: WhatIf; readonly asked: readonly (Asked & { readonly at: number })[] }[] => {
  const { interval, growth, rate } = optionNumbers;
  return [
    { what: 'colour', asked: colourHolds.years.map((at) => ({ at, scenario: { colourHolds: at } })) },
    { what: 'interval', asked: [1 / interval.value, interval.value].map((at) => ({ at, scenario: { interval: at } })) },
    { what: 'growth', asked: [-growth.value, growth.value].map((at) => ({ at, scenario: { growth: at } })) },
    { what: 'rate', asked: [-rate.value, rate.value].map((at) => ({ at, scenario: {}, rate: rules.rate + at })) },
    { what: 'price', asked: [-1, 1].map((at) => ({ at, scenario: { price: at }, onlyOne: true as const })) },
  ];
};

/**
 * What one option would cost if the colour held only so long, if the interval, the rise, the rate or its price were otherwise, and
 * whether another would then be the better buy. Figures of one currency; null where there is nothing to set it beside.
 */
export const whatIfs = (one: OptionFigures, rows: readonly OptionFigures[], rules: MoneyRules): WhatIfs | null => {
  const others = rows.filter((row) => row !== one);
  const next = bestBuy(others);
  if (!next) return null;
  const months = ({ option }: OptionFigures): number => option.body.goodMonths?.value ?? 0;
  const byMonth = [one, ...others].every((row) => months(row) > 0);
  const costOf = (row: OptionFigures, { scenario, rate = rules.rate, onlyOne }: Asked): number => {
    const payments = paymentsOf(row.option.body, rules, onlyOne && row !== one ? {} : scenario);
    return equivalentAnnualCost(payments, rate, rules.years) / (byMonth ? months(row) : 1);
  };
  const cheapest = (asked: Asked) =>
    others.map((row) => ({ row, cost: costOf(row, asked) })).sort((a, b) => a.cost - b.cost)[0];
  const answer = (asked: Asked & { readonly at: number }): Answer => {
    const cost = costOf(one, asked);
    const rival = cheapest(asked);
    const turned = rival !== undefined && rival.cost < cost;
    return { at: asked.at, cost, next: rival?.cost ?? 0, turnsTo: turned ? rival.row.option.thing : undefined };
  };
  const base: Asked = { scenario: {} };
  const rival = cheapest(base);
  const now = costOf(one, base);
  const bars = questions(rules)
    .map(({ what, asked }): WhatIfBar => {
      const answers = asked.map(answer);
      const costs = answers.map(({ cost }) => cost);
      return { what, answers, low: Math.min(now, ...costs), high: Math.max(now, ...costs) };
    })
    .sort((a, b) => b.high - b.low - (a.high - a.low));
  return {
    per: byMonth ? 'good month' : 'year',
    cost: now,
    next: { option: rival?.row.option.thing ?? '', cost: rival?.cost ?? 0 },
    bars,
  };
};

/** The questions whose answer would make another option the better buy: said against the one asked about. */
export const turningOf = (one: OptionFigures, { bars }: WhatIfs): readonly Reason[] =>
  bars.flatMap(({ what, answers }) => {
    const other = answers.find(({ turnsTo }) => turnsTo !== undefined)?.turnsTo;
    return other === undefined ? [] : [because('option: order turns if', { what, option: one.option.thing, other })];
  });
