import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareBids, type QuantityLine } from '../../../src/engine/campaign';
import { codes } from '../change/invented';
import { bid, today, zone } from './drawnUp';

const line = (id: string, amount: number, more: Partial<QuantityLine> = {}): QuantityLine => ({
  id,
  zone: zone(id),
  name: id,
  task: 'clean down',
  unit: 'm2',
  amount,
  low: amount * 0.9,
  high: amount * 1.1,
  ...more,
});
const two = [line('a', 2), line('b', 1)];

describe('Bids beside each other', () => {
  it('are compared by the price of a square metre, with the range of the area', () => {
    const [found] = compareBids(two, [bid({ a: 20_000, b: 11_000 })], today);
    const rate = [...(found?.lines[0]?.prices.values() ?? [])][0]?.rate;
    expect(rate?.value).toBe(10_000);
    expect(rate?.low).toBeCloseTo(20_000 / 2.2, 9);
    expect(rate?.high).toBeCloseTo(20_000 / 1.8, 9);
    expect(codes(rate?.reasons ?? [])).toEqual(['campaign: rate on the schedule']);
    expect(found?.bids[0]?.perM2).toBeCloseTo(31_000 / 3, 9);
    expect(found?.bids[0]?.total).toEqual({ minor: 31_000, currency: 'EUR' });
  });

  it('go by the area the bidder measured, and say where it lies outside the range of the survey', () => {
    const rateOf = (measured: number) =>
      [...(compareBids(two, [bid({ a: [30_000, measured] })], today)[0]?.lines[0]?.prices.values() ?? [])][0]?.rate;
    expect(rateOf(2.1)).toMatchObject({ value: 30_000 / 2.1, low: 30_000 / 2.1, high: 30_000 / 2.1 });
    expect(codes(rateOf(2.1)?.reasons ?? [])).toEqual(['campaign: rate on own area']);
    expect(codes(rateOf(3)?.reasons ?? [])).toContain('campaign: area measured otherwise');
  });

  it('are flagged above twice the median of a line, not at it, and far below it', () => {
    const odd = (price: number) => {
      const bids = [bid({ a: 20_000 }), bid({ a: 20_000 }), bid({ a: price })];
      return compareBids(two, bids, today)[0]?.lines[0]?.prices.get(bids[2]?.thing ?? '');
    };
    expect(odd(40_000)?.odd).toBeUndefined();
    expect(odd(40_001)?.odd).toBe('high');
    expect(odd(40_001)?.rate.reasons.at(-1)).toMatchObject({
      code: 'campaign: price out of line',
      params: { factor: 2 },
    });
    expect(odd(10_000)?.odd).toBeUndefined();
    expect(odd(9_999)?.odd).toBe('low');
  });

  it('of two bidders are never called odd: each is as odd as the other', () => {
    const [found] = compareBids(two, [bid({ a: 10_000 }), bid({ a: 90_000 })], today);
    expect(found?.lines[0]?.median).toBeUndefined();
    expect([...(found?.lines[0]?.prices.values() ?? [])].map(({ odd }) => odd)).toEqual([undefined, undefined]);
    expect(codes(found?.reasons ?? [])).toEqual(['campaign: too few prices to compare']);
  });

  it('with lines left out are not cheaper for it: what is held against each other is what all of them priced', () => {
    const [whole, part] = [bid({ a: 20_000, b: 10_000 }), bid({ a: 21_000 })];
    const [found] = compareBids(two, [whole, part], today);
    expect(found?.sharedLines).toBe(1);
    expect(found?.bids.map(({ shared }) => shared.minor)).toEqual([20_000, 21_000]);
    expect(found?.bids[1]?.missing.map(({ id }) => id)).toEqual(['b']);
    expect(codes(found?.bids[1]?.reasons ?? [])).toContain('campaign: lines not priced');
  });

  it('priced at nothing count as priced, and are asked about', () => {
    const [found] = compareBids(two, [bid({ a: 20_000, b: 0 })], today);
    expect(found?.bids[0]?.missing).toEqual([]);
    const price = [...(found?.lines[1]?.prices.values() ?? [])][0];
    expect(codes(price?.rate.reasons ?? [])).toContain('campaign: priced at nothing');
  });

  it('in two currencies stand in two comparisons, and no sum joins them', () => {
    const found = compareBids(two, [bid({ a: 1 }), bid({ a: 2 }, { currency: 'CHF' }), bid({ a: 4 })], today);
    expect(found.map(({ currency, bids }) => [currency, bids.map(({ total }) => total)])).toEqual([
      [
        'EUR',
        [
          { minor: 1, currency: 'EUR' },
          { minor: 4, currency: 'EUR' },
        ],
      ],
      ['CHF', [{ minor: 2, currency: 'CHF' }]],
    ]);
  });

  it('that were withdrawn are left out; those past their day say so', () => {
    const [found] = compareBids(
      two,
      [bid({ a: 1 }, { withdrawn: '2026-04-01' }), bid({ a: 2 }, { validUntil: '2026-10-14' })],
      today,
    );
    expect(found?.bids).toHaveLength(1);
    expect(found?.bids[0]?.reasons.at(-1)).toEqual({
      code: 'campaign: bid past its day',
      params: { date: '2026-10-14' },
    });
    const [lastDay] = compareBids(two, [bid({ a: 2 }, { validUntil: today })], today);
    expect(lastDay?.bids[0]?.reasons.at(-1)).toEqual({
      code: 'campaign: bid valid until',
      params: { date: today, days: 0 },
    });
  });

  it('that leave out the protection of inserts, or never saw the site, say so', () => {
    const guarded = [...two, line('g', 1, { task: 'shield and watch', unit: 'piece' })];
    const blind = bid({ a: 1, b: 1, gone: 5 }, { visited: undefined });
    const [found] = compareBids(guarded, [blind], today);
    expect(codes(found?.bids[0]?.reasons ?? [])).toEqual(
      expect.arrayContaining([
        'campaign: insert protection not priced',
        'campaign: lines no longer in the schedule',
        'campaign: site not visited',
      ]),
    );
    expect(found?.bids[0]?.total.minor).toBe(2);
  });

  it('of one who measured are reckoned over what was measured, in the sum as in the line', () => {
    const [found] = compareBids([line('a', 1.2)], [bid({ a: [310_000, 1.3] })], today);
    expect(found?.bids[0]?.perM2).toBeCloseTo(310_000 / 1.3, 9);
  });

  it('reckon two tasks on one zone over its surface once', () => {
    const lines = [line('a', 2), line('a2', 2, { zone: zone('a'), task: 'patinate' })];
    expect(compareBids(lines, [bid({ a: 200, a2: 100 })], today)[0]?.bids[0]?.perM2).toBe(150);
  });

  it('never change what is odd by the order they came in or the unit of money', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 1_000_000 }), { minLength: 3, maxLength: 7 }),
        fc.nat(6),
        (prices, shift) => {
          const oddOf = (list: readonly number[]) => {
            const [found] = compareBids(
              two,
              list.map((minor) => bid({ a: minor })),
              today,
            );
            return [...(found?.lines[0]?.prices.values() ?? [])].map(({ odd }) => odd);
          };
          const turn = shift % prices.length;
          const turned = [...prices.slice(turn), ...prices.slice(0, turn)];
          const odd = oddOf(prices);
          expect(oddOf(turned)).toEqual([...odd.slice(turn), ...odd.slice(0, turn)]);
          expect(oddOf(prices.map((minor) => minor * 100))).toEqual(odd);
          expect(odd.every((one) => one === undefined)).toBe(
            prices.every((p) => p <= 2 * median(prices) && p >= median(prices) / 2),
          );
        },
      ),
    );
  });
});

const median = (list: readonly number[]): number => {
  const ordered = [...list].sort((a, b) => a - b);
  const half = ordered.length / 2;
  return Number.isInteger(half)
    ? ((ordered[half - 1] as number) + (ordered[half] as number)) / 2
    : (ordered[Math.floor(half)] as number);
};
