import { describe, expect, it } from 'vitest';
import { orderList, productAgainst, storeOf } from '../../../src/engine/care';
import { type BodyOf, nameOf, type SculptureRecord, type Thing } from '../../../src/engine/record';
import { tended, today } from '../hold/garden';

const lead = tended({}).sculpture.lead;
const product = (id: string, body: Partial<BodyOf<'product'>> = {}): Thing<'product'> => {
  const thing = nameOf.product(id);
  const whole = { name: 'Cold paste wax', sort: 'microcrystalline', ...body } as BodyOf<'product'>;
  return { thing, body: whole, lead: { ...lead, thing, kind: 'product', body: whole }, heads: [lead.id] };
};
const tin = nameOf.product('tin');
/** A work of 4 m2 waxed with so much of the tin on each day. */
const waxed = (...uses: readonly (readonly [string, number | undefined, number?])[]): SculptureRecord => {
  const record = tended({ zones: { A: { m2: 4 } }, treatments: uses.map(([date]) => ({ type: 'wax', date })) });
  return {
    ...record,
    treatments: record.treatments.map((t, i) => ({
      ...t,
      body: {
        ...t.body,
        stock: tin,
        ...(uses[i]?.[1] === undefined ? {} : { used: uses[i]?.[1] }),
        ...(uses[i]?.[2] === undefined ? {} : { coats: uses[i]?.[2] }),
      },
    })) as SculptureRecord['treatments'],
  };
};
const one = (body: Partial<BodyOf<'product'>>, records: readonly SculptureRecord[] = []) =>
  storeOf([product('tin', body)], records, today)[0]!;

describe('What is in store', () => {
  it('counts down what was used since it was counted, and leaves earlier use out', () => {
    const row = one({ left: 500, unit: 'g', counted: '2026-05-01' }, [waxed(['2025-05-22', 90], ['2026-05-21', 80])]);
    expect(row.left).toBe(420);
    expect(row.used).toBe(170);
    expect(row.flags).toEqual(['no safety sheet']);
  });

  it('takes off what was used later on the day of counting, and not what was in the logbook when it was counted', () => {
    const records = [waxed(['2026-05-21', 80], ['2026-05-21', 50])];
    const counted = { left: 500, unit: 'g', counted: '2026-05-21' } as const;
    expect(one(counted, records).left).toBe(370);
    const [first] = records.flatMap(({ treatments }) => treatments);
    expect(one({ ...counted, countedWith: [first!.thing] }, records).left).toBe(450);
  });

  it('never counts below nothing, and says it must be counted anew', () => {
    const row = one({ left: 50, unit: 'g', counted: '2026-05-01', sheet: 'x' }, [waxed(['2026-05-21', 80])]);
    expect(row.left).toBe(0);
    expect(row.flags).toContain('count again');
  });

  it('works out grams for a square metre and a coat from the log, with the range of the areas', () => {
    const { rate } = one({ left: 500, unit: 'g' }, [waxed(['2025-05-22', 80, 2], ['2026-05-21', 120, 2])]);
    expect(rate?.value).toBeCloseTo(200 / 16, 6);
    expect(rate?.low).toBeLessThan(200 / 16);
    expect(rate?.high).toBeGreaterThan(200 / 16);
    expect(rate?.unit).toBe('g');
    expect(rate?.reasons).toEqual([{ code: 'care: rate from the log', params: { uses: 2, m2: 8 } }]);
  });

  it('turns tins into grams where their weight is known, and stays with tins where not', () => {
    expect(one({ left: 2, unit: 'tin', gramsPerUnit: 400 }, [waxed(['2026-05-21', 0.25, 1])]).rate).toMatchObject({
      value: 25,
      unit: 'g',
    });
    expect(one({ left: 2, unit: 'tin' }, [waxed(['2026-05-21', 0.25, 1])]).rate).toMatchObject({
      value: 0.0625,
      unit: 'tin',
    });
    expect(one({ left: 1, unit: 'kg' }, [waxed(['2026-05-21', 0.1, 1])]).rate).toMatchObject({ value: 25, unit: 'g' });
  });

  it('says how far what is left reaches at that rate', () => {
    const row = one({ left: 500, unit: 'g', counted: '2026-06-01' }, [waxed(['2026-05-21', 100, 1])]);
    expect(row.reaches?.value).toBeCloseTo(20, 6);
    expect(row.reaches?.low).toBeLessThan(20);
  });

  it('gives no rate where nobody wrote down how much went', () => {
    expect(one({ left: 500, unit: 'g' }, [waxed(['2026-05-21', undefined, 1])]).rate).toBeUndefined();
  });

  it('flags what is past its day, what soon will be, and what is low', () => {
    expect(one({ expires: '2026-10-14', sheet: 'x' }).flags).toEqual(['expired']);
    expect(one({ expires: '2026-10-15', sheet: 'x' }).flags).toEqual(['expires soon']);
    expect(one({ expires: '2026-12-13', sheet: 'x' }).flags).toEqual(['expires soon']);
    expect(one({ expires: '2026-12-15', sheet: 'x' }).flags).toEqual([]);
    expect(one({ left: 1, least: 1, unit: 'tin', sheet: 'x' }).flags).toEqual(['low']);
    expect(one({ left: 2, least: 1, unit: 'tin', sheet: 'x' }).flags).toEqual([]);
  });
});

describe('The list of what to order', () => {
  const order = (...products: Thing<'product'>[]) => orderList(storeOf(products, [], today)).map(({ name }) => name);

  it('names a product that is low or past its day, once, whatever the number of tins', () => {
    expect(
      order(
        product('a', { left: 0, least: 1, unit: 'tin' }),
        product('b', { left: 1, unit: 'tin', expires: '2026-01-01' }),
      ),
    ).toEqual(['Cold paste wax']);
  });

  it('leaves it out while another tin of the same name is good for it', () => {
    expect(
      order(
        product('a', { left: 0, least: 1, unit: 'tin' }),
        product('b', { name: 'cold paste wax ', left: 2, unit: 'tin' }),
      ),
    ).toEqual([]);
  });

  it('adds up all good tins against the least that should be there', () => {
    const tins = [product('a', { left: 1, least: 3, unit: 'tin' }), product('b', { left: 1, least: 3, unit: 'tin' })];
    expect(order(...tins)).toEqual(['Cold paste wax']);
    expect(order(...tins, product('c', { left: 2, least: 3, unit: 'tin' }))).toEqual([]);
  });

  it('forgets what is no longer used, and does not order what nobody counts', () => {
    expect(order(product('a', { left: 0, least: 1, unit: 'tin', ended: '2025-01-01' }))).toEqual([]);
    expect(order(product('a'))).toEqual([]);
  });
});

describe('What a product cannot be', () => {
  it.each([
    [{ opened: '2026-05-01', expires: '2026-04-01' }, 'care: days out of order'],
    [{ opened: '2026-05-01', ended: '2026-04-01' }, 'care: days out of order'],
    [{ surfaceFrom: 30, surfaceTo: 10 }, 'care: range upside down'],
    [{ name: '  ' }, 'care: product without a name'],
    [{ left: 3 }, 'care: unit missing'],
    [{ counted: '2026-10-16', left: 1, unit: 'tin' }, 'care: counted after today'],
  ] as const)('%j is refused: %s', (body, code) => {
    expect(productAgainst(product('a', body).body, today)?.code).toBe(code);
  });

  it('is anything else', () => {
    expect(productAgainst(product('a', { opened: '2026-05-01', expires: '2028-05-01' }).body, today)).toBeUndefined();
  });
});
