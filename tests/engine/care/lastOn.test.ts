import { describe, expect, it } from 'vitest';
import { otherProduct } from '../../../src/engine/care';
import type { SculptureRecord } from '../../../src/engine/record';
import { zoneName } from '../change/invented';
import { tended } from '../hold/garden';

const [A, B] = [zoneName('A'), zoneName('B')];
const record = (
  ...rows: readonly { date: string; product?: string; zones?: readonly string[]; type?: string }[]
): SculptureRecord => {
  const made = tended({
    zones: { A: {}, B: {}, C: {} },
    treatments: rows.map(({ date, zones, type = 'wax' }) => ({ type, date, ...(zones ? { zones } : {}) })),
  });
  return {
    ...made,
    treatments: made.treatments.map((t, i) => ({
      ...t,
      body: { ...t.body, product: rows[i]?.product },
    })) as SculptureRecord['treatments'],
  };
};

describe('A different product from last time', () => {
  it('is told zone by zone, by the last coating that has a product', () => {
    const was = record(
      { date: '2024-05-20', product: 'paste wax' },
      { date: '2025-05-20', product: 'other wax', zones: ['B'] },
      { date: '2026-05-20', zones: ['C'] },
    );
    expect(otherProduct(was, [], 'Paste Wax ').map(({ zone, product }) => [zone.thing, product])).toEqual([
      [B, 'other wax'],
    ]);
    expect(otherProduct(was, [A], 'new wax').map(({ zone, product, date }) => [zone.thing, product, date])).toEqual([
      [A, 'paste wax', '2024-05-20'],
    ]);
  });

  it('forgets a product that a strip has taken off since', () => {
    const was = record({ date: '2024-05-20', product: 'paste wax' }, { date: '2025-01-01', type: 'strip' });
    expect(otherProduct(was, [], 'new wax')).toEqual([]);
  });

  it('is nothing where no product is named, or none was ever named', () => {
    expect(otherProduct(record({ date: '2024-05-20', product: 'paste wax' }), [], '')).toEqual([]);
    expect(otherProduct(record({ date: '2024-05-20' }), [], 'new wax')).toEqual([]);
  });
});
