import type { BidLine, QuantityLine } from '../../engine/campaign';
import { isMoney, readMoney } from '../../engine/money';
import type { Reason } from '../../engine/record';
import { moneyTyped, numberTyped, typedNumber } from '../../words';

/** What is typed for one line: its price, and the area the bidder measured. */
export interface PriceText {
  readonly price: string;
  readonly measured: string;
}

export const noPrice: PriceText = { price: '', measured: '' };

/** Prices of a bid as text, by line. */
export const priceTexts = (lines: readonly BidLine[], currency: string): Readonly<Record<string, PriceText>> =>
  Object.fromEntries(
    lines.map(({ item, minor, measured }) => [
      item,
      { price: moneyTyped({ minor, currency }), measured: measured === undefined ? '' : numberTyped(measured) },
    ]),
  );

export interface PricesRead {
  readonly lines: readonly BidLine[];
  /** What is wrong with a price, by line. */
  readonly wrong: Readonly<Record<string, Reason>>;
  /** Lines whose measured area cannot be read. */
  readonly measuredWrong: ReadonlySet<string>;
}

/** What was typed, read: a line without a price is not priced; a price that cannot be read is said. */
export const readPrices = (
  schedule: readonly QuantityLine[],
  texts: Readonly<Record<string, PriceText>>,
  currency: string,
): PricesRead => {
  const wrong: Record<string, Reason> = {};
  const measuredWrong = new Set<string>();
  const lines = schedule.flatMap(({ id, unit }): BidLine[] => {
    const { price, measured } = texts[id] ?? noPrice;
    if (price.trim() === '') return [];
    const amount = readMoney(price, currency);
    const area = unit === 'm2' && measured.trim() !== '' ? typedNumber(measured) : undefined;
    if (unit === 'm2' && measured.trim() !== '' && !area) measuredWrong.add(id);
    if (isMoney(amount)) return [{ item: id, minor: amount.minor, ...(area ? { measured: area } : {}) }];
    wrong[id] = amount;
    return [];
  });
  return { lines, wrong, measuredWrong };
};
