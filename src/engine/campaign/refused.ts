import { amountRefused } from '../money';
import type { BodyOf, Reason } from '../record';
import { because } from './reasonCodes';

/** Days of a campaign in the order in which they can come. */
const order = ['opened', 'began', 'ended', 'accepted', 'warrantyUntil'] as const;

/** What stands against a campaign as it was entered: its days out of order. */
export const campaignRefused = (body: BodyOf<'campaign'>): Reason | undefined => {
  if (body.takenBid !== undefined && body.takenWhy?.trim() && !body.takenBy)
    return because('campaign: decided by nobody');
  const days = order.flatMap((field) => (body[field] ? [{ field, day: body[field] }] : []));
  return days
    .flatMap((later, i) => {
      const earlier = days[i - 1];
      return earlier && later.day < earlier.day ? [outOfOrder(earlier, later)] : [];
    })
    .at(0);
};

interface DayOf {
  readonly field: string;
  readonly day: string;
}

const outOfOrder = (earlier: DayOf, later: DayOf): Reason =>
  because('campaign: days out of order', {
    earlier: earlier.field,
    later: later.field,
    first: earlier.day,
    last: later.day,
  });

const notBefore = (earlier: DayOf, field: string, day: string | undefined): Reason | undefined =>
  day !== undefined && day < earlier.day ? outOfOrder(earlier, { field, day }) : undefined;

/** A cause that is no longer open says since when, and one that stays says why. */
export const causeRefused = ({ found, changed, state, why }: BodyOf<'cause'>): Reason | undefined => {
  if (state === 'removed' && changed === undefined) return because('campaign: say when it changed');
  if ((state === 'cannot be removed' || state === 'not a cause') && !why?.trim()) return because('campaign: say why');
  return notBefore({ field: 'found', day: found }, 'changed', changed);
};

/** Every line has an amount within its range, and no two lines one name. */
export const quantitiesRefused = ({ items }: BodyOf<'quantities'>): Reason | undefined => {
  const seen = new Set<string>();
  for (const { id, name, amount, low, high } of items) {
    if (seen.has(id)) return because('campaign: line twice', { line: name });
    seen.add(id);
    if (amount <= 0) return because('campaign: line without an amount', { line: name });
    if ((low !== undefined && low > amount) || (high !== undefined && high < amount))
      return because('campaign: line range out of order', { line: name });
  }
  return undefined;
};

/** Prices that can be prices, no line priced twice, days in order. */
export const bidRefused = ({ currency, lines, date, validUntil, withdrawn }: BodyOf<'bid'>): Reason | undefined => {
  const seen = new Set<string>();
  for (const { item, minor } of lines) {
    const refused = amountRefused({ minor, currency });
    if (refused) return refused;
    if (seen.has(item)) return because('campaign: line twice', { line: item });
    seen.add(item);
  }
  const made = { field: 'date', day: date };
  return (
    amountRefused({ minor: 0, currency }) ??
    notBefore(made, 'validUntil', validUntil) ??
    notBefore(made, 'withdrawn', withdrawn)
  );
};

/** A yes, also one with changes, is somebody's: signed, and not before it was asked. */
export const approvalRefused = ({ answer, signed, date }: BodyOf<'approval'>): Reason | undefined => {
  if ((answer === 'yes' || answer === 'with changes') && signed.length === 0)
    return because('campaign: yes without a signature');
  return signed.some(({ on }) => on < date) ? because('campaign: signed before', { date }) : undefined;
};

export const colourCardRefused = ({ words, zones, signed, date }: BodyOf<'colourCard'>): Reason | undefined => {
  if (!words.trim()) return because('campaign: card without words');
  if (zones.length === 0) return because('campaign: card without a zone');
  return signed.some(({ on }) => on < date) ? because('campaign: signed before', { date }) : undefined;
};

/** A letter is not sent before the paper was looked through. */
export const completenessRefused = ({ date, letterSent }: BodyOf<'completeness'>): Reason | undefined =>
  notBefore({ field: 'date', day: date }, 'letterSent', letterSent);
