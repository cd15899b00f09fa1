import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isWeighed, type Price, planWithin, weigh, type ZoneToTreat } from '../../src/engine/budget';
import { frontOf, type Way, waysOf, within } from '../../src/engine/budget/front';
import { scoreZone, zoneRange } from '../../src/engine/condition';
import { kindOf, ladder, scaleOf, settles, workEffectOf } from '../../src/engine/trade';
import { findingBody, findingThings, visitThing, zoneThing } from '../engine/condition/madeUp';

const way = fc.record({ cost: fc.integer({ min: 0, max: 60 }), gain: fc.integer({ min: 0, max: 60 }) });
const group = fc.array(way, { maxLength: 4 }).map((ways): readonly Way[] => [{ cost: 0, gain: 0 }, ...ways]);
const groups = fc.array(group, { maxLength: 6 });
const limit = fc.integer({ min: 0, max: 200 });

/** Every way to take one of each group, looked at one by one. */
const byTryingAll = (all: readonly (readonly Way[])[], most: number) => {
  let best = { cost: 0, gain: 0 };
  const go = (at: number, cost: number, gain: number): void => {
    if (cost > most) return;
    const here = all[at];
    if (!here) {
      if (gain > best.gain || (gain === best.gain && cost < best.cost)) best = { cost, gain };
      return;
    }
    for (const one of here) go(at + 1, cost + one.cost, gain + one.gain);
  };
  go(0, 0, 0);
  return best;
};

const chosen = (all: readonly (readonly Way[])[], most: number) => {
  const choice = within(frontOf(all), most);
  if (!choice) throw new Error('to leave everything costs nothing');
  return choice;
};
const sum = (of: readonly Way[], key: keyof Way) => of.reduce((total, one) => total + one[key], 0);

describe('the choice within a budget', () => {
  it('takes away as much, for as little, as trying every choice does', () => {
    fc.assert(
      fc.property(groups, limit, (all, most) => {
        const choice = chosen(all, most);
        expect({ cost: choice.cost, gain: choice.gain }).toEqual(byTryingAll(all, most));
        const ways = waysOf(choice);
        expect(ways).toHaveLength(all.length);
        ways.forEach((one, i) => void expect(all[i]).toContainEqual(one));
        expect([sum(ways, 'cost'), sum(ways, 'gain')]).toEqual([choice.cost, choice.gain]);
      }),
      { numRuns: 2000 },
    );
  });

  it('never leaves more undone for more money', () => {
    fc.assert(
      fc.property(groups, limit, limit, (all, one, other) => {
        const less = chosen(all, Math.min(one, other));
        const more = chosen(all, Math.max(one, other));
        expect(more.gain).toBeGreaterThanOrEqual(less.gain);
      }),
      { numRuns: 1000 },
    );
  });

  it('has no step in its curve that another choice beats, and misses none', () => {
    fc.assert(
      fc.property(groups, (all) => {
        const front = frontOf(all);
        front.slice(1).forEach((point, i) => {
          expect(point.cost).toBeGreaterThan(front[i]?.cost ?? 0);
          expect(point.gain).toBeGreaterThan(front[i]?.gain ?? 0);
          expect(byTryingAll(all, point.cost - 1).gain).toBeLessThan(point.gain);
        });
      }),
      { numRuns: 100 },
    );
  });

  it('does not care in which order the groups come', () => {
    fc.assert(
      fc.property(groups, (all) => {
        const numbers = (of: typeof all) => frontOf(of).map(({ cost, gain }) => [cost, gain]);
        expect(numbers([...all].reverse())).toEqual(numbers(all));
      }),
    );
  });
});

const letters = ['A', 'B', 'C', 'D'];
const treatable = fc
  .record({
    m2: fc.integer({ min: 1, max: 40 }).map((tenths) => tenths / 10),
    work: fc.constantFrom('sculpture/heron', 'sculpture/rope'),
    kinds: fc.uniqueArray(fc.constantFrom('even-green-film', 'wax-worn', 'droppings', 'open-joint', 'black-crust'), {
      minLength: 1,
      maxLength: 3,
    }),
    step: fc.constantFrom(...ladder.filter(({ value }) => value > 0)),
  })
  .map(({ m2, work, kinds, step }) => ({ m2, work, kinds, step }));
