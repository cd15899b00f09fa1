import { describe, expect, it } from 'vitest';
import {
  curveOf,
  isWeighed,
  nextStep,
  type Price,
  planWithin,
  type Weighed,
  weigh,
  type ZoneToTreat,
} from '../../../src/engine/budget';
import { scoreZone } from '../../../src/engine/condition';
import type { BodyOf } from '../../../src/engine/record';
import { scaleOf } from '../../../src/engine/trade';
import { findingBody, findingThings, onLadder, visitThing, zoneThing } from '../condition/madeUp';

const scale = scaleOf(null);
const euros = (units: number) => ({ minor: Math.round(units * 100), currency: 'EUR' });
const price = (type: string, units: number, per: Price['per'] = 'm2'): Price => ({ type, each: euros(units), per });

const green = (label: string, kind = 'even-green-film') =>
  findingBody(kind, { severity: 'moderate', activity: 'active', coverage: onLadder(label) });
const worn = findingBody('wax-worn', { coverage: onLadder('50') });

const toTreat = (
  letter: string,
  m2: number,
  findings: readonly BodyOf<'finding'>[],
  more: { readonly stopWord?: boolean; readonly work?: string; readonly significance?: number } = {},
): ZoneToTreat => {
  const made = { zone: letter, findings };
  const zone = zoneThing(letter, m2, more.significance ?? 1);
  const seen = { visit: visitThing(made), findings: findingThings(made), zone, day: '2026-05-12' };
  const score = scoreZone(seen, scale);
  if (!score) throw new Error('a zone that was looked at has an index');
  return { sculpture: more.work ?? 'sculpture/heron', score, stopWord: more.stopWord ?? false };
};

const weighed = (zones: readonly ZoneToTreat[], prices: readonly Price[]): Weighed => {
  const all = weigh(zones, prices);
  if (!isWeighed(all)) throw new Error(all.code);
  return all;
};
const plan = (all: Weighed, units: number) => {
  const found = planWithin(all, euros(units));
  if ('code' in found) throw new Error(found.code);
  return found;
};

