import type { BidComparison, ComparedLine } from '../../engine/campaign';
import { unitsOf } from '../../engine/money';
import { amounts, currency as currencyWord, money, roundMoney, taskName, w, whole } from '../../words';
import '../parts/plainTable.css';

const words = w.campaign.bids;

interface BidTableProps {
  readonly comparison: BidComparison;
  readonly taken: string | undefined;
}

/** Lines down, bidders across: the price of the line, and of one unit of it. */
export function BidTable({ comparison, taken }: BidTableProps) {
  const { bids, lines, currency, sharedLines } = comparison;
  const heads = bids.map(({ bid }) => bid.body.who);
  const sums = [
    { name: words.total, of: amounts(bids.map(({ total }) => total)) },
    ...(bids.length > 1
      ? [{ name: words.shared(sharedLines, lines.length), of: amounts(bids.map(({ shared }) => shared)) }]
      : []),
    {
      name: words.perM2,
      of: bids.map(({ perM2 }) => (perM2 === undefined ? '–' : roundMoney({ minor: Math.round(perM2), currency }))),
    },
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the screen is scrolled by keys too
    <section className="wide-table" tabIndex={0} aria-label={words.caption(currencyWord(currency))}>
      <table className="plain-table cards bid-table">
        <caption>{words.caption(currencyWord(currency))}</caption>
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            {bids.map(({ bid }) => (
              <th key={bid.thing} scope="col" className="of-number">
                {bid.body.who}
                {bid.thing === taken && <span className="chip">{words.isTaken}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((compared) => (
            <tr key={compared.line.id}>
              <th scope="row">
                {compared.line.name}
                {taskName(compared.line.task) !== compared.line.name && (
                  <span className="soft line-detail">{taskName(compared.line.task)}</span>
                )}
                {compared.median !== undefined && (
                  <span className="soft line-detail figures">
                    {words.median} {rate(compared.median, currency, compared)}
                  </span>
                )}
              </th>
              {bids.map(({ bid }) => (
                <PriceCell
                  key={bid.thing}
                  head={bid.body.who}
                  compared={compared}
                  bid={bid.thing}
                  currency={currency}
                />
              ))}
            </tr>
          ))}
        </tbody>
        <tbody className="sums">
          {sums.map(({ name, of }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {of.map((sum, i) => (
                <td key={heads[i]} data-head={heads[i]} className="of-number strong">
                  {sum}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** Whole units without their currency: the caption and the price above say it. */
const round = (minor: number, currency: string): string => whole(unitsOf({ minor: Math.round(minor), currency }));

const rate = (minor: number, currency: string, { line }: ComparedLine): string =>
  `${round(minor, currency)} ${words.perUnit[line.unit]}`.trim();

interface PriceCellProps {
  readonly head: string;
  readonly compared: ComparedLine;
  readonly bid: string;
  readonly currency: string;
}

function PriceCell({ head, compared, bid, currency }: PriceCellProps) {
  const price = compared.prices.get(bid);
  if (!price)
    return (
      <td data-head={head} className="of-number soft">
        {words.notPriced}
      </td>
    );
  const { value, low, high } = price.rate;
  const one = compared.line.unit === 'sum' && compared.line.amount === 1;
  return (
    <td data-head={head} className={price.odd ? 'of-number odd-price' : 'of-number'}>
      <div>
        <span className="strong">{money({ minor: price.minor, currency })}</span>
        {!one && <span className="soft line-detail">{rate(value, currency, compared)}</span>}
        {!one && low < high && (
          <span className="soft line-detail">
            ({round(low, currency)} {w.charts.lastTo} {round(high, currency)})
          </span>
        )}
        {price.odd && <span className="odd-mark line-detail">▲ {words.odd[price.odd]}</span>}
      </div>
    </td>
  );
}
