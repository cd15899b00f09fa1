import type { StoreRow } from '../../engine/care';
import { sortOfProduct } from '../../engine/trade';
import { date, number, sayReason, w } from '../../words';
import { OnIcon } from '../parts';

const words = w.products;

const unitOf = (unit: string): string => (words.units as Readonly<Record<string, string>>)[unit] ?? unit;
export const amountOf = (amount: number, unit = ''): string => words.amount(number(amount, 2), unitOf(unit));

/** One tin: what it is, how much is left and how far it goes, and what is amiss with it. Opens to be changed. */
export function ProductRow({ row, onOpen }: { readonly row: StoreRow; readonly onOpen: () => void }) {
  const { product, left, used, uses, rate, reaches, flags } = row;
  const { body } = product;
  const small = (n: number) => number(n, n < 10 ? 1 : 0);
  const facts: readonly (readonly [string, string] | false)[] = [
    [words.left, left === undefined ? words.nobodyCounts : amountOf(left, body.unit)],
    body.expires !== undefined && [words.expires, date(body.expires)],
    uses > 0 && [words.used, words.usedOf(amountOf(used, body.unit), uses)],
    uses > 0 && [
      words.rate,
      rate ? words.rateOf(small(rate.value), small(rate.low), small(rate.high), unitOf(rate.unit)) : words.rateNone,
    ],
    reaches !== undefined && [
      words.reaches,
      words.reachesOf(small(reaches.value), small(reaches.low), small(reaches.high)),
    ],
    body.sheet !== undefined && [
      words.sheet,
      [body.sheet, body.sheetDate && date(body.sheetDate)].filter(Boolean).join(', '),
    ],
  ];
  return (
    <li>
      <button type="button" className="line" onClick={onOpen}>
        <span className="grow">
          <span className="strong">{[body.name, body.batch].filter(Boolean).join(', ')}</span>
          <span className="soft line-detail">{sortOfProduct(body.sort)?.name ?? body.sort}</span>
          {flags.map((flag) => (
            <span key={flag} className="chip product-flag">
              {words.flags[flag]}
            </span>
          ))}
          <span className="product-facts">
            {facts.map(
              (fact) =>
                fact && (
                  <span key={fact[0]} className="line-detail">
                    <span className="soft">{fact[0]}:</span> {fact[1]}
                  </span>
                ),
            )}
            {rate?.reasons.map((reason) => (
              <span key={reason.code} className="soft line-detail">
                {sayReason(reason)}
              </span>
            ))}
          </span>
        </span>
        <span className="unseen">{words.edit}</span>
        <OnIcon />
      </button>
    </li>
  );
}
