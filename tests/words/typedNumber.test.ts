import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { drawnFrom } from '../../src/engine/chance';
import { isMoney, readMoney } from '../../src/engine/money';
import {
  fieldText,
  fromUnit,
  inUnit,
  money,
  moneyTyped,
  number,
  numberTyped,
  percentTyped,
  type Quantity,
  readBack,
  readBackMoney,
  readTyped,
  typedHours,
  typedMeasure,
  typedNumber,
  typedPercent,
  typedRise,
} from '../../src/words';
import { speak, tongueOf } from '../../src/words/tongue';

const quantities: readonly Quantity[] = ['area', 'length', 'centimetres', 'millimetres', 'temperature', 'difference'];
const usual = () => speak(tongueOf('en-GB', 'metric'));
afterEach(usual);

describe.each([
  ['en-GB', 'metric'],
  ['en-GB', 'us'],
  ['en-US', 'us'],
  ['de-DE', 'metric'],
  ['de-DE', 'us'],
] as const)('In %s with %s units', (locale, units) => {
  beforeEach(() => speak(tongueOf(locale, units)));

  it('what the app writes into a field or a sentence is read as the value it wrote (2,400 drawn)', () => {
    const drawn = drawnFrom(1126);
    for (let n = 0; n < 2400; n++) {
      const places = drawn.below(4);
      const shown = Number((10 ** (drawn.uniform() * 8 - 2)).toFixed(places));
      expect({ shown, read: typedNumber(numberTyped(shown)) }).toEqual({ shown, read: shown });
      expect({ shown, read: typedNumber(number(shown, 3)) }).toEqual({ shown, read: shown });
      for (const quantity of quantities) {
        const kept = fromUnit(quantity, shown);
        const text = fieldText(quantity, kept);
        const again = typedMeasure(quantity, text) ?? Number.NaN;
        // A field holds seven figures of the unit shown, and five places.
        const off = Math.abs(inUnit(quantity, again) - inUnit(quantity, kept));
        expect({ text, near: off <= 1e-5 + 1e-6 * shown }).toEqual({ text, near: true });
      }
    }
  });

  it('an amount, in a field or in a sentence, is read to the cent (2,000 drawn)', () => {
    const drawn = drawnFrom(77);
    for (let n = 0; n < 2000; n++) {
      const currency = ['EUR', 'USD', 'CHF', 'JPY', 'KWD', 'XXX'][drawn.below(6)] ?? 'EUR';
      const amount = { minor: Math.floor(10 ** (drawn.uniform() * 10)), currency };
      expect(readMoney(moneyTyped(amount), currency)).toEqual(amount);
      const said = readMoney(money(amount).replace('demo ', ''), currency);
      if (isMoney(said)) expect(said).toEqual(amount);
      else expect(said.code).toBe('money: read two ways');
    }
  });

  it('a share comes back as it was kept', () => {
    for (let n = 0; n <= 1000; n++) expect(typedPercent(percentTyped(n / 1000))).toBeCloseTo(n / 10, 6);
  });

  it('one mark with three figures after it is read in the way of the language, and the field says so', () => {
    const [own, other] = locale === 'de-DE' ? [',', '.'] : ['.', ','];
    expect(typedNumber(`1${other}500`)).toBe(1500);
    expect(typedNumber(`1${own}500`)).toBe(1.5);
    for (const mark of ['.', ',']) expect(readBack(`1${mark}500`, 'length').told).toMatch(/1500|1[.,]5/);
    for (const text of ['1500', `1${own}5`, `1${other}5`, '0.500', '0,500', '1 500'])
      expect(readBack(text, 'length')).toEqual({});
  });
});

