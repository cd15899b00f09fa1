import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bidCriteriaRefused,
  bidScoreRefused,
  byHand,
  compareBids,
  criteriaOf,
  type QuantityLine,
  scoreBids,
  sheetsOf,
} from '../../../src/engine/campaign';
import { type BodyOf, nameOf, type Thing } from '../../../src/engine/record';
import { bidCriteria, weightsSum } from '../../../src/engine/trade';
import { codes } from '../change/invented';
import { bid, campaignName, sculpture, thing, today } from './drawnUp';

const line = (id: string): QuantityLine => ({ id, name: id, task: 'report', unit: 'sum', amount: 1 });
const lines = [line('a'), line('b')];
const usual = criteriaOf(undefined);

const criteria = (scorers: readonly string[], more: Partial<BodyOf<'bidCriteria'>> = {}): BodyOf<'bidCriteria'> => ({
  ...{ sculpture, campaign: campaignName, date: '2026-03-02' },
  criteria: bidCriteria.map(({ id, weight }) => ({ id, weight })),
  scorers: scorers.map((id) => ({ id, role: 'Steward' })),
  ...more,
});

/** One mark a bid, the same on every criterion. */
const sheet = (
  scorer: string,
  marks: readonly (readonly [Thing<'bid'>, number])[],
  more: Partial<BodyOf<'bidScore'>> = {},
): Thing<'bidScore'> =>
  thing(nameOf.bidScore(campaignName, scorer), {
    ...{ sculpture, campaign: campaignName, scorer, date: '2026-03-25', handedIn: '2026-03-26' },
    marks: marks.flatMap(([{ thing: bid }, mark]) => byHand(usual).map(({ id }) => ({ bid, criterion: id, mark }))),
    ...more,
  });

const scored = (bids: readonly Thing<'bid'>[], sheets: readonly Thing<'bidScore'>[]) => {
  const [comparison] = compareBids(lines, bids, today);
  if (!comparison) throw new Error('nothing to compare');
  const all = criteria(sheets.map(({ body }) => body.scorer));
  return scoreBids(comparison, usual, sheetsOf(all, usual, sheets, bids).standings);
};

