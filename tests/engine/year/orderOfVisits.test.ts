import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOfVisits, type Spot } from '../../../src/engine/year';

const spot = fc.record({
  x: fc.double({ min: 0, max: 1, noNaN: true }),
  y: fc.double({ min: 0, max: 1, noNaN: true }),
});
const named = (spots: readonly Spot[]) => new Map(spots.map((one, i) => [`work ${i}`, one]));

const walked = (
  order: readonly string[],
  spots: ReadonlyMap<string, Spot>,
  start: Spot | undefined,
  aspect: number,
) => {
  const path = [...(start ? [start] : []), ...order.map((work) => spots.get(work) as Spot)];
  return path.slice(1).reduce((sum, b, i) => {
    const a = path[i] as Spot;
    return sum + Math.hypot(a.x - b.x, (a.y - b.y) * aspect);
  }, 0);
};

const allOrders = <T>(list: readonly T[]): T[][] =>
  list.length < 2
    ? [[...list]]
    : list.flatMap((one, i) => allOrders([...list.slice(0, i), ...list.slice(i + 1)]).map((rest) => [one, ...rest]));

describe('The order of visits', () => {
  it('of a few works is the shortest of all orders, from where she starts or from anywhere', () => {
    fc.assert(
      fc.property(
        fc.array(spot, { minLength: 1, maxLength: 6 }),
        fc.option(spot, { nil: undefined }),
        fc.double({ min: 0.3, max: 3, noNaN: true }),
        (places, start, aspect) => {
          const spots = named(places);
          const { order, length, exact } = orderOfVisits([...spots.keys()], spots, start, aspect);
          const best = Math.min(...allOrders([...spots.keys()]).map((each) => walked(each, spots, start, aspect)));
          expect(exact).toBe(true);
          expect([...order].sort()).toEqual([...spots.keys()].sort());
          expect(length).toBeCloseTo(best, 9);
          expect(walked(order, spots, start, aspect)).toBeCloseTo(length, 9);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of many visits each once, and is never longer than the order they were given in', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 13, maxLength: 24 }), spot, (places, start) => {
        const spots = named(places);
        const works = [...spots.keys()];
        const { order, length, exact } = orderOfVisits(works, spots, start, 0.75);
        expect(exact).toBe(false);
        expect([...order].sort()).toEqual([...works].sort());
        expect(length).toBeLessThanOrEqual(walked(works, spots, start, 0.75) + 1e-9);
      }),
      { numRuns: 15 },
    );
  });

  it('finds the way round a ring of many works, where every shortcut is longer', () => {
    const ring = Array.from({ length: 20 }, (_, i) => ({
      x: 0.5 + 0.4 * Math.cos((i * 7 * 2 * Math.PI) / 20),
      y: 0.5 + 0.4 * Math.sin((i * 7 * 2 * Math.PI) / 20),
    }));
    const spots = named(ring);
    const { length } = orderOfVisits([...spots.keys()], spots, ring[0], 1);
    expect(length).toBeCloseTo(19 * 2 * 0.4 * Math.sin(Math.PI / 20), 6);
  });

  it('of three hundred works visits each once, and far shorter than as they were given', () => {
    const far = Array.from({ length: 300 }, (_, i) => ({ x: ((i * 37) % 300) / 300, y: ((i * 91) % 300) / 300 }));
    const spots = named(far);
    const works = [...spots.keys()];
    const { order, length } = orderOfVisits(works, spots, { x: 0, y: 0 }, 1);
    expect(new Set(order).size).toBe(300);
    expect(length).toBeLessThan(walked(works, spots, { x: 0, y: 0 }, 1) / 3);
  });

  it('puts works without a spot last and says how many they are', () => {
    const spots = new Map([['b', { x: 0.5, y: 0.5 }]]);
    const { order, reasons } = orderOfVisits(['a', 'b', 'c'], spots, undefined, 1);
    expect(order).toEqual(['b', 'a', 'c']);
    expect(reasons).toContainEqual({ code: 'year: no spot', params: { works: 2 } });
    expect(orderOfVisits(['a'], new Map(), undefined, 1)).toMatchObject({ order: ['a'], length: 0 });
    expect(orderOfVisits([], new Map(), undefined, 1).order).toEqual([]);
  });
});