describe('In German', () => {
  beforeEach(() => speak(tongueOf('de-DE', 'metric')));

  it('1.500 is fifteen hundred, and 1.5 from a keypad one and a half', () => {
    expect(typedMeasure('length', '1.500')).toBe(1500);
    expect(typedMeasure('length', '1.5')).toBe(1.5);
    expect(typedMeasure('area', '0.75')).toBe(0.75);
    expect(typedMeasure('area', '1.500,25')).toBe(1500.25);
    expect(readBack('1.500', 'length').told?.replace('\u00a0', ' ')).toMatch(/1500 m/);
  });

  it('an amount with a comma and three figures is read as thousands, and the field says so', () => {
    expect(readMoney('46,000', 'EUR')).toEqual({ minor: 4_600_000, currency: 'EUR' });
    expect(readBackMoney('46,000', 'EUR').told).toMatch(/46000.*46/);
    expect(readBackMoney('46.000', 'EUR')).toEqual({});
  });
});

describe('A measure', () => {
  it.each<[Quantity, string, number]>([
    ['centimetres', '12 cm', 12],
    ['centimetres', '1.2 m', 120],
    ['length', '185 cm', 1.85],
    ['length', '5 ft', 1.524],
    ['length', '5\' 6 1/2"', 1.6891],
    ['area', '0.75 m²', 0.75],
    ['area', '8 sq ft', 0.74322432],
    ['temperature', '-3 °C', -3],
    ['temperature', '212 F', 100],
    ['difference', '9 °F', 5],
    ['millimetres', '1/8"', 3.175],
    ['millimetres', '3 1/2 in', 88.9],
  ])('%s: %s is %d in the record (factors of NIST SP 811, appendix B)', (quantity, text, kept) => {
    expect(typedMeasure(quantity, text)).toBeCloseTo(kept, 7);
  });

  it('reads feet, inches and fractions where feet are shown', () => {
    speak(tongueOf('en-US', 'us'));
    expect(typedMeasure('length', '5\' 6 1/2"')).toBeCloseTo(1.6891, 7);
    expect(typedMeasure('length', '5½')).toBeCloseTo(1.6764, 7);
    expect(typedMeasure('length', '2 m')).toBe(2);
    expect(typedMeasure('centimetres', '3-1/2')).toBeCloseTo(8.89, 7);
    expect(typedMeasure('temperature', '140')).toBe(60);
    expect(readBack('66 in', 'length').told?.replace('\u00a0', ' ')).toBe('Read as 5.5 ft.');
  });

  it.each<[Quantity, string]>([
    ['length', '12 kg'],
    ['length', '-3'],
    ['area', '12 cm'],
    ['area', "5' 6"],
    ['length', '1,5,0'],
    ['length', 'twelve'],
    ['temperature', '5 m'],
  ])('%s: %s is none, and the field says what to write', (quantity, text) => {
    expect(typedMeasure(quantity, text)).toBeUndefined();
    if (text !== '-3') expect(readBack(text, quantity).fault).toMatch(/1500 or 2\.5/);
  });
});

describe('Per cent and hours', () => {
  it.each([
    ['5 %', 5],
    ['5%', 5],
    ['12,5 %', 12.5],
    ['-2', undefined],
    ['5 m', undefined],
  ])('%s is %j per cent', (text, value) => {
    expect(typedPercent(text)).toBe(value);
  });

  it('what may fall is read below nought', () => {
    expect([typedRise('−2,5 %'), typedRise('-2.5')]).toEqual([-2.5, -2.5]);
  });

  it.each([
    ['2.5', 2.5],
    ['2,5 h', 2.5],
    ['2:30', 2.5],
    ['2 h 30', 2.5],
    ['2 h 30 min', 2.5],
    ['45 min', 0.75],
    ['1½', 1.5],
    ['3 Std.', 3],
    ['2:75', undefined],
    ['3 m', undefined],
    ['-1', undefined],
  ])('%s is %j hours', (text, value) => {
    expect(typedHours(text)).toBe(value);
  });

  it('what was put into other figures is told', () => {
    expect(readBack('2:30', 'hours').told).toBe('Read as 2.5.');
    expect(readTyped('2.5', 'hours')?.converted).toBe(false);
  });
});
