import { expect, it } from 'vitest';
import { isMoney, type Money, mostUnits, readMoney, sumOf, sumsByCurrency, times } from '../../../src/engine/money';

const eur = (minor: number): Money => ({ minor, currency: 'EUR' });

it.each([
  ['46000', 4_600_000],
  ['46 000', 4_600_000],
  ['46,000', 4_600_000],
  ['46.000', 4_600_000],
  ['46’000.50', 4_600_050],
  ['46,000.5', 4_600_050],
  ['46.000,05', 4_600_005],
  ['1.234.567', 123_456_700],
  ['1,234,567.89', 123_456_789],
  ['0.5', 50],
  ['12,-', undefined],
  ['12 –', 1200],
  ['0', 0],
  [' 7 ', 700],
])('an amount as people write it is read to the cent: %s', (text, minor) => {
  const read = readMoney(text, 'EUR');
  if (minor === undefined) expect(isMoney(read)).toBe(false);
  else expect(read).toEqual(eur(minor));
});

it('a yen has no cents, a dinar a thousand of them', () => {
  expect(readMoney('46,000', 'JPY')).toEqual({ minor: 46_000, currency: 'JPY' });
  expect(readMoney('46,000.5', 'JPY')).toMatchObject({ code: 'money: too many places' });
  expect(readMoney('46.5', 'KWD')).toEqual({ minor: 46_500, currency: 'KWD' });
  expect(readMoney('46.500', 'KWD')).toMatchObject({ code: 'money: read two ways' });
  expect(readMoney('1,046.500', 'KWD')).toEqual({ minor: 1_046_500, currency: 'KWD' });
  expect(readMoney('046.500', 'KWD')).toEqual({ minor: 46_500, currency: 'KWD' });
  expect(readMoney('0.500', 'KWD')).toEqual({ minor: 500, currency: 'KWD' });
});

it.each([
  ['', 'money: no amount'],
  ['about 400', 'money: not an amount'],
  ['4,00,000', 'money: not an amount'],
  ['12.34.56', 'money: not an amount'],
  ['1e5', 'money: not an amount'],
  ['-40', 'money: below nothing'],
  ['−40', 'money: below nothing'],
  ['46.0005', 'money: too many places'],
  ['9'.repeat(14), 'money: too large'],
  ['9'.repeat(400), 'money: too large'],
])('what is no price is refused and not guessed at: “%s”', (text, code) => {
  expect(readMoney(text, 'EUR')).toMatchObject({ code });
});

it('a currency that is none is refused', () => {
  expect(readMoney('40', 'euro')).toMatchObject({ code: 'money: not a currency' });
  expect(readMoney('40', '')).toMatchObject({ code: 'money: not a currency' });
});

it('amounts of two currencies are never added', () => {
  const list = [eur(100), { minor: 100, currency: 'CHF' }, eur(50)];
  expect(sumOf(list)).toEqual({ code: 'money: currencies mixed', params: { one: 'EUR', other: 'CHF' } });
  expect(sumOf([{ minor: 5, currency: 'CHF' }], 'EUR')).toMatchObject({ code: 'money: currencies mixed' });
  expect(sumsByCurrency(list)).toEqual([eur(150), { minor: 100, currency: 'CHF' }]);
});

it('a sum of nothing is nothing only where its currency is named', () => {
  expect(sumOf([], 'EUR')).toEqual(eur(0));
  expect(sumOf([])).toMatchObject({ code: 'money: not a currency' });
  expect(sumOf([eur(1), eur(2)])).toEqual(eur(3));
});

it('a share of an amount is rounded to the cent', () => {
  expect(times(eur(5_830_000), 0.12)).toEqual(eur(699_600));
  expect(times(eur(5), 0.5)).toEqual(eur(3));
  expect(Object.is(times(eur(0), -1).minor, 0)).toBe(true);
});

it('the largest amount read is kept without loss of a cent', () => {
  const read = readMoney(`${mostUnits}`, 'CLF');
  expect(isMoney(read) && Number.isSafeInteger(read.minor)).toBe(true);
});

it.each([
  ['1 200 €', 'EUR', 120_000],
  ['EUR 46,000', 'EUR', 4_600_000],
  ['eur 12.50', 'EUR', 1250],
  ['$1,200.50', 'USD', 120_050],
  ['1.200 $', 'CAD', 120_000],
  ['£40', 'GBP', 4000],
  ['46’000 CHF', 'CHF', 4_600_000],
  ['$ 12', 'XXX', 1200],
  ['１２００', 'EUR', 120_000],
  ['1\u00a0234\u00a0567', 'EUR', 123_456_700],
  ['1\u202f234\u202f567,50', 'EUR', 123_456_750],
])('an amount is read with its currency beside it: %s', (text, currency, minor) => {
  expect(readMoney(text, currency)).toEqual({ minor, currency });
});

it.each([
  ['CHF 500', 'EUR'],
  ['$ 500', 'EUR'],
  ['12 50', 'EUR'],
  ['4 60 00', 'EUR'],
  ["1'5", 'EUR'],
])('another currency, or figures with a gap in them, are no amount: %s', (text, currency) => {
  expect(readMoney(text, currency)).toMatchObject({ code: 'money: not an amount' });
});
