import { isMoney, moneyOf, sumOf, unitsOf } from '../money';
import type { Lists } from './planned';
import { because } from './reasonCodes';
import { cannotTell, met, notMet, type Tripwire, type TripwireState } from './tripwireState';

export type MoneyLists = Lists<'quote' | 'fund' | 'gift'>;

/** Does what is in hand reach so many whole units of the fund's currency? Pledged and hoped are no money yet. */
export const fundTripwire = ({ level = 0 }: Tripwire, { fund, gift }: MoneyLists, today: string): TripwireState => {
  const open = fund.filter(({ body }) => body.closed === undefined || body.closed > today).map(({ thing }) => thing);
  if (open.length === 0) return cannotTell(because('tripwire: no fund'));
  const inHand = gift.filter(({ body }) => body.state === 'in hand' && open.includes(body.fund));
  const currency =
    inHand[0]?.body.amount.currency ?? fund.find(({ body }) => body.lines.length > 0)?.body.lines[0]?.amount.currency;
  if (currency === undefined) return cannotTell(because('tripwire: no fund'));
  const sum = sumOf(
    inHand.map(({ body }) => body.amount),
    currency,
  );
  if (!isMoney(sum)) return cannotTell(because('tripwire: fund of several currencies'));
  const reason = because('tripwire: fund', { sum: unitsOf(sum), level, currency });
  if (sum.minor < moneyOf(level, currency).minor) return notMet(reason);
  const days = inHand.flatMap(({ body }) => body.received ?? []).sort();
  return met(days.at(-1) ?? today, reason);
};

/** Has a price that was given run out without another in its place? */
export const quoteTripwire = ({ quote }: MoneyLists, today: string): TripwireState => {
  const standing = quote.filter(({ body }) => body.state === 'quote' && body.renewedBy === undefined);
  if (standing.length === 0) return cannotTell(because('tripwire: no quote'));
  const ended = standing
    .filter(({ body }) => body.validUntil !== undefined && body.validUntil < today)
    .sort((a, b) => ((a.body.validUntil ?? '') < (b.body.validUntil ?? '') ? 1 : -1));
  const last = ended[0]?.body.validUntil;
  if (last === undefined) return notMet(because('tripwire: quotes stand', { count: standing.length }));
  return met(
    last,
    ...ended.map(({ body }) => because('tripwire: quote ended', { who: body.who, date: body.validUntil ?? '' })),
  );
};