describe('The score sheet of bids', () => {
  it('weighs method, people, documentation, programme and price as is usual, to 100 in all', () => {
    expect(Object.fromEntries(usual.map(({ id, weight }) => [id, weight]))).toEqual({
      ...{ method: 30, people: 25, documentation: 15, programme: 10, price: 20 },
    });
    expect(usual.reduce((sum, { weight }) => sum + weight, 0)).toBe(weightsSum);
  });

  it('gives the lowest price all points of the price, and twice the price half of them', () => {
    const [low, twice] = [bid({ a: 10_000, b: 0 }), bid({ a: 15_000, b: 5_000 })];
    const found = scored([low, twice], [sheet('s1', [[low, 5] as const, [twice, 5] as const])]);
    expect(found.bids.map(({ points }) => points.get('price')?.value)).toEqual([20, 10]);
    expect(found.bids.map(({ total }) => total?.value)).toEqual([60, 50]);
  });

  it('gives points of the price on the lines all of them priced only: leaving a line out makes no bid cheaper', () => {
    const [whole, part] = [bid({ a: 10_000, b: 10_000 }), bid({ a: 10_000 })];
    const found = scored([whole, part], []);
    expect(found.bids.map(({ points }) => points.get('price')?.value)).toEqual([20, 20]);
    expect(codes(found.reasons)).toContain('campaign: price points on shared lines');
  });

  it('has no total where a bid of nothing leaves nothing to divide, and says so', () => {
    const [free, other] = [bid({ a: 0, b: 0 }), bid({ a: 1, b: 1 })];
    const found = scored([free, other], [sheet('s1', [[free, 5] as const, [other, 5] as const])]);
    expect(found.bids.map(({ total }) => total)).toEqual([undefined, undefined]);
    expect(codes(found.reasons)).toContain('campaign: no price points');
  });

  it('shows the mean of the scorers with the lowest and the highest of them', () => {
    const one = bid({ a: 10_000, b: 10_000 });
    const found = scored([one], [sheet('s1', [[one, 4] as const]), sheet('s2', [[one, 8] as const])]);
    expect(found.bids[0]?.points.get('method')).toEqual({ value: 18, low: 12, high: 24 });
    expect(found.bids[0]?.total).toEqual({ value: 68, low: 52, high: 84 });
  });

  it('tells two bids apart where all scorers put the same one ahead by more than a mark of the weightiest criterion', () => {
    const [good, poor] = [bid({ a: 10_000, b: 0 }), bid({ a: 10_000, b: 0 })];
    const marks = (a: number, b: number) => [[good, a] as const, [poor, b] as const];
    const apart = scored([good, poor], [sheet('s1', marks(8, 6)), sheet('s2', marks(7, 6))]);
    expect(apart.bids.map(({ place }) => place)).toEqual([
      { best: 1, worst: 1 },
      { best: 2, worst: 2 },
    ]);
    const order = scored([good, poor], [sheet('s1', marks(10, 2)), sheet('s2', marks(5, 6))]);
    expect(order.bids.map(({ place }) => place)).toEqual([
      { best: 1, worst: 2 },
      { best: 1, worst: 2 },
    ]);
    expect(codes(order.bids[0]?.reasons ?? [])).toEqual(['campaign: scorers differ on the order']);
    const alone = scored([good, poor], [sheet('s1', marks(10, 2))]);
    expect(codes(alone.bids[0]?.reasons ?? [])).toEqual(['campaign: one scorer tells none apart']);
    expect(alone.bids[0]?.place).toEqual({ best: 1, worst: 2 });
  });

  it('does not tell two bids apart that lie one mark of the weightiest criterion apart: exactly three points of 100', () => {
    const [one, other] = [bid({ a: 10_000, b: 0 }), bid({ a: 10_000, b: 0 })];
    const higher = (scorer: string) => {
      const all = sheet(scorer, [[one, 5] as const, [other, 5] as const]);
      const marks = all.body.marks.map((each) =>
        each.bid === one.thing && each.criterion === 'method' ? { ...each, mark: 6 } : each,
      );
      return { ...all, body: { ...all.body, marks } };
    };
    const found = scored([one, other], [higher('s1'), higher('s2')]);
    expect(found.apart).toBe(3);
    expect(found.bids.map(({ total }) => total?.value)).toEqual([63, 60]);
    expect(codes(found.bids[0]?.reasons ?? [])).toEqual(['campaign: totals too close']);
  });

  it('never gives a better place for a lower mark, and a total never leaves 0 to 100', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(10), fc.nat(10), fc.nat(10)), { minLength: 1, maxLength: 4 }),
        fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 })),
        (marks, prices) => {
          const bids = prices.map((price) => bid({ a: price, b: price }));
          const sheets = marks.map((of, i) =>
            sheet(
              `s${i}`,
              bids.map((each, j) => [each, of[j] ?? 0] as const),
            ),
          );
          const found = scored(bids, sheets);
          const worse = scored(
            bids,
            sheets.map((each) => ({
              ...each,
              body: {
                ...each.body,
                marks: each.body.marks.map((one) =>
                  one.bid === bids[0]?.thing ? { ...one, mark: Math.max(0, one.mark - 1) } : one,
                ),
              },
            })),
          );
          const place = (of: typeof found) => of.bids[0]?.place ?? { best: 0, worst: 0 };
          expect(place(worse).best).toBeGreaterThanOrEqual(place(found).best);
          expect(place(worse).worst).toBeGreaterThanOrEqual(place(found).worst);
          for (const { total, place: at } of found.bids) {
            expect(total?.low).toBeGreaterThanOrEqual(0);
            expect(total?.high).toBeLessThanOrEqual(100 + 1e-9);
            expect(at && at.best <= at.worst && at.best >= 1 && at.worst <= 3).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('The sheets of the scorers', () => {
  const [one, two] = [bid({ a: 1 }), bid({ a: 2 })];
  const both = [one, two];
  const whole = (scorer: string) => sheet(scorer, [[one, 5] as const, [two, 6] as const]);

  it('stay closed until each is handed in with a mark for every bid, or somebody opens them', () => {
    const all = criteria(['s1', 's2']);
    expect(sheetsOf(all, usual, [whole('s1')], both).open).toBe(false);
    expect(sheetsOf(all, usual, [whole('s1'), whole('s2')], both)).toMatchObject({ open: true, allIn: true });
    const held = { ...whole('s2'), body: { ...whole('s2').body, handedIn: undefined } } as Thing<'bidScore'>;
    expect(sheetsOf(all, usual, [whole('s1'), held], both).open).toBe(false);
    const opened = criteria(['s1', 's2'], { opened: { on: '2026-03-28', by: 'Steward' } });
    expect(sheetsOf(opened, usual, [whole('s1')], both)).toMatchObject({ open: true, allIn: false });
  });

  it('close again over a bid that comes later, which nobody has marked; a withdrawn one needs no mark', () => {
    const all = criteria(['s1']);
    const late = bid({ a: 3 });
    expect(sheetsOf(all, usual, [whole('s1')], [...both, late])).toMatchObject({
      open: false,
      standings: [{ whole: false, missing: 4 }],
    });
    const gone = bid({ a: 3 }, { withdrawn: '2026-03-24' });
    expect(sheetsOf(all, usual, [whole('s1')], [...both, gone]).open).toBe(true);
  });

  it('are no sheets where nobody is named to mark, or there is nothing to mark', () => {
    expect(sheetsOf(criteria([]), usual, [], both).open).toBe(false);
    expect(sheetsOf(criteria(['s1']), usual, [], []).open).toBe(false);
  });

  it('once handed in keep their marks, and are not handed in with one missing', () => {
    const kept = { before: criteria(['s1']), bids: both };
    const { body } = whole('s1');
    expect(bidScoreRefused(body, undefined, kept)).toBeUndefined();
    expect(bidScoreRefused({ ...body, marks: body.marks.slice(1) }, undefined, kept)).toMatchObject({
      code: 'campaign: sheet not whole',
      params: { count: 1 },
    });
    const higher = { ...body, marks: body.marks.map((each) => ({ ...each, mark: 10 })) };
    expect(bidScoreRefused(higher, body, kept)?.code).toBe('campaign: sheet was handed in');
    const twice = { ...body, marks: [...body.marks, ...body.marks.slice(0, 1)] };
    expect(bidScoreRefused(twice, undefined, kept)?.code).toBe('campaign: mark twice');
  });
});

describe('Weights', () => {
  const to = (weights: Readonly<Record<string, number>>) =>
    Object.entries(weights).map(([id, weight]) => ({ id, weight, name: id }));

  it('come to 100, each thing once and with a name', () => {
    const none = { before: undefined, bids: [] };
    const refused = (list: BodyOf<'bidCriteria'>['criteria']) =>
      bidCriteriaRefused(criteria([], { criteria: list }), none)?.code;
    expect(refused(to({ method: 60, price: 40 }))).toBeUndefined();
    expect(refused(to({ method: 60, price: 30 }))).toBe('campaign: weights come to');
    expect(refused([...to({ method: 60 }), ...to({ method: 40 })])).toBe('campaign: criterion twice');
    expect(refused([{ id: 'own 1', weight: 100, name: ' ' }])).toBe('campaign: criterion without a name');
  });

  it('changed with a bid in are refused without a reason and what they were before; the change is never dropped', () => {
    const bids = [bid({ a: 1 })];
    const before = criteria(['s1']);
    const list = to({ method: 50, price: 50 });
    const changed = [{ on: today, why: 'The board asked', bids: 1, sheets: 0, before: before.criteria }];
    const refused = (body: Partial<BodyOf<'bidCriteria'>>, was: BodyOf<'bidCriteria'> | undefined = before) =>
      bidCriteriaRefused(criteria(['s1'], body), { before: was, bids })?.code;
    expect(refused({})).toBeUndefined();
    expect(refused({ criteria: list })).toBe('campaign: weights changed after a bid');
    expect(refused({ criteria: list }, undefined)).toBe('campaign: weights changed after a bid');
    expect(refused({ criteria: list, changed: changed.map((each) => ({ ...each, why: ' ' })) })).toBeDefined();
    expect(refused({ criteria: list, changed })).toBeUndefined();
    const after = criteria(['s1'], { criteria: list, changed });
    expect(refused({ criteria: list }, after)).toBe('campaign: weights changed after a bid');
    expect(refused({ criteria: list, changed }, after)).toBeUndefined();
  });

  it('changed before any bid is in need no reason', () => {
    const body = criteria([], { criteria: to({ method: 50, price: 50 }) });
    expect(bidCriteriaRefused(body, { before: criteria([]), bids: [] })).toBeUndefined();
  });
});
