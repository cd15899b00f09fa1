import { addDays, type BodyOf, daysBetween, type Reason } from '../record';
import { optionNumbers } from './numbers';
import { because } from './reasonCodes';

type Quote = Pick<BodyOf<'quote'>, 'state' | 'validUntil' | 'renewedBy'>;

export interface QuoteStanding {
  readonly word: 'renewed' | 'paid' | 'no end said' | 'expired' | 'ends soon' | 'valid';
  /** Days it still holds: 0 on its last day, under 0 once it is over; null where nothing is said. */
  readonly days: number | null;
  readonly reason: Reason;
}

/** Whether a price somebody gave still stands; `today` YYYY-MM-DD. It holds through its last day. */
export const quoteStanding = ({ state, validUntil, renewedBy }: Quote, today: string): QuoteStanding => {
  if (state === 'actual') return { word: 'paid', days: null, reason: because('quote: paid') };
  if (renewedBy !== undefined) return { word: 'renewed', days: null, reason: because('quote: renewed') };
  if (validUntil === undefined) return { word: 'no end said', days: null, reason: because('quote: no end said') };
  const days = daysBetween(today, validUntil);
  const params = { date: validUntil, days: Math.abs(days) };
  if (days < 0) return { word: 'expired', days, reason: because('quote: expired', params) };
  return days <= optionNumbers.quoteSoon.value
    ? { word: 'ends soon', days, reason: because('quote: ends soon', params) }
    : { word: 'valid', days, reason: because('quote: valid', params) };
};

/** The last day of a quote that holds so many days from its date. */
export const lastDayOfQuote = (date: string, days: number): string => addDays(date, days);
