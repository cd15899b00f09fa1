import { describe, expect, it } from 'vitest';
import {
  ciede2000,
  colourDifference,
  colourNumbers,
  comparable,
  type Lab,
  meanReading,
  type ReadingConditions,
  strayPlacings,
} from '../../../src/engine/colour';

const usual: ReadingConditions = {
  illuminant: 'D65',
  observer: '10',
  geometry: 'd/8 included',
  aperture: 8,
  surface: 'dry',
};
const lab = (L: number, a: number, b: number): Lab => ({ L, a, b });
const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

describe('what may be compared', () => {
  it('is what was read in the same way, whichever comes first', () => {
    expect(comparable(usual, { ...usual })).toEqual([]);
  });

  it.each([
    ['illuminant', { illuminant: 'C' }, 'colour: other illuminant'],
    ['observer', { observer: '2' }, 'colour: other observer'],
    ['geometry: shine left out', { geometry: 'd/8 excluded' }, 'colour: other geometry'],
    ['geometry: at an angle', { geometry: '45/0' }, 'colour: other geometry'],
    ['aperture', { aperture: 4 }, 'colour: other aperture'],
    ['water on it', { surface: 'wet' }, 'colour: other wetness'],
  ] as const)('is not: another %s', (_, differs, code) => {
    const other = { ...usual, ...differs } as ReadingConditions;
    expect(codes(comparable(usual, other))).toEqual([code]);
    expect(codes(comparable(other, usual))).toEqual([code]);
  });

  it('names every condition that differs, so that all can be asked for at once', () => {
    const other: ReadingConditions = { illuminant: 'C', observer: '2', geometry: '45/0', aperture: 4, surface: 'damp' };
    expect(comparable(usual, other)).toHaveLength(5);
  });

  it('holds an opening nobody wrote down against nobody', () => {
    expect(comparable({ ...usual, aperture: undefined }, usual)).toEqual([]);
  });
});

describe('the mean of placings', () => {
  it('is that of each figure, with its standard deviation', () => {
    const { n, mean, sd } = meanReading([lab(30, -4, 8), lab(32, -5, 9), lab(34, -6, 13)]);
    expect(n).toBe(3);
    expect(mean).toEqual(lab(32, -5, 10));
    expect(sd?.L).toBeCloseTo(2, 12);
    expect(sd?.a).toBeCloseTo(1, 12);
    expect(sd?.b).toBeCloseTo(Math.sqrt(7), 12);
  });

  it('has as its spread how far one placing lies from it, in units of the difference told', () => {
    const { spread } = meanReading([lab(31, 0, 0), lab(33, 0, 0)]);
    expect(spread).toBeCloseTo(
      Math.sqrt(ciede2000(lab(31, 0, 0), lab(32, 0, 0)) ** 2 + ciede2000(lab(33, 0, 0), lab(32, 0, 0)) ** 2),
      12,
    );
  });

  it('of one placing has no spread, and of none is a fault', () => {
    expect(meanReading([lab(30, 1, 2)])).toMatchObject({ n: 1, mean: lab(30, 1, 2), sd: null, spread: null });
    expect(() => meanReading([])).toThrow(/no placing/);
  });

  it('asks after the one placing that was mistyped, and after none in an even set or in two', () => {
    const even = [lab(32.1, -4.2, 9.8), lab(31.8, -4.4, 9.1), lab(32.6, -4, 10.2)];
    expect(strayPlacings(even)).toEqual([]);
    expect(strayPlacings([...even, lab(3.26, -4, 10.2)])).toEqual([3]);
    expect(strayPlacings([lab(32, -4.2, 9.8), lab(3.2, -4.2, 9.8)])).toEqual([]);
  });
});

describe('a difference', () => {
  const before = meanReading([lab(30, -4, 10), lab(30.4, -4.2, 10.4), lab(29.6, -3.8, 9.6)]);
  const after = meanReading([lab(32, -6, 10), lab(32.4, -6.2, 10.4), lab(31.6, -5.8, 9.6)]);

  it('is that of the means, within its range, made of later less earlier', () => {
    const told = colourDifference(before, after);
    expect(told.value).toBeCloseTo(ciede2000(before.mean, after.mean), 12);
    expect(told.low).toBeLessThan(told.value);
    expect(told.high).toBeGreaterThan(told.value);
    expect(told.parts.L).toBeCloseTo(2, 12);
    expect(told.parts.a).toBeCloseTo(-2, 12);
    expect(told.parts.b).toBeCloseTo(0, 12);
    expect(codes(told.reasons)).toEqual(['colour: spread of placings']);
  });

  it('of two equal readings is nothing, and its range begins there', () => {
    expect(colourDifference(before, before)).toMatchObject({ value: 0, low: 0 });
  });

  it('rests on an assumed spread where single placings tell none, and says so', () => {
    const one = meanReading([lab(30, -4, 10)]);
    const told = colourDifference(one, meanReading([lab(31, -4, 10)]));
    expect(codes(told.reasons)).toEqual(['colour: spread assumed', 'colour: few placings']);
    // 2.0838 is the 90 % quantile of chi squared with 3 degrees, over 3.
    expect(told.high - told.value).toBeCloseTo(Math.sqrt(2.0838 * 2) * colourNumbers.assumedSpread.value, 3);
    expect(told.low).toBe(0);
  });

  it('to an agreed colour has the error of one reading only, for what was agreed holds as it is written', () => {
    const agreed = colourDifference({ agreed: before.mean }, after);
    const read = colourDifference(before, after);
    expect(agreed.value).toBe(read.value);
    // Fewer degrees widen it, one mean less narrows it: sqrt(F(3, 2) / 3) against sqrt(F(3, 4) x 2 / 3), F at 90 % by tables 9.16 and 4.19.
    expect((agreed.high - agreed.value) / (after.spread ?? 0)).toBeCloseTo(Math.sqrt(9.1618 / 3), 3);
    expect((read.high - read.value) / (after.spread ?? 0)).toBeCloseTo(Math.sqrt((4.1909 * 2) / 3), 1);
  });

  it('over five units says that the figure only means far apart', () => {
    const far = meanReading([lab(60, -20, 0), lab(60.2, -20, 0), lab(59.8, -20, 0)]);
    expect(codes(colourDifference(before, far).reasons)).toContain('colour: too far apart for the formula');
  });
});
