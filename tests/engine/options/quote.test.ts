import { describe, expect, it } from 'vitest';
import { moneyOf } from '../../../src/engine/money';
import { lastDayOfQuote, optionRefused, quoteRefused, quoteStanding, rulesRefused } from '../../../src/engine/options';
import { stripAll } from './halfTideStair';

const quote = {
  who: 'A foundry',
  what: 'Strip and patina',
  amount: moneyOf(46_000, 'XXX'),
  state: 'quote' as const,
  date: '2024-10-07',
  validUntil: '2025-04-05',
};

describe('A quote', () => {
  it('of 180 days counts down to its last day, and is over the day after', () => {
    expect(lastDayOfQuote('2024-10-07', 180)).toBe('2025-04-05');
    const on = (today: string) => quoteStanding(quote, today);
    expect(on('2024-10-07')).toMatchObject({ word: 'valid', days: 180 });
    expect(on('2025-03-06')).toMatchObject({ word: 'ends soon', days: 30 });
    expect(on('2025-04-05')).toMatchObject({ word: 'ends soon', days: 0 });
    expect(on('2025-04-06')).toMatchObject({ word: 'expired', days: -1 });
    expect(on('2025-04-06').reason).toEqual({ code: 'quote: expired', params: { date: '2025-04-05', days: 1 } });
  });

  it('that was renewed or paid is no quote any more, however old; one without an end says so', () => {
    expect(quoteStanding({ ...quote, renewedBy: 'quote/2' }, '2026-10-15').word).toBe('renewed');
    expect(quoteStanding({ ...quote, state: 'actual' }, '2026-10-15').word).toBe('paid');
    const { validUntil: _, ...open } = quote;
    expect(quoteStanding(open, '2026-10-15').word).toBe('no end said');
  });
});

describe('Bad input is refused', () => {
  it.each([
    [{ validUntil: '2024-10-06' }, 'quote: ends before it begins'],
    [{ date: '2026-10-16' }, 'quote: dated after today'],
    [{ renewedBy: 'quote/1' }, 'quote: renews itself'],
    [{ amount: { minor: -1, currency: 'XXX' } }, 'money: below nothing'],
    [{ amount: { minor: 1e15, currency: 'XXX' } }, 'money: too large'],
  ])('a quote that cannot be so: %o', (more, code) => {
    const against = { ...quote, validUntil: '2027-01-01', ...more };
    expect(quoteRefused(against, 'quote/1', '2026-10-15')).toMatchObject({ code });
  });

  it('a quote as it was given is taken, in a currency of its own too', () => {
    expect(quoteRefused({ ...quote, amount: moneyOf(1, 'CHF') }, 'quote/1', '2026-10-15')).toBeUndefined();
  });

  const line = { name: 'Strip', amount: moneyOf(1, 'XXX'), first: 5, price: 'quote' as const };
  it.each([
    [{ costs: [{ ...line, last: 4 }] }, 'option: last before first'],
    [{ costs: [line, { ...line, amount: moneyOf(1, 'EUR') }] }, 'money: currencies mixed'],
    [{ costs: [{ ...line, amount: moneyOf(1, 'EUR') }] }, 'money: not the currency here'],
    [{ costs: [{ ...line, amount: { minor: -5, currency: 'XXX' } }] }, 'money: below nothing'],
    [{ goodMonths: { value: 5, low: 6, high: 7, from: 'said' as const } }, 'option: months out of order'],
  ])('an option that cannot be so: %o', (more, code) => {
    expect(optionRefused({ ...stripAll.body, ...more }, 'XXX')).toMatchObject({ code });
  });

  it('an option in order is taken, before a currency is set too', () => {
    expect(optionRefused(stripAll.body, 'XXX')).toBeUndefined();
    expect(optionRefused(stripAll.body, undefined)).toBeUndefined();
  });

  it('the currency of the collection changes only while nothing is in another', () => {
    expect(rulesRefused({ currency: 'EUR' }, ['XXX', 'EUR', 'XXX'])).toEqual({
      code: 'money: currency in use',
      params: { currency: 'XXX', count: 2 },
    });
    expect(rulesRefused({ currency: 'EUR' }, ['EUR'])).toBeUndefined();
    expect(rulesRefused({ currency: 'EUR' }, [])).toBeUndefined();
  });
});
