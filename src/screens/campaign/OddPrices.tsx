import type { BidComparison } from '../../engine/campaign';
import { midSentence, sayReason, w } from '../../words';
import { Notice } from '../parts';

const words = w.campaign.bids;

/** What of a price is more than how its rate was reckoned: something to ask the bidder about. */
const asks = new Set([
  'campaign: price out of line',
  'campaign: price far below',
  'campaign: area measured otherwise',
  'campaign: priced at nothing',
]);

/** What is to be asked of bidders, line by line. */
export function OddPrices({ comparison }: { readonly comparison: BidComparison }) {
  const { bids, lines } = comparison;
  const odd = bids.flatMap(({ bid: { thing, body } }) =>
    lines.flatMap(({ line, prices }) =>
      (prices.get(thing)?.rate.reasons ?? [])
        .filter(({ code }) => asks.has(code))
        .map((reason) => words.oddOf(body.who, line.name, midSentence(sayReason(reason)))),
    ),
  );
  if (odd.length === 0) return null;
  return (
    <Notice kind="caution" title={words.oddList}>
      <ul>
        {odd.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Notice>
  );
}
