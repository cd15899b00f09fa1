import { amountRefused, amountsRefused, type Money } from '../money';
import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

/** A currency that is not the collection's own: sums over options would have to add two. */
const strange = (amounts: readonly Money[], here: string | undefined): Reason | undefined => {
  const other = amounts.find(({ currency }) => here !== undefined && currency !== here);
  return other && here !== undefined
    ? because('money: not the currency here', { currency: other.currency, here })
    : undefined;
};

/** What stands against an option as entered; `here` is the collection's currency, where one is set. */
export const optionRefused = (body: BodyOf<'option'>, here: string | undefined): Reason | undefined => {
  const amounts = body.costs.map(({ amount }) => amount);
  const money = amountsRefused(amounts) ?? strange(amounts, here);
  if (money) return money;
  const turned = body.costs.find(({ first, last }) => last !== undefined && last < first);
  if (turned) return because('option: last before first', { line: turned.name });
  const months = body.goodMonths;
  if (months && !(months.low <= months.value && months.value <= months.high))
    return because('option: months out of order');
  return undefined;
};

/** What stands against a quote as entered. It may be in another currency than the collection's: it is shown, and added to nothing. */
export const quoteRefused = (body: BodyOf<'quote'>, thing: string, today: string): Reason | undefined => {
  const money = amountRefused(body.amount);
  if (money) return money;
  if (body.date > today) return because('quote: dated after today');
  if (body.validUntil !== undefined && body.validUntil < body.date) return because('quote: ends before it begins');
  return body.renewedBy === thing ? because('quote: renews itself') : undefined;
};

/** The currency of the collection may change only while nothing is in another. */
export const rulesRefused = (
  { currency }: Pick<BodyOf<'moneyRules'>, 'currency'>,
  inUse: readonly string[],
): Reason | undefined => {
  const others = inUse.filter((one) => one !== currency);
  return others[0] === undefined
    ? undefined
    : because('money: currency in use', { currency: others[0], count: others.length });
};
