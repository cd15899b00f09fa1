import { isMoney, readMoney } from '../../engine/money';
import type { OptionCost } from '../../engine/options';
import { moneyTyped, percentTyped, sayReason, typedNumber, typedRise, w } from '../../words';

const words = w.options.sheet;

/** One cost as it is typed. */
export interface CostText {
  /** Only for the list on screen. */
  readonly key: number;
  readonly name: string;
  readonly amount: string;
  /** '' once, else every so many years. */
  readonly every: string;
  readonly first: string;
  readonly last: string;
  /** Per cent. */
  readonly growth: string;
  readonly contingency: boolean;
  readonly price: OptionCost['price'];
}

export const newCost = (key: number): CostText => ({
  key,
  ...{ name: '', amount: '', every: '', first: '1', last: '', growth: '', contingency: true, price: 'estimate' },
});

export const costText = (line: OptionCost, key: number): CostText => ({
  key,
  name: line.name,
  amount: moneyTyped(line.amount),
  every: line.every === undefined ? '' : `${line.every}`,
  first: `${line.first}`,
  last: line.last === undefined ? '' : `${line.last}`,
  growth: line.growth === undefined ? '' : percentTyped(line.growth),
  contingency: line.contingency === true,
  price: line.price,
});

export type CostFault = Readonly<Partial<Record<'name' | 'amount' | 'first' | 'last' | 'growth', string>>>;

const yearOf = (text: string): number | undefined => {
  const year = typedNumber(text);
  return year !== undefined && Number.isInteger(year) && year <= 100 ? year : undefined;
};

/** A rise may be a fall: "-2". */
const riseOf = (text: string): number | undefined => {
  const percent = typedRise(text);
  if (percent === undefined || percent < -10 || percent > 30) return undefined;
  return Math.round(percent * 1e4) / 1e6 + 0;
};

/** The cost as it will be kept, or what is wrong with each field. */
export const readCost = (
  text: CostText,
  currency: string,
): { readonly line: OptionCost } | { readonly fault: CostFault } => {
  const amount = readMoney(text.amount, currency);
  const first = yearOf(text.first);
  const last = text.last.trim() === '' ? undefined : yearOf(text.last);
  const growth = text.growth.trim() === '' ? undefined : riseOf(text.growth);
  const repeats = text.every !== '';
  const fault: CostFault = {
    ...(text.name.trim() === '' ? { name: words.missing } : {}),
    ...(isMoney(amount) ? {} : { amount: sayReason(amount) }),
    ...(first === undefined ? { first: words.notYears } : {}),
    ...(repeats && text.last.trim() !== '' && last === undefined ? { last: words.notYears } : {}),
    ...(text.growth.trim() !== '' && growth === undefined ? { growth: words.notPercent } : {}),
  };
  if (Object.keys(fault).length > 0 || !isMoney(amount) || first === undefined) return { fault };
  return {
    line: {
      name: text.name.trim(),
      amount,
      first,
      ...(repeats ? { every: Number(text.every) } : {}),
      ...(repeats && last !== undefined ? { last } : {}),
      ...(growth === undefined ? {} : { growth }),
      ...(text.contingency ? { contingency: true as const } : {}),
      price: text.price,
    },
  };
};
