import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverOf, type Fund, type Gift } from '../../src/engine/fund';

const euros = (minor: number) => ({ minor, currency: 'EUR' });
const states = ['spent', 'in hand', 'pledged', 'hoped', 'lost'] as const;
const ids = ['a', 'b', 'c', 'd', 'e'];

const lines = fc
  .array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 5 })
  .map((amounts): Fund['lines'] =>
    amounts.map((minor, i) => ({ id: ids[i] ?? 'z', name: `line ${i}`, amount: euros(minor) })),
  );
const gift = fc
  .record({
    minor: fc.integer({ min: 1, max: 40 }),
    state: fc.constantFrom(...states),
    only: fc.option(fc.uniqueArray(fc.constantFrom(...ids), { minLength: 1, maxLength: 3 }), { nil: undefined }),
  })
  .map(
    ({ minor, state, only }): Gift => ({
      ...{ fund: 'fund/1', who: 'somebody', amount: euros(minor), state, chance: 0.5 },
      ...(only ? { only } : {}),
    }),
  );
const gifts = fc.array(gift, { maxLength: 7 });

/** No sharing out pays more than any set of lines holds and the gifts that may pay for others bring: the least of these is the most. */
const mostPaid = (all: Fund['lines'], given: readonly Gift[]): number => {
  let least = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** all.length; set++) {
    const cut = all.filter((_, i) => set & (1 << i));
    const open = all.filter((line) => !cut.includes(line)).map(({ id }) => id);
    const through = given.filter(({ only }) => open.some((id) => !only || only.includes(id)));
    const sum = [...cut, ...through].reduce((total, { amount }) => total + amount.minor, 0);
    least = Math.min(least, sum);
  }
  return least;
};

const upTo = (given: readonly Gift[], last: number): readonly Gift[] =>
  given.filter(({ state }) => state !== 'lost' && states.indexOf(state) <= last);

describe('gifts shared out over lines', () => {
  it('pay as much as can be paid at each step, and no step pays less for the next', () => {
    fc.assert(
      fc.property(lines, gifts, (all, given) => {
        const { inHand, pledged, hoped } = coverOf(all, given);
        expect(inHand).toBe(mostPaid(all, upTo(given, 1)));
        expect(inHand + pledged).toBe(mostPaid(all, upTo(given, 2)));
        expect(inHand + pledged + hoped).toBe(mostPaid(all, upTo(given, 3)));
        expect(Math.min(pledged, hoped)).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('never pay a line more than it costs, nor use more of a gift than it is, nor pay what it may not', () => {
    fc.assert(
      fc.property(lines, gifts, (all, given) => {
        const cover = coverOf(all, given);
        for (const { id, amount } of all) {
          const paid = cover.lines.get(id);
          const sum = (paid?.inHand ?? 0) + (paid?.pledged ?? 0) + (paid?.hoped ?? 0);
          expect(sum).toBeLessThanOrEqual(amount.minor);
          const mayPay = given.filter(({ only, state }) => state !== 'lost' && (!only || only.includes(id)));
          expect(sum).toBeLessThanOrEqual(mayPay.reduce((total, one) => total + one.amount.minor, 0));
        }
        cover.used.forEach((used, i) => void expect(used).toBeLessThanOrEqual(given[i]?.amount.minor ?? 0));
        const total = cover.used.reduce((sum, used) => sum + used, 0);
        expect(total).toBe(cover.inHand + cover.pledged + cover.hoped);
      }),
      { numRuns: 500 },
    );
  });

  it('name the lines that more is tied to than they cost, with the sum that has no use', () => {
    fc.assert(
      fc.property(lines, gifts, (all, given) => {
        const cover = coverOf(all, given);
        for (const { lines: tied, gifts: tying, over } of cover.overfull) {
          const holds = all.filter(({ id }) => tied.includes(id)).reduce((sum, { amount }) => sum + amount.minor, 0);
          const brought = tying.reduce((sum, place) => sum + (given[place]?.amount.minor ?? 0), 0);
          expect(over).toBe(brought - holds);
          for (const place of tying) {
            const may =
              given[place]?.only?.filter((id) => all.some((line) => line.id === id)) ?? all.map(({ id }) => id);
            expect(tied).toEqual(expect.arrayContaining([...may]));
          }
        }
        const idle = given.reduce(
          (sum, one, i) => sum + (one.state === 'lost' ? 0 : one.amount.minor - (cover.used[i] ?? 0)),
          0,
        );
        expect(cover.overfull.reduce((sum, { over }) => sum + over, 0)).toBe(idle);
      }),
      { numRuns: 1000 },
    );
  });
});
