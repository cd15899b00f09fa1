import { describe, expect, it } from 'vitest';
import { moneyOf, netPresentValue } from '../../../src/engine/money';
import {
  figuresAgainst,
  figuresOf,
  inOneCurrency,
  irreversibleTimes,
  isReckoned,
  type OptionFigures,
  paymentsOf,
  priceOfWaiting,
  threeRates,
  turningOf,
  whatIfs,
} from '../../../src/engine/options';
import type { Thing } from '../../../src/engine/record';
import { rules, stripAll, waxAndLocal, waxOnly } from './halfTideStair';

const withBody = (option: Thing<'option'>, body: Partial<Thing<'option'>['body']>): Thing<'option'> => ({
  ...option,
  body: { ...option.body, ...body },
});
const figures = (option: Thing<'option'>, own = rules): OptionFigures => {
  const told = figuresOf(option, own);
  if (!isReckoned(told)) throw new Error(told.reasons[0]?.code);
  return told;
};
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);
const cost = { name: 'x', amount: moneyOf(100, 'XXX'), first: 0, price: 'estimate' as const };

describe('Payments year by year', () => {
  it('fall in their years, from the first to the last, and once where nothing is said', () => {
    const own = { ...rules, years: 6, growth: 0 };
    const option = (line: object) => ({ sort: 'wait', costs: [{ ...cost, ...line }] });
    expect(paymentsOf(option({}), own)).toEqual([100, 0, 0, 0, 0, 0, 0]);
    expect(paymentsOf(option({ first: 1, every: 2 }), own)).toEqual([0, 100, 0, 100, 0, 100, 0]);
    expect(paymentsOf(option({ first: 2, every: 1, last: 4 }), own)).toEqual([0, 0, 100, 100, 100, 0, 0]);
    expect(paymentsOf(option({ first: 9 }), own)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  it('hold their price this year and the next, and rise from then on by their own rate or the collection’s', () => {
    const own = { ...rules, years: 3, growth: 0.1 };
    const line = { ...cost, every: 1 };
    const paid = (more: object) =>
      paymentsOf({ sort: 'wait', costs: [{ ...line, ...more }] }, own).map((x) => Number(x.toFixed(6)));
    expect(paid({})).toEqual([100, 100, 110, 121]);
    expect(paid({ growth: 0 })).toEqual([100, 100, 100, 100]);
    expect(paid({ growth: -0.1 })).toEqual([100, 100, 90, 81]);
  });

  it('ten local strips fall in twenty years, as many as are counted as irreversible', () => {
    const local = { ...waxAndLocal.body, costs: waxAndLocal.body.costs.slice(1) };
    expect(paymentsOf(local, rules).filter((paid) => paid > 0)).toHaveLength(10);
    expect(irreversibleTimes(waxAndLocal.body, rules)).toBe(10);
    expect(irreversibleTimes(stripAll.body, rules)).toBe(1);
    expect(irreversibleTimes(waxOnly.body, rules)).toBe(0);
  });

  it('a line past the years looked at is not lost in silence', () => {
    const told = figures(withBody(waxOnly, { costs: [...waxOnly.body.costs, { ...cost, name: 'Base', first: 30 }] }));
    expect(told.reasons).toContainEqual({ code: 'option: beyond the years', params: { line: 'Base', years: 20 } });
  });
});

describe('Figures of an option', () => {
  it('have a range as wide as its prices are loose', () => {
    const [, at] = figures(waxOnly).atRates;
    expect(at.yearly.low / at.yearly.value).toBeCloseTo(0.75, 10);
    expect(at.yearly.high / at.yearly.value).toBeCloseTo(1.25, 10);
    expect(at.perGoodMonth?.low).toBeCloseTo(at.yearly.low / 4, 10);
    expect(at.perGoodMonth?.high).toBeCloseTo(at.yearly.high / 2, 10);
  });

  it('have no cost per good month where there may be none, and never an endless one', () => {
    const none = figures(withBody(waxOnly, { goodMonths: { value: 0, low: 0, high: 1, from: 'said' } }));
    expect(none.atRates[1].perGoodMonth).toBeNull();
    expect(codes(none.reasons)).toContain('option: no good month');
    const perhaps = figures(withBody(waxOnly, { goodMonths: { value: 1, low: 0, high: 2, from: 'said' } }));
    expect(perhaps.atRates[1].perGoodMonth?.high).toBeNull();
    const { goodMonths: _, ...unasked } = waxOnly.body;
    expect(codes(figures({ ...waxOnly, body: unasked }).reasons)).toContain('option: good months not known');
  });

  it('are not made of two currencies, nor of nothing', () => {
    const two = withBody(waxOnly, { costs: [cost, { ...cost, amount: moneyOf(1, 'CHF') }] });
    expect(codes(figuresOf(two, rules).reasons)).toEqual(['money: currencies mixed']);
    expect(codes(figuresOf(withBody(waxOnly, { costs: [] }), rules).reasons)).toEqual(['option: no costs']);
  });

  it('of two currencies are never set side by side: the collection’s own stand, the others apart, with why', () => {
    const francs = withBody(stripAll, { costs: [{ ...cost, amount: moneyOf(1, 'CHF') }] });
    const told = [waxOnly, waxAndLocal, francs].map((option) => figuresOf(option, rules));
    expect(inOneCurrency(told, 'XXX').rows).toHaveLength(2);
    expect(inOneCurrency(told, 'XXX').apart[0]?.reasons).toEqual([
      { code: 'money: not the currency here', params: { currency: 'CHF', here: 'XXX' } },
    ]);
    expect(inOneCurrency(told, undefined).rows).toHaveLength(2);
    expect(inOneCurrency(told, 'CHF').rows).toHaveLength(1);
  });

  it('say how much of them rests on prices nobody gave, and that nobody set the rules', () => {
    const told = figures(withBody(waxOnly, { costs: [cost, { ...cost, price: 'made up' }] }));
    expect(told.madeUp).toBeCloseTo(0.5, 10);
    expect(codes(told.reasons)).toEqual(expect.arrayContaining(['option: prices made up', 'option: rules not set']));
  });

  it('three rates stand, without the dust of binary fractions', () => {
    expect(threeRates(0.035)).toEqual([0.025, 0.035, 0.045]);
    expect(threeRates(0)[0]).toBe(-0.01);
  });
});

describe('What if', () => {
  const rows = [waxOnly, waxAndLocal, stripAll].map((option) => figures(option));
  const c = rows[2] as OptionFigures;
  const told = whatIfs(c, rows, rules);

  it('asks five things, the one that moves most first', () => {
    expect(told?.bars.map(({ what }) => what).sort()).toEqual(['colour', 'growth', 'interval', 'price', 'rate']);
    const widths = told?.bars.map(({ low, high }) => high - low) ?? [];
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
    expect(told?.bars[0]?.what).toBe('colour');
    expect(Math.round(told?.cost ?? 0)).toBe(736);
    expect(told?.next).toMatchObject({ option: 'option/B' });
    expect(Math.round(told?.next.cost ?? 0)).toBe(1084);
  });

  it('a colour that holds six years is laid four times, and the other way is then the better buy', () => {
    const six = told?.bars.find(({ what }) => what === 'colour')?.answers.find(({ at }) => at === 6);
    const again = paymentsOf(stripAll.body, rules, { colourHolds: 6 });
    expect(again.map((paid, year) => (paid > 10_000 ? year : 0)).filter(Boolean)).toEqual([1, 7, 13, 19]);
    const yearly = (netPresentValue(again, 0.03) * 0.03) / (1 - 1.03 ** -20);
    expect(six?.cost).toBeCloseTo(yearly / 10, 6);
    expect(six?.turnsTo).toBe('option/B');
    const base = { ...cost, name: 'New base', first: 10 };
    const beside = paymentsOf({ ...stripAll.body, costs: [base] }, { ...rules, growth: 0 }, { colourHolds: 6 });
    expect(beside.filter((paid) => paid > 0)).toHaveLength(1);
    expect(told && turningOf(c, told)[0]).toEqual({
      code: 'option: order turns if',
      params: { what: 'colour', option: 'option/C', other: 'option/B' },
    });
  });

  it('half the interval of the local work makes that way dearer, and leaves the favourite as it is', () => {
    const bar = told?.bars.find(({ what }) => what === 'interval');
    expect(bar?.answers.map(({ cost: now }) => Math.round(now))).toEqual([736, 736]);
    const [often, seldom] = bar?.answers ?? [];
    expect((often?.next ?? 0) > 1084 && (seldom?.next ?? 0) < 1084).toBe(true);
  });

  it('a price that is off is the price of the one asked about, and not of the others', () => {
    const bar = told?.bars.find(({ what }) => what === 'price');
    expect(bar?.answers.map(({ next }) => Math.round(next))).toEqual([1084, 1084]);
    expect(bar?.low).toBeLessThan(736);
  });

  it('says nothing where there is nothing to set it beside, and counts years where months are not known', () => {
    expect(whatIfs(c, [c], rules)).toBeNull();
    const { goodMonths: _, ...unasked } = waxOnly.body;
    const bare = figures({ ...waxOnly, body: unasked });
    expect(whatIfs(c, [c, bare], rules)?.per).toBe('year');
  });

  it('a rate at which another is the better buy is said against the favourite', () => {
    const early = figures(withBody(stripAll, { costs: [{ ...cost, amount: moneyOf(100_000, 'XXX'), first: 0 }] }));
    const late = figures(
      withBody(waxOnly, {
        costs: [{ ...cost, amount: moneyOf(177_000, 'XXX'), first: 20, growth: 0 }],
        goodMonths: { value: 10, low: 10, high: 10, from: 'said' },
      }),
    );
    const [one, other] = early.atRates[1].yearly.value < late.atRates[1].yearly.value ? [early, late] : [late, early];
    expect(codes(figuresAgainst(one, [one, other]))).toContain('option: order turns at rate');
  });
});

describe('The price of waiting', () => {
  const asked = {
    option: waxAndLocal.body,
    care: { thing: 'option/A', option: waxOnly.body },
    growth: { value: 0.5, low: 0.25, high: 0.75 },
    area: 10,
    whole: false,
  };

  it('there is none where nothing is paid for once', () => {
    expect(priceOfWaiting(asked, rules)).toBeNull();
  });

  it('more green is more to treat, at the price of a square metre then, with its range', () => {
    const once = { ...waxAndLocal.body, costs: [{ ...cost, amount: moneyOf(10_000, 'XXX'), growth: 0 }] };
    const waiting = priceOfWaiting({ ...asked, option: once }, rules);
    expect(waiting?.waits[0]).toMatchObject({
      years: 1,
      rise: 0,
      care: 3100,
      growth: { value: 500, low: 250, high: 750 },
    });
    expect(waiting?.waits[1]?.growth).toEqual({ value: 1500, low: 750, high: 2250 });
    expect(waiting?.waits[0]?.extra).toEqual({ value: 3600, low: 3350, high: 3850 });
  });

  it('a growth nobody knows, or a whole surface that is priced anyway, adds nothing and is said', () => {
    const once = { ...stripAll.body };
    const unknown = priceOfWaiting({ ...asked, option: once, growth: null }, rules);
    expect(unknown?.waits[0]?.growth.value).toBe(0);
    expect(codes(unknown?.reasons ?? [])).toContain('waiting: growth not known');
    expect(codes(priceOfWaiting({ ...asked, option: once, whole: true }, rules)?.reasons ?? [])).toContain(
      'waiting: whole surface priced',
    );
  });

  it('care in another currency is not added', () => {
    const care = {
      thing: 'option/A',
      option: { ...waxOnly.body, costs: [{ ...cost, amount: moneyOf(1, 'CHF'), every: 1 }] },
    };
    const waiting = priceOfWaiting({ ...asked, option: stripAll.body, care }, rules);
    expect(waiting?.waits.map((wait) => wait.care)).toEqual([0, 0]);
    expect(codes(waiting?.reasons ?? [])).toContain('waiting: no care named');
  });
});