const zoneOf = (
  i: number,
  { m2, work, kinds, step }: { m2: number; work: string; kinds: string[]; step: (typeof ladder)[number] },
): ZoneToTreat => {
  const coverage = { value: step.value, low: step.low, high: step.high, method: 'ladder' as const };
  const made = { zone: letters[i] ?? 'Z', findings: kinds.map((kind) => findingBody(kind, { coverage })) };
  const zone = zoneThing(made.zone, m2);
  const seen = { visit: visitThing(made), findings: findingThings(made), zone, day: '2026-05-12' };
  const score = scoreZone(seen, scaleOf(null));
  if (!score) throw new Error('a zone that was looked at has an index');
  return { sculpture: work, score, stopWord: false };
};
const price = fc
  .record({
    type: fc.constantFrom('wash', 'wax', 'local treatment', 'repatination', 'repair'),
    minor: fc.integer({ min: 1, max: 5000 }),
    per: fc.constantFrom('m2' as const, 'zone' as const, 'work' as const),
  })
  .map(({ type, minor, per }): Price => ({ type, each: { minor, currency: 'EUR' }, per }));

/** The least left undone within a limit, each set of works tried in each zone and paid for by a sum of its own. */
const leastUndone = (zones: readonly ZoneToTreat[], prices: readonly Price[], limit: number): number => {
  const types = [...new Set(prices.map(({ type }) => type))];
  const costs = (type: string, per: Price['per'], factor = 1) =>
    prices.filter((one) => one.type === type && one.per === per).map(({ each }) => Math.round(each.minor * factor));
  const add = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
  let least = Number.POSITIVE_INFINITY;
  const go = (at: number, paid: number, undone: number, once: ReadonlySet<string>): void => {
    const zone = zones[at];
    if (!zone) {
      if (paid <= limit) least = Math.min(least, undone);
      return;
    }
    for (let set = 0; set < 2 ** types.length; set++) {
      const chosen = types.filter((_, i) => set & (1 << i));
      const partner = chosen
        .map((type) => workEffectOf(type)?.with)
        .find((other) => other && types.includes(other) && !chosen.includes(other));
      if (partner) continue;
      const left = zone.score.findings.filter(({ finding }) => {
        const kind = kindOf(finding.kind);
        return !chosen.some((type) => {
          const effect = workEffectOf(type);
          return effect && kind && settles(effect, kind, finding.coverage?.value);
        });
      });
      const here = add(chosen.flatMap((type) => [...costs(type, 'm2', zone.score.area.m2), ...costs(type, 'zone')]));
      const first = chosen.filter((type) => !once.has(`${zone.sculpture} ${type}`));
      const coming = add(first.flatMap((type) => costs(type, 'work')));
      const after = (zone.score.area.m2 * (100 - zoneRange(left).value)) / 100;
      const next = new Set([...once, ...first.map((type) => `${zone.sculpture} ${type}`)]);
      go(at + 1, paid + here + coming, undone + after, next);
    }
  };
  go(0, 0, 0, new Set());
  return least;
};

describe('the plan of a year', () => {
  const zones = fc.array(treatable, { minLength: 1, maxLength: 4 }).map((all) => all.map((row, i) => zoneOf(i, row)));
  const prices = fc.array(price, { minLength: 1, maxLength: 4 });
  const budget = fc.integer({ min: 0, max: 40_000 });

  it('leaves no more undone than the best of all ways to spend the money, and spends no more than there is', () => {
    fc.assert(
      fc.property(zones, prices, budget, (all, offered, minor) => {
        const weighed = weigh(all, offered);
        if (!isWeighed(weighed)) throw new Error(weighed.code);
        const plan = planWithin(weighed, { minor, currency: 'EUR' });
        if ('code' in plan) throw new Error(plan.code);
        expect(plan.spent.minor).toBeLessThanOrEqual(minor);
        const paid = [...plan.done, ...plan.once].reduce((sum, { cost }) => sum + cost.minor, 0);
        expect(paid).toBe(plan.spent.minor);
        // Rounded to its steps zone by zone.
        const dust = weighed.unit * all.length;
        expect(Math.abs(plan.undone.value - leastUndone(all, offered, minor))).toBeLessThanOrEqual(dust);
      }),
      { numRuns: 300 },
    );
  });

  it('never leaves more undone for more money', () => {
    fc.assert(
      fc.property(zones, prices, budget, budget, (all, offered, one, other) => {
        const weighed = weigh(all, offered);
        if (!isWeighed(weighed)) throw new Error(weighed.code);
        const undone = (minor: number) => {
          const plan = planWithin(weighed, { minor, currency: 'EUR' });
          if ('code' in plan) throw new Error(plan.code);
          return plan.undone.value;
        };
        expect(undone(Math.max(one, other))).toBeLessThanOrEqual(undone(Math.min(one, other)));
      }),
      { numRuns: 300 },
    );
  });
});
