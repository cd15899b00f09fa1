import { type Money, type MoneyRules, mixed, type Payments, unitsOf } from '../money';
import type { BodyOf, Reason } from '../record';
import { optionSortOf } from '../trade';
import { priceSpread } from './numbers';

export type Option = BodyOf<'option'>;
export type OptionCost = Option['costs'][number];
export type Costed = Pick<Option, 'costs' | 'sort'>;

/** What is taken to be otherwise than entered. Nothing given: as entered. */
export interface Scenario {
  /** Added to the yearly rise of every line, share. */
  readonly growth?: number;
  /** What lays a colour within the coming year is done again after so many years. */
  readonly colourHolds?: number;
  /** Lines that come every two years or more come so many times as far apart; whole years, one at least. */
  readonly interval?: number;
  /** Every price off by its own spread: -1 all low, 1 all high. */
  readonly price?: number;
}

/** The one currency of an option's costs; a reason where there are two, undefined where there are no costs. */
export const currencyOf = ({ costs }: Costed): string | Reason | undefined => {
  const amounts: readonly Money[] = costs.map(({ amount }) => amount);
  return mixed(amounts) ?? amounts[0]?.currency;
};

/** What falls this year or the next is the treatment itself, and not something planned for later beside it. */
const soon = 1;

/** Every how many years a line falls again; undefined where only once. */
const everyOf = (line: OptionCost, sort: string, { colourHolds, interval = 1 }: Scenario): number | undefined => {
  if (line.every !== undefined) return line.every === 1 ? 1 : Math.max(1, Math.round(line.every * interval));
  return optionSortOf(sort)?.laysColour && line.first <= soon ? colourHolds : undefined;
};

const fallsIn = (year: number, line: OptionCost, every: number | undefined): boolean =>
  year >= line.first &&
  year <= (line.last ?? year) &&
  (every === undefined ? year === line.first : (year - line.first) % every === 0);

/** What one line comes to the first time, with contingency, in whole units. */
export const unitsOfLine = (line: OptionCost, { contingency }: Pick<MoneyRules, 'contingency'>): number =>
  unitsOf(line.amount) * (line.contingency ? 1 + contingency : 1);

/**
 * What an option costs by year, [0] this year, to the end of the years looked at; whole units of its one currency. Prices are those of
 * the coming year: they hold for this year and the next, and rise from then on.
 */
export const paymentsOf = (option: Costed, rules: MoneyRules, scenario: Scenario = {}): Payments =>
  Array.from({ length: rules.years + 1 }, (_, year) =>
    option.costs.reduce((sum, line) => {
      if (!fallsIn(year, line, everyOf(line, option.sort, scenario))) return sum;
      const growth = (line.growth ?? rules.growth) + (scenario.growth ?? 0);
      const off = 1 + (scenario.price ?? 0) * priceSpread[line.price].value;
      return sum + unitsOfLine(line, rules) * off * (1 + growth) ** Math.max(0, year - 1);
    }, 0),
  );

/** What falls only once and is paid within the coming year, at today's prices, with contingency: the price of the treatment itself. */
export const onceOff = (option: Costed, rules: MoneyRules): readonly OptionCost[] =>
  option.costs.filter(({ every, first }) => every === undefined && first <= soon && rules.years >= first);

/** How many times within the years looked at an option does what cannot be taken back: years in which more than the yearly care falls. */
export const irreversibleTimes = (option: Costed, { years }: Pick<MoneyRules, 'years'>): number => {
  if (optionSortOf(option.sort)?.irreversible === undefined) return 0;
  const lines = option.costs.filter(({ every }) => every !== 1);
  return Array.from({ length: years + 1 }, (_, year) => year).filter((year) =>
    lines.some((line) => fallsIn(year, line, line.every)),
  ).length;
};
