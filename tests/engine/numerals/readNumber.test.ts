import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import { type DecimalMark, plainFigures, readFeetAndInches, readNumber, splitUnit } from '../../../src/engine/numerals';

const both = ['.', ','] as const;

describe('A number as a person types it', () => {
  it.each([
    ['1500', 1500],
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['0.500', 0.5],
    ['0,125', 0.125],
    ['.5', 0.5],
    [',25', 0.25],
    ['1 500', 1500],
    ['1\u00a0500', 1500],
    ['1\u202f500,25', 1500.25],
    ['1\u2009234\u2009567', 1_234_567],
    ['1’500.75', 1500.75],
    ["12'500", 12_500],
    ['1.500,5', 1500.5],
    ['1,500.5', 1500.5],
    ['1.234.567', 1_234_567],
    ['1,234,567.125', 1_234_567.125],
    ['1234.567', 1234.567],
    ['1234,567', 1234.567],
    ['-3', -3],
    ['−3,5', -3.5],
    ['– 0.25', -0.25],
    ['+2', 2],
    ['０.７５', 0.75],
    ['１２，５', 12.5],
    ['١٢٫٥', 12.5],
    ['۱۲', 12],
    ['3 1/2', 3.5],
    ['3-1/2', 3.5],
    ['3½', 3.5],
    ['¾', 0.75],
    ['1/8', 0.125],
    [' 007 ', 7],
  ])('%s is read the same in every language, as %d', (text, value) => {
    for (const decimal of both) {
      expect(readNumber(text, decimal)?.value).toBe(value);
      expect(readNumber(text, decimal)?.other).toBeUndefined();
    }
  });

  it.each<[string, DecimalMark, number, number]>([
    ['1.500', ',', 1500, 1.5],
    ['1.500', '.', 1.5, 1500],
    ['1,500', '.', 1500, 1.5],
    ['1,500', ',', 1.5, 1500],
    ['-12.125', ',', -12_125, -12.125],
    ['999,999', '.', 999_999, 999.999],
  ])(
    '%s can mean two things a thousandfold apart: it is read as the language with “%s” has it, and the other is told',
    (text, decimal, value, other) => {
      expect(readNumber(text, decimal)).toEqual({ value, other });
    },
  );

  it.each([
    '',
    ' ',
    '.',
    ',',
    '-',
    '1.',
    '1,',
    '1,5,0',
    '1.50.000',
    '1,00,000',
    '12 34',
    '1 5',
    '4 60 00',
    '1..5',
    '1,500,25',
    '1.500 000',
    '1 500.000.000',
    '1e3',
    '0 500',
    '0.500.000',
    '0x10',
    'one',
    '12 cm',
    '3/0',
    '5/4',
    '1 500 1/2',
    '--3',
    '5²',
    '②',
    'Infinity',
    '9'.repeat(16),
  ])('“%s” is no number, in no language', (text) => {
    for (const decimal of both) expect(readNumber(text, decimal)).toBeUndefined();
  });

  it('nought below nought is nought', () => {
    expect(Object.is(readNumber('-0', '.')?.value, 0)).toBe(true);
  });
});

/** Every way a locale writes a value with so many places. Intl is the check: it shares nothing with the reader. */
const locales = ['en-GB', 'en-US', 'de-DE', 'de-CH', 'de-AT'] as const;
const formats = new Map<string, Intl.NumberFormat>();
const writtenIn = (locale: string, value: number, places: number, useGrouping: boolean): string => {
  const key = `${locale} ${places} ${useGrouping}`;
  const format =
    formats.get(key) ??
    new Intl.NumberFormat(locale, { minimumFractionDigits: places, maximumFractionDigits: places, useGrouping });
  formats.set(key, format);
  return plainFigures(format.format(value));
};
const waysToWrite = (value: number, places: number): string[] =>
  locales.flatMap((locale) => [true, false].map((groups) => writtenIn(locale, value, places, groups)));
const markOf = (locale: string): DecimalMark =>
  new Intl.NumberFormat(locale).formatToParts(0.5).find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';

