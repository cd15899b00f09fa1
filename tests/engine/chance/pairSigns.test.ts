import { describe, expect, it } from 'vitest';
import { drawnFrom, pairSigns, seedOf } from '../../../src/engine/chance';

const ofNumbers = (y: readonly number[], seed = 1) =>
  pairSigns(y.length, (i, j) => Math.sign((y[j] as number) - (y[i] as number)), seed);

describe('The test on the signs of pairs', () => {
  it.each([
    [3, 1 / 3],
    [4, 1 / 12],
    [5, 1 / 60],
    [6, 1 / 360],
  ])('gives %i things that only rise the two orders of all that are as far', (n, p) => {
    expect(ofNumbers(Array.from({ length: n }, (_, i) => i)).p).toBeCloseTo(p, 12);
  });

  it('is 1 where nothing can be told apart', () => {
    expect(ofNumbers([3, 3, 3, 3])).toEqual({ n: 4, sum: 0, p: 1, exact: true });
  });

  it('draws orders where there are too many, and comes near the exact share', () => {
    const y = [1, 2, 3, 4, 5, 6, 7, 9, 8, 10];
    const { p, exact, sum } = ofNumbers(y);
    expect(exact).toBe(false);
    expect(sum).toBe(43);
    expect(p).toBeGreaterThan(0);
    expect(p).toBeLessThan(0.001);
    expect(ofNumbers(y).p).toBe(p);
  });

  it('comes to the same whether signs are counted as bits or added one by one', () => {
    const drawn = drawnFrom(3);
    const few = Array.from({ length: 31 }, (_, i) => Math.floor(drawn.uniform() * 12) + i / 8);
    const slow = few.flatMap((a, i) => few.slice(i + 1).map((b) => Math.sign(b - a))).reduce((sum, s) => sum + s, 0);
    expect(ofNumbers(few).sum).toBe(slow);
    const many = [...few, 40];
    expect(ofNumbers(many).sum).toBe(slow + few.filter((a) => a < 40).length - few.filter((a) => a > 40).length);
  });

  it('answers for one thing and for none', () => {
    expect(ofNumbers([])).toEqual({ n: 0, sum: 0, p: 1, exact: true });
    expect(ofNumbers([4])).toEqual({ n: 1, sum: 0, p: 1, exact: true });
  });
});

describe('Draws', () => {
  it('are the same for the same seed, and normal ones have mean 0 and spread 1', () => {
    const [a, b] = [drawnFrom(7), drawnFrom(7)];
    expect([a.uniform(), a.normal(), a.below(10)]).toEqual([b.uniform(), b.normal(), b.below(10)]);
    const drawn = drawnFrom(seedOf('spread'));
    const rows = Array.from({ length: 20_000 }, () => drawn.normal());
    const mean = rows.reduce((sum, x) => sum + x, 0) / rows.length;
    const sd = Math.sqrt(rows.reduce((sum, x) => sum + (x - mean) ** 2, 0) / rows.length);
    expect(mean).toBeCloseTo(0, 1);
    expect(sd).toBeCloseTo(1, 1);
  });
});