describe('the budget of a year', () => {
  it('counts as loss what the order of need counts: area times weight times what the index lacks', () => {
    const zone = toTreat('A', 2, [green('30')], { significance: 1.5 });
    const all = weighed([zone], [price('repatination', 2000)]);
    expect(all.loss.value).toBeCloseTo((2 * 1.5 * (100 - zone.score.value)) / 100, 10);
    expect(all.loss.low).toBeLessThan(all.loss.value);
    expect(all.loss.high).toBeGreaterThan(all.loss.value);
  });

  it('takes errors within a work to go one way, and those of different works to be their own', () => {
    const reach = (zones: readonly ZoneToTreat[]) => {
      const { loss } = weighed(zones, [price('repatination', 100)]);
      return loss.high - loss.value;
    };
    const one = reach([toTreat('A', 1, [green('30')])]);
    expect(reach([toTreat('A', 1, [green('30')]), toTreat('B', 1, [green('30')])])).toBeCloseTo(2 * one, 10);
    const elsewhere = toTreat('B', 1, [green('30')], { work: 'sculpture/rope' });
    expect(reach([toTreat('A', 1, [green('30')]), elsewhere])).toBeCloseTo(Math.SQRT2 * one, 10);
  });

  it('without money leaves all of it, and says of each zone that the money is too little', () => {
    const all = weighed([toTreat('A', 2, [green('30')])], [price('repatination', 2000)]);
    const { done, left, undone, spent } = plan(all, 0);
    expect([done, spent.minor]).toEqual([[], 0]);
    expect(undone.value).toBeCloseTo(all.loss.value, 3);
    expect(left.map(({ why }) => why.code)).toEqual(['budget: too little money']);
  });

  it('washes before it waxes, where washing has a price', () => {
    const zones = [toTreat('A', 1, [worn])];
    const both = weighed(zones, [price('wax', 40), price('wash', 15)]);
    expect(plan(both, 54.99).done).toEqual([]);
    expect(plan(both, 55).done.map(({ types, cost }) => [types, cost.minor])).toEqual([[['wax', 'wash'], 5500]]);
    const waxOnly = weighed(zones, [price('wax', 40)]);
    expect(plan(waxOnly, 40).done.map(({ types }) => types)).toEqual([['wax']]);
  });

  it('counts on a local treatment only where the finding is local', () => {
    const zones = [toTreat('A', 1, [green('30')]), toTreat('B', 1, [green('50')])];
    const { done, left } = plan(weighed(zones, [price('local treatment', 100)]), 10_000);
    expect(done.map(({ zone }) => zone)).toEqual(['zone/A']);
    expect(left.map(({ zone, why }) => [zone, why.code])).toEqual([['zone/B', 'budget: no work for it']]);
  });

  it('plans no work at all where a stop word was seen, before the conservator has spoken', () => {
    const zones = [toTreat('A', 1, [worn, green('10')], { stopWord: true })];
    const all = weighed(zones, [price('wax', 40), price('repatination', 400)]);
    expect(plan(all, 10_000).done).toEqual([]);
    expect(plan(all, 10_000).left.map(({ why }) => why.code)).toEqual(['budget: stop word']);
  });

  it('says where a conservator leads the work', () => {
    const zones = [toTreat('A', 1, [worn]), toTreat('B', 1, [green('10')])];
    const { done } = plan(weighed(zones, [price('wax', 40), price('local treatment', 400)]), 10_000);
    expect(done.map(({ types, askFirst }) => [types, askFirst])).toEqual([
      [['wax'], false],
      [['local treatment'], true],
    ]);
  });

  it('pays what is paid once for a work only once, and only where the work is treated', () => {
    const zones = [
      toTreat('A', 1, [green('30')]),
      toTreat('B', 1, [green('30')]),
      toTreat('C', 1, [green('5')], { work: 'sculpture/rope' }),
    ];
    const all = weighed(zones, [price('repatination', 100), price('repatination', 1000, 'work')]);
    const some = plan(all, 1250);
    expect(some.done.map(({ zone }) => zone)).toEqual(['zone/A', 'zone/B']);
    expect(some.once.map(({ sculpture, cost }) => [sculpture, cost.minor])).toEqual([['sculpture/heron', 100_000]]);
    expect(some.spent.minor).toBe(120_000);
    expect(plan(all, 1099).done).toEqual([]);
  });

  it('leaves dirt and what is sound out of the sum', () => {
    const dirt = findingBody('even-green-film', { origin: 'dirt', coverage: onLadder('50') });
    const all = weighed([toTreat('A', 1, [dirt]), toTreat('B', 1, [])], [price('repatination', 100)]);
    expect([all.loss.value, plan(all, 1000).done, plan(all, 1000).left]).toEqual([0, [], []]);
  });

  it('refuses prices, or a budget, of two currencies and never adds them', () => {
    const zones = [toTreat('A', 1, [green('30')])];
    const pounds: Price = { type: 'wax', each: { minor: 4000, currency: 'GBP' }, per: 'm2' };
    expect(weigh(zones, [price('repatination', 100), pounds])).toMatchObject({ code: 'money: currencies mixed' });
    const all = weighed(zones, [price('repatination', 100)]);
    expect(planWithin(all, { minor: 10_000, currency: 'GBP' })).toMatchObject({ code: 'money: currencies mixed' });
  });

  it('without a price has nothing to weigh and says so', () => {
    expect(weigh([toTreat('A', 1, [green('30')])], [])).toMatchObject({ code: 'budget: no price' });
  });

  it('has no work for a price of a kind this version does not know', () => {
    const { done, left } = plan(weighed([toTreat('A', 1, [green('30')])], [price('dry ice', 100)]), 1000);
    expect(done).toEqual([]);
    expect(left.map(({ why }) => why.code)).toEqual(['budget: no work for it']);
  });
});

describe('how it changes with the budget', () => {
  const zones = [toTreat('A', 2, [green('30')]), toTreat('B', 1, [green('70')]), toTreat('C', 3, [green('3')])];
  const all = weighed(zones, [price('repatination', 1000)]);

  it('starts with nothing spent, falls all the way and ends with all done that has a price', () => {
    const curve = curveOf(all);
    expect(curve[0]?.budget.minor).toBe(0);
    expect(curve.at(-1)).toMatchObject({ budget: euros(6000), undone: 0 });
    curve.slice(1).forEach((point, i) => void expect(point.undone).toBeLessThan(curve[i]?.undone ?? 0));
  });

  it('agrees with the plan at each of its places', () => {
    for (const { budget, undone } of curveOf(all)) {
      expect(plan(all, budget.minor / 100).undone.value).toBeCloseTo(undone, 12);
    }
  });

  it('keeps its ends where only some places are drawn', () => {
    const two = curveOf(all, 2);
    expect(two.map(({ budget }) => budget.minor)).toEqual([0, 600_000]);
  });

  it('names the step up that takes away most for its money', () => {
    const step = nextStep(all, euros(500));
    const bought = plan(all, 500 + (step?.more.minor ?? 0) / 100);
    expect(bought.done.map(({ zone }) => zone)).toEqual(['zone/B']);
    expect(step?.taken).toBeCloseTo(bought.taken, 12);
    expect(nextStep(all, euros(6000))).toBeUndefined();
  });
});
