import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import type { BodyOf } from '../../../src/engine/record';
import { priceTexts, readPrices } from '../../../src/screens/campaign/bidText';
import { placingsText, typedPlacings } from '../../../src/screens/colour/typedPlacings';
import { readRules, rulesText } from '../../../src/screens/money/rulesText';
import { costText, readCost } from '../../../src/screens/options/costText';
import { productBody, productText } from '../../../src/screens/products/productText';
import { areaFrom, draftFrom } from '../../../src/screens/sculptures/areaDraft';
import { draftOf, fieldsOf } from '../../../src/screens/stations/stationDraft';
import { speak, tongueOf } from '../../../src/words/tongue';

afterEach(() => speak(tongueOf('en-GB', 'metric')));

describe.each([
  ['en-GB', 'metric'],
  ['en-US', 'us'],
  ['de-DE', 'metric'],
] as const)('A form opened and kept without a change, in %s with %s units', (locale, units) => {
  beforeEach(() => speak(tongueOf(locale, units)));
  const drawn = drawnFrom(99);
  const upTo = (most: number, places: number) => Number((drawn.uniform() * most).toFixed(places));

  it('keeps the rules of money', () => {
    for (let n = 0; n < 200; n++) {
      const rules = {
        ...{ currency: 'EUR', set: true, rate: upTo(0.3, 4), growth: upTo(0.4, 4) - 0.1, contingency: upTo(1, 4) },
        ...{ years: 1 + drawn.below(100), spending: 0.001 + upTo(0.19, 3) },
      };
      const read = readRules(rulesText(rules));
      expect(read).toHaveProperty('rules');
      if (!('rules' in read)) return;
      for (const key of ['rate', 'growth', 'contingency', 'years', 'spending'] as const)
        expect(read.rules[key]).toBeCloseTo(rules[key], 9);
    }
  });

  it('keeps the cost of a way to go on, and what a bidder measured', () => {
    for (let n = 0; n < 200; n++) {
      const line = {
        ...{ name: 'Wax', amount: { minor: 1 + drawn.below(1e9), currency: 'EUR' }, first: drawn.below(100) },
        ...{ growth: upTo(0.3, 4), price: 'estimate' as const },
      };
      expect(readCost(costText(line, 0), 'EUR')).toEqual({ line });
      const bid = [{ item: 'i1', minor: 1 + drawn.below(1e9), measured: 0.001 + upTo(2000, 2) }];
      expect(
        readPrices([{ id: 'i1', name: 'A', task: 'wax', unit: 'm2', amount: 1 }], priceTexts(bid, 'EUR'), 'EUR').lines,
      ).toEqual(bid.map((one) => ({ ...one, measured: expect.closeTo(one.measured, 9) })));
    }
  });

  it('keeps a station, a tin, an area and colours', () => {
    for (let n = 0; n < 200; n++) {
      const station: BodyOf<'station'> = {
        ...{ sculpture: 'sculpture/a', letter: 'A', order: 1, aim: 'belt', bearing: upTo(359, 1) },
        ...{ distance: 0.001 + upTo(60, 3), height: 0.001 + upTo(9, 3), lens: 1.125 + drawn.below(300) },
      };
      const fields = fieldsOf(draftOf(station));
      expect([fields?.bearing, fields?.lens]).toEqual([station.bearing, station.lens]);
      expect(fields?.distance).toBeCloseTo(station.distance ?? 0, 4);
      expect(fields?.height).toBeCloseTo(station.height ?? 0, 4);
      const tin: BodyOf<'product'> = {
        ...{ name: 'Wax', sort: 'microcrystalline', unit: 'kg', left: 0.001 + upTo(2000, 3), counted: '2026-01-01' },
        ...{ surfaceFrom: upTo(30, 1), surfaceTo: 30 + upTo(9, 1) },
      };
      expect(productBody(productText(tin, '2026-01-02'))).toMatchObject({
        ...{ left: expect.closeTo(tin.left ?? 0, 9), surfaceFrom: expect.closeTo(tin.surfaceFrom ?? 0, 4) },
      });
      const m2 = 0.001 + upTo(1500, 3);
      expect(areaFrom(draftFrom({ m2, low: m2 * 0.8, high: m2 * 1.2, method: 'typed' }))?.m2).toBeCloseTo(m2, 2);
      const colours = [{ L: upTo(99, 3), a: upTo(60, 3) - 30, b: Number((upTo(60, 3) - 30).toFixed(3)) }];
      expect(typedPlacings(placingsText(colours)).values).toEqual(
        colours.map(({ L, a, b }) => ({ L, a: expect.closeTo(a, 9), b })),
      );
    }
  });

  it('an instrument’s own figures are read whatever the language', () => {
    expect(typedPlacings('45.123 1.234 -0.456\n45,123 1,234 -0,456').values).toEqual([
      { L: 45.123, a: 1.234, b: -0.456 },
      { L: 45.123, a: 1.234, b: -0.456 },
    ]);
  });
});
