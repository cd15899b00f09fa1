import type { OptionCost } from '../engine/options';
import type { BodyOf } from '../engine/record';
import { options as words } from './en/options';
import { number } from './format';

/** "7 (6 to 8)". */
export const monthsText = ({
  value,
  low,
  high,
}: {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}): string => words.months(number(value, 1), number(low, 1), number(high, 1));

/** With where they come from: "7 (6 to 8), said by hand"; that nobody knows, where nobody does. */
export const goodMonthsText = ({ goodMonths: months }: Pick<BodyOf<'option'>, 'goodMonths'>): string =>
  months ? `${monthsText(months)}, ${words.from[months.from]}` : words.monthsUnknown;

/** When a cost falls and how sure its price is: "every 2 years from year 1, 2 % dearer each year, estimated". */
export const costText = ({ first, every, last, growth, contingency, price }: OptionCost): string => {
  const { line } = words;
  const [from, to] = [line.year(first), last === undefined ? undefined : line.year(last)];
  const falls =
    every === undefined ? line.once(from) : every === 1 ? line.yearly(from, to) : line.every(every, from, to);
  return [
    falls,
    growth === undefined ? '' : line.growth(number(growth * 100, 2)),
    contingency ? line.contingency : '',
    words.price[price],
  ]
    .filter(Boolean)
    .join(', ');
};
