import { describe, expect, it } from 'vitest';
import { type Interval, stepsOf, survivalAt, turnbull } from '../../../src/engine/life';

const never = Number.POSITIVE_INFINITY;
const life = (lower: number, upper: number): Interval => ({ lower, upper });
const stretches = (lives: readonly Interval[]) => turnbull(lives).masses.map(({ left, right }) => [left, right]);

describe('where the mass can lie', () => {
  it.each([
    [
      'intervals that meet at an end share nothing',
      [life(0, 4), life(4, 8)],
      [
        [0, 4],
        [4, 8],
      ],
    ],
    ['overlapping intervals share their overlap', [life(0, 6), life(4, 8)], [[4, 6]]],
    ['a time seen lies within the interval it closes', [life(2, 5), life(5, 5)], [[5, 5]]],
    [
      'a time seen lies outside the interval it opens',
      [life(5, 9), life(5, 5)],
      [
        [5, 5],
        [5, 9],
      ],
    ],
    [
      'still lasting leaves what is past all looks',
      [life(1, 3), life(6, never)],
      [
        [1, 3],
        [6, never],
      ],
    ],
  ] as const)('%s', (_, lives, expected) => {
    expect(stretches(lives)).toEqual(expected);
  });

  it('is all of time where nothing was seen', () => {
    expect(turnbull([life(0, never)])).toMatchObject({
      masses: [{ left: 0, right: never, mass: 1 }],
      logLikelihood: 0,
    });
    expect(turnbull([]).masses).toEqual([]);
  });
});

describe('how much lies there', () => {
  it('is worked out by hand for three intervals', () => {
    // (0, 2], (1, 3], (2, 4]: the mass is in (1, 2] and (2, 3]; p (1) (1 - p) is greatest at one half.
    const { masses, logLikelihood } = turnbull([life(0, 2), life(1, 3), life(2, 4)]);
    expect(masses).toEqual([
      { left: 1, right: 2, mass: expect.closeTo(0.5, 9) },
      { left: 2, right: 3, mass: expect.closeTo(0.5, 9) },
    ]);
    expect(logLikelihood).toBeCloseTo(2 * Math.log(0.5), 9);
  });
});

describe('the share still lasting', () => {
  const found = turnbull([life(0, 2), life(4, 4), life(4, 6), life(6, never)]);

  it('is sure between the stretches and between two bounds within them', () => {
    expect(survivalAt(found, 1)).toEqual({ low: expect.closeTo(0.75, 9), high: 1 });
    for (const t of [2, 3, 3.999])
      expect(survivalAt(found, t)).toEqual({ low: expect.closeTo(0.75, 9), high: expect.closeTo(0.75, 9) });
    expect(survivalAt(found, 4).high).toBeCloseTo(0.5, 9);
    expect(survivalAt(found, 5)).toEqual({ low: expect.closeTo(0.25, 9), high: expect.closeTo(0.5, 9) });
    expect(survivalAt(found, 7)).toEqual({ low: 0, high: expect.closeTo(0.25, 9) });
  });

  it('is drawn in steps without a gap, the last one open', () => {
    const steps = stepsOf(found);
    expect([steps[0]?.from, steps.at(-1)?.to]).toEqual([0, never]);
    expect(steps.slice(1).every(({ from }, i) => from === steps[i]?.to)).toBe(true);
  });
});
