import { describe, expect, it } from 'vitest';
import { readMoney } from '../../src/engine/money';
import {
  amounts,
  area,
  bytes,
  date,
  figure,
  list,
  money,
  moneyTyped,
  roundMoney,
  share,
  typedNumber,
} from '../../src/words';

describe('Numbers and dates as they are written', () => {
  it('dates stand as vague as they are known', () => {
    expect(date('2026-05-12')).toBe('12 May 2026');
    expect(date('2019-05')).toBe('May 2019');
    expect(date('2019')).toBe('2019');
    expect(date('before 2021')).toBe('before 2021');
    expect(date('2026-02-30')).toMatch(/2026/);
  });

  it('a share is never rounded away to nothing or to all', () => {
    expect(share(0)).toBe('0 %');
    expect(share(0.002)).toBe('under 1 %');
    expect(share(0.995)).toBe('over 99 %');
    expect(share(1)).toBe('100 %');
  });

  it('areas have two places while they are small', () => {
    expect(area(0.95)).toBe('0.95 m²');
    expect(area(49.44)).toBe('49.4 m²');
  });

  it('a figure comes with its range in the same measure', () => {
    expect(figure({ value: 63.6, low: 58.4, high: 69 })).toEqual({ value: '64', range: '58 to 69' });
    expect(figure({ value: 0.2, low: 0.15, high: 0.26 }, 'share')).toEqual({ value: '20 %', range: '15 % to 26 %' });
  });

  it('an amount stands with the code of its currency, with cents only where there are some', () => {
    expect(money({ minor: 4_600_000, currency: 'EUR' })).toBe('EUR 46,000');
    expect(money({ minor: 4_600_005, currency: 'EUR' })).toBe('EUR 46,000.05');
    expect(money({ minor: 46_000, currency: 'JPY' })).toBe('JPY 46,000');
    expect(money({ minor: 46_500, currency: 'KWD' })).toBe('KWD 46.500');
    expect(money({ minor: -150, currency: 'CHF' })).toBe('CHF -1.50');
    expect(money({ minor: 6_529_600, currency: 'XXX' })).toBe('demo $ 65,296');
    expect(roundMoney({ minor: 758_549, currency: 'EUR' })).toBe('EUR 7,585');
  });

  it('an amount typed into a field is read again as the same amount', () => {
    for (const amount of [
      { minor: 4_600_000, currency: 'EUR' },
      { minor: 4_600_050, currency: 'EUR' },
      { minor: 7, currency: 'EUR' },
      { minor: 46_000, currency: 'JPY' },
      { minor: 46_500_120, currency: 'KWD' },
      { minor: 46_512, currency: 'KWD' },
      { minor: 512, currency: 'KWD' },
    ])
      expect(readMoney(moneyTyped(amount), amount.currency)).toEqual(amount);
  });

  it('amounts that stand under each other all have cents where one has', () => {
    expect(
      amounts([
        { minor: 100, currency: 'EUR' },
        { minor: 150, currency: 'EUR' },
      ]),
    ).toEqual(['EUR 1.00', 'EUR 1.50']);
  });

  it('bytes are told as a person counts them', () => {
    expect([0, 999, 1500, 1_700_000, 5_100_000_000].map(bytes)).toEqual([
      '0 bytes',
      '999 bytes',
      '2 kB',
      '1.7 MB',
      '5.1 GB',
    ]);
  });

  it('lists are joined as in a sentence', () => {
    expect(list(['A', 'B', 'C'])).toBe('A, B and C');
  });

  it.each([
    ['1,5', 1.5],
    [' 0.25 ', 0.25],
    ['.5', 0.5],
    ['12', 12],
    ['', undefined],
    ['-1', undefined],
    ['1e3', undefined],
    ['1.2.3', undefined],
    ['one', undefined],
  ])('%j is read as %j', (text, number) => {
    expect(typedNumber(text)).toBe(number);
  });
});
