import { describe, expect, it } from 'vitest';
import { seasonOf, seasonsOf, treatmentAgainst } from '../../../src/engine/care';
import type { BodyOf, SculptureRecord } from '../../../src/engine/record';
import { tended } from '../hold/garden';

const record = (...bodies: readonly Partial<BodyOf<'treatment'>>[]): SculptureRecord => {
  const made = tended({ treatments: bodies.map(({ type = 'wax', date = '2026-05-21' }) => ({ type, date })) });
  return {
    ...made,
    treatments: made.treatments.map((t, i) => ({
      ...t,
      body: { ...t.body, ...bodies[i] },
    })) as SculptureRecord['treatments'],
  };
};
const euro = (minor: number) => ({ minor, currency: 'EUR' });

describe('The log of a season', () => {
  it('adds hours by role, and never two currencies', () => {
    const season = seasonOf(
      record(
        {
          people: [
            { role: 'Steward', hours: 3 },
            { role: 'Helper', hours: 2.5 },
          ],
          cost: euro(1000),
        },
        { people: [{ role: 'Helper', hours: 1 }, { role: 'Volunteer' }], cost: { minor: 5, currency: 'XXX' } },
        { date: '2025-05-01', people: [{ role: 'Helper', hours: 9 }], cost: euro(9) },
        { type: 'wash', cost: euro(500) },
      ),
      2026,
    );
    expect(season.treatments).toHaveLength(3);
    expect(season.hours).toEqual([
      { role: 'Steward', hours: 3, unknown: 0 },
      { role: 'Helper', hours: 3.5, unknown: 0 },
      { role: 'Volunteer', hours: 0, unknown: 1 },
    ]);
    expect(season.costs).toEqual([euro(1500), { minor: 5, currency: 'XXX' }]);
  });

  it('lists what went on by product and batch, and what was not reached', () => {
    const season = seasonOf(
      record(
        { product: 'Paste', batch: 'W-26A', stock: 'product/1', used: 90, coats: 2, left: 'zone C, behind the hedge' },
        { product: 'Paste', batch: 'W-26A', stock: 'product/1', used: 10 },
        { product: 'Paste', batch: 'W-26B' },
      ),
      2026,
    );
    expect(season.products).toEqual([
      { product: 'Paste', batch: 'W-26A', stock: 'product/1', uses: 2, used: 100 },
      { product: 'Paste', batch: 'W-26B', stock: undefined, uses: 1, used: 0 },
    ]);
    expect(season.notReached).toEqual([{ date: '2026-05-21', text: 'zone C, behind the hedge' }]);
  });

  it('takes a vague date into the year it speaks of, and one that may be of two years into none', () => {
    const was = record({ date: '2026' }, { date: '2026-05' }, { date: 'about 2026' }, { date: '2025 to 2026' });
    expect(seasonOf(was, 2026).treatments).toHaveLength(2);
  });

  it('knows the years in which something was done, seen or looked at, the last first', () => {
    const made = record({ date: '2024-05-01' }, { date: '2026-05-01' });
    const looked = tended({ looks: [{ date: '2025-06-01', result: 'clear' }] });
    expect(seasonsOf({ ...made, looks: looked.looks }, 2026)).toEqual([2026, 2025, 2024]);
    expect(seasonsOf(record(), 2026)).toEqual([2026]);
  });
});

describe('What an entry of the logbook cannot be', () => {
  it.each([
    [{ date: '2026-05-21', ended: '2026-05-20' }, 'care: days out of order'],
    [{ date: 'before 2021', ended: '2026-05-20' }, 'care: first day missing'],
    [{ cost: euro(-1) }, 'care: cost below nothing'],
    [{ people: [{ role: ' ', hours: 3 }] }, 'care: somebody without a role'],
  ] as const)('%j is refused: %s', (body, code) => {
    expect(treatmentAgainst(record(body as Partial<BodyOf<'treatment'>>).treatments[0]!.body)?.code).toBe(code);
  });

  it('is several days in order', () => {
    expect(treatmentAgainst(record({ date: '2023-09-04', ended: '2023-09-22' }).treatments[0]!.body)).toBeUndefined();
  });
});
