import { type MoneyRules, moneyOf, rulesOf } from '../../../src/engine/money';
import type { BodyOf, Thing } from '../../../src/engine/record';

type Option = BodyOf<'option'>;
type Cost = Option['costs'][number];

const paid = (name: string, units: number, more: Partial<Cost> = {}): Cost => ({
  name,
  amount: moneyOf(units, 'XXX'),
  first: 1,
  price: 'estimate',
  ...more,
});

const option = (letter: string, body: Omit<Option, 'sculpture'>): Thing<'option'> =>
  ({
    thing: `option/${letter}`,
    kind: 'option',
    within: 'sculpture/stair',
    body: { sculpture: 'sculpture/stair', ...body },
  }) as unknown as Thing<'option'>;

const said = (value: number, low = value, high = value) => ({ value, low, high, from: 'said' as const });

/**
 * The three ways of the invented work "Half-Tide Stair". Its results are printed, its yearly lines are not: these give every printed
 * figure (yearly costs, costs per good month, the year of overtaking) with the one upkeep of 3 100 that the same table prints. Other
 * lines might give them too.
 */
export const waxOnly = option('A', {
  sort: 'keep waxing',
  title: 'Yearly wax only',
  costs: [paid('Wash and wax', 3100, { every: 1, growth: 0.04 })],
  goodMonths: said(3, 2, 4),
  irreversible: 0,
});

export const waxAndLocal = option('B', {
  sort: 'wax and local treatment',
  title: 'Wax and local treatment every second year',
  costs: [
    paid('Wash and wax', 3100, { every: 1, growth: 0.02 }),
    paid('Local strip and colour', 6500, { every: 2, growth: 0.02 }),
  ],
  goodMonths: said(7, 6, 8),
  irreversible: 10,
  irreversibleSize: 'small',
});

export const stripAll = option('C', {
  sort: 'strip and repatinate',
  title: 'Strip, hot patina, then yearly wax',
  costs: [
    paid('Strip, desalt, hot patina, wax', 46_000, { contingency: true, price: 'quote' }),
    paid('Scaffold and draining the basin', 7500, { contingency: true }),
    paid('Conservator oversight and documentation', 4800, { contingency: true }),
    paid('Wash and wax', 3100, { every: 1, growth: 0 }),
  ],
  goodMonths: said(10, 8, 11),
  irreversible: 1,
  irreversibleSize: 'large',
});

/** Rates of practice: 3 % real, 20 years, 4 % a year dearer, 12 % contingency; currency of nobody. */
export const rules: MoneyRules = { ...rulesOf(undefined), currency: 'XXX' };
