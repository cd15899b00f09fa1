import { afterEach, expect, it } from 'vitest';
import { area, figure, fromUnit, measure, measureTyped, type Quantity, typedNumber } from '../../src/words';
import { speak } from '../../src/words/tongue';

const us = () => speak({ language: 'en', locale: 'en-US', units: 'us' });
// No line ends between a figure and its unit.
const plain = (text: string) => text.replace('\u00a0', ' ');
afterEach(() => speak({ language: 'en', locale: 'en-GB', units: 'metric' }));

// NIST Special Publication 811 (2008), appendix B.8 and B.9: 1 ft2 = 9.290 304 E-02 m2, 1 ft = 3.048 E-01 m, 1 in = 2.54 cm.
it.each<[Quantity, number, number]>([
  ['area', 1, 0.09290304],
  ['area', 10, 0.9290304],
  ['length', 1, 0.3048],
  ['centimetres', 1, 2.54],
  ['millimetres', 1, 25.4],
  // ITS-90 and the definition of the degree Fahrenheit: water freezes at 32 °F and boils at 212 °F; the two scales meet at -40.
  ['temperature', 32, 0],
  ['temperature', 212, 100],
  ['temperature', -40, -40],
  ['difference', 9, 5],
])('%s: %d in the unit of the United States is %d in the record', (quantity, typed, kept) => {
  us();
  expect(fromUnit(quantity, typed)).toBeCloseTo(kept, 7);
});

it('what was typed comes back as it was typed, after any number of openings of the form', () => {
  us();
  for (const quantity of ['area', 'length', 'centimetres', 'millimetres', 'temperature', 'difference'] as const)
    for (let n = 1; n < 400; n++) {
      const typed = String(n / 8);
      let text = typed;
      for (let opened = 0; opened < 3; opened++) text = measureTyped(quantity, fromUnit(quantity, Number(text)));
      expect({ quantity, text }).toEqual({ quantity, text: typed });
    }
});

it('the record does not move when a form is opened and kept in the other unit without a change', () => {
  us();
  for (let n = 1; n < 2000; n++) {
    const kept = n / 100;
    expect(Math.abs(fromUnit('area', Number(measureTyped('area', kept))) - kept)).toBeLessThan(kept * 1e-5);
  }
});

it('shows areas, heights and temperatures with the unit chosen', () => {
  expect([area(0.95), measure('length', 3.2), measure('temperature', 60)].map(plain)).toEqual([
    '0.95 m²',
    '3.2 m',
    '60 °C',
  ]);
  expect(figure({ value: 0.95, low: 0.8, high: 1.2 }, 'm2')).toEqual({ value: '0.95 m²', range: '0.80 to 1.20' });
  us();
  expect([area(0.95), measure('length', 3.2), measure('temperature', 60)].map(plain)).toEqual([
    '10.2 ft²',
    '10.5 ft',
    '140 °F',
  ]);
  expect(figure({ value: 0.95, low: 0.8, high: 1.2 }, 'm2')).toEqual({ value: '10.2 ft²', range: '8.61 to 12.9' });
});

it('stand in a field with a comma in German, and are read again from it', () => {
  speak({ language: 'de', locale: 'de-DE', units: 'metric' });
  expect(measureTyped('area', 0.45)).toBe('0,45');
  expect(typedNumber(measureTyped('length', 1.85))).toBe(1.85);
});
