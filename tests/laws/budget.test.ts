import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontOf, type Way, waysOf, within } from '../../src/engine/budget/front';

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
