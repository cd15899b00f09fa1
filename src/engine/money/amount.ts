import type { BodyOf, Reason } from '../record';
import { isCurrency, unitOf } from './currencies';
import { because } from './reasonCodes';

/** An amount in whole minor units of a currency of ISO 4217; may be below nothing where it is a difference. */
export type Money = Pick<BodyOf<'quote'>['amount'], 'minor' | 'currency'>;

export const isMoney = (x: Money | Reason): x is Money => 'minor' in x;

/** So many whole units; a fraction of a minor unit is rounded to the nearest, halves up. */
export const moneyOf = (units: number, currency: string): Money => ({
  minor: Math.round(units * unitOf(currency)) + 0,
  currency,
});

/** In whole units: 46 000 for 4 600 000 cents. For sums over years; amounts are kept and compared in minor units. */
export const unitsOf = ({ minor, currency }: Money): number => minor / unitOf(currency);

/** A share or a multiple of an amount, rounded to the nearest minor unit, halves up. */
export const times = ({ minor, currency }: Money, factor: number): Money => ({
  minor: Math.round(minor * factor) + 0,
  currency,
});

/** The first two currencies of a list that differ, as a reason; nothing where all are one. */
export const mixed = (list: readonly Money[]): Reason | undefined => {
  const one = list[0]?.currency;
  const other = list.find(({ currency }) => currency !== one)?.currency;
  return one !== undefined && other !== undefined ? because('money: currencies mixed', { one, other }) : undefined;
};

/** The sum of amounts of one currency. Two currencies are never added. An empty list is nothing of `currency`, which it then must name. */
export const sumOf = (list: readonly Money[], currency?: string): Money | Reason => {
  const of = currency ?? list[0]?.currency ?? '';
  if (!isCurrency(of)) return because('money: not a currency', { text: of });
  return (
    mixed([{ minor: 0, currency: of }, ...list]) ?? { minor: list.reduce((sum, m) => sum + m.minor, 0), currency: of }
  );
};

/** One sum a currency, in the order the currencies first come. */
export const sumsByCurrency = (list: readonly Money[]): readonly Money[] => {
  const sums = new Map<string, number>();
  for (const { minor, currency } of list) sums.set(currency, (sums.get(currency) ?? 0) + minor);
  return [...sums].map(([currency, minor]) => ({ minor, currency }));
};

/** The most an amount may be, in whole units: past it somebody slipped a key. Our own choice. */
export const mostUnits = 100_000_000_000;

/** What stands against an amount as a price or a gift: below nothing, or past what anything costs. */
export const amountRefused = (money: Money): Reason | undefined => {
  if (!isCurrency(money.currency)) return because('money: not a currency', { text: money.currency });
  if (money.minor < 0) return because('money: below nothing');
  return unitsOf(money) > mostUnits
    ? because('money: too large', { most: mostUnits, currency: money.currency })
    : undefined;
};

/** What stands against a list of amounts that will be added: each by itself, then two currencies. */
export const amountsRefused = (list: readonly Money[]): Reason | undefined =>
  list.map(amountRefused).find(Boolean) ?? mixed(list);