describe('Against Intl.NumberFormat', () => {
  it.each(locales)('whatever %s writes, grouped or not, is read as the value written (4,000 drawn)', (locale) => {
    const drawn = drawnFrom(20_261_126);
    const mark = markOf(locale);
    for (let n = 0; n < 4000; n++) {
      const places = drawn.below(6);
      const value = Number((10 ** (drawn.uniform() * 9 - 3)).toFixed(places)) * (drawn.below(4) === 0 ? -1 : 1) + 0;
      for (const grouped of [true, false]) {
        const text = writtenIn(locale, value, places, grouped);
        expect({ text, value: readNumber(text, mark)?.value }).toEqual({ text, value });
      }
    }
  });

  it('no text of figures and marks is read as what nobody writes so, and one that can be read a thousandfold off says so', () => {
    const drawn = drawnFrom(7);
    const signs = "0011223456789005.,.,' ";
    let [read, twoWays] = [0, 0];
    for (let n = 0; n < 6_000; n++) {
      const text = Array.from({ length: 1 + drawn.below(9) }, () => signs.charAt(drawn.below(signs.length))).join('');
      const plain = plainFigures(text)
        .replace(/^(?=[.,])/, '0')
        .replace(/^0+(?=\d)/, '');
      const places = Math.max(0, plain.length - 1 - Math.max(plain.lastIndexOf('.'), plain.lastIndexOf(',')));
      for (const decimal of both) {
        const got = readNumber(text, decimal);
        if (!got) continue;
        read++;
        if (got.other !== undefined) twoWays++;
        // Spaces and apostrophes stand between thousands alike.
        const alike = (value: number) =>
          [0, places].some((p) =>
            waysToWrite(value, p).some((way) => way.replaceAll("'", ' ') === plain.replaceAll("'", ' ')),
          );
        // A number that begins with noughts is no group of thousands: "0.500", "007.500".
        const short = plain !== plainFigures(text) && /^[\d]*[.,]\d{3}$/.test(plain);
        expect({ text, attested: alike(got.value) }).toEqual({ text, attested: true });
        for (const off of [got.value * 1000, got.value / 1000]) {
          if (off === 0 || short || Math.abs(off) >= 1e12) continue;
          const rounded = Number(off.toFixed(places));
          if (Math.abs(rounded - off) > 1e-9 * Math.abs(off) || !alike(rounded)) continue;
          expect({ text, other: got.other }).toEqual({ text, other: rounded });
        }
      }
    }
    expect(read).toBeGreaterThan(1_000);
    expect(twoWays).toBeGreaterThan(40);
  });
});

describe('A unit typed along', () => {
  it.each([
    ['12 cm', '12', 'cm'],
    ['12cm', '12', 'cm'],
    ['1 200 $', '1 200', '$'],
    ['5 %', '5', '%'],
    ['0,75 m²', '0,75', 'm2'],
    ['8 sq. ft.', '8', 'sqft'],
    ['-3 °C', '-3', 'c'],
    ['3½″', '3 1/2', '"'],
    ['5’', '5', "'"],
    ['40', '40', ''],
  ])('%s', (text, number, unit) => {
    expect(splitUnit(text)).toEqual({ number, unit });
  });

  it.each([
    ['5\' 6 1/2"', 5 + 6.5 / 12],
    ['5’6', 5.5],
    ['5′ 6″', 5.5],
    ['5 ft 6 in', 5.5],
    ['5ft. 6½in.', 5 + 6.5 / 12],
    ['5 Fuß 3 Zoll', 5.25],
    ['10\'-0"', 10],
    ['6\' 11.5"', 6 + 11.5 / 12],
  ])('%s is a length in feet', (text, feet) => {
    expect(readFeetAndInches(text, '.')?.value).toBeCloseTo(feet, 12);
  });

  it.each(['5\' 12"', "5' 600", "5'", '5" 6\'', '-5\' 6"', "5' six"])('%s is none', (text) => {
    expect(readFeetAndInches(text, '.')).toBeUndefined();
  });
});
