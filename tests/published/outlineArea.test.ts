import { describe, expect, it } from 'vitest';
import { areaMethods } from '../../src/engine/condition';
import { areaFromOutline, isRefused, type Outline, type Point, type Size } from '../../src/engine/photo';

const size: Size = { width: 4000, height: 3000 };
/** The bottom edge of the picture shows four metres. */
const scale = { a: [0, 0.9], b: [1, 0.9], metres: 4 } as const;

const area = (outline: Outline, obliquity?: number, of = scale as { a: Point; b: Point; metres: number }) => {
  const came = areaFromOutline(outline, size, of, obliquity);
  if (isRefused(came)) throw new Error(came.refused.map(({ code }) => code).join('; '));
  return came;
};

/** Corners in metres on the work, as they lie on a picture four metres wide and three high. */
const metres = (...corners: readonly (readonly [number, number])[]): Point[] => corners.map(([x, y]) => [x / 4, y / 3]);

describe('the area of an outline on a picture with a scale, against closed forms of geometry', () => {
  it('a square of 1 m has 1 m2', () => {
    expect(area([metres([1, 1], [2, 1], [2, 2], [1, 2])]).m2).toBeCloseTo(1, 12);
  });

  it('a triangle of sides 3, 4 and 5 half metres has 1.5 m2, however it is turned', () => {
    for (const turn of [0, 0.3, 1.1, 2.5]) {
      const at = (x: number, y: number) =>
        [1.8 + x * Math.cos(turn) - y * Math.sin(turn), 1.4 + x * Math.sin(turn) + y * Math.cos(turn)] as const;
      const corners = [at(-0.4, -0.4), at(1.1, -0.4), at(-0.4, 1.6)];
      expect(area([metres(...corners)]).m2).toBeCloseTo(1.5, 12);
    }
  });

  it('a regular polygon of 24 corners on a circle of radius 1 has 12 sin 15 degrees, 3.105828541 m2', () => {
    const corners = Array.from({ length: 24 }, (_, i) => {
      const angle = (2 * Math.PI * i) / 24;
      return [2 + Math.cos(angle), 1.5 + Math.sin(angle)] as const;
    });
    expect(area([metres(...corners)]).m2).toBeCloseTo(3.105828541, 9);
  });

  it('is told alike by a scale laid across, upright or aslant', () => {
    const square = [metres([1, 1], [2, 1], [2, 2], [1, 2])];
    const [a, b] = [metres([0.5, 0.5])[0]!, metres([0.5, 2.5])[0]!];
    expect(area(square, 1, { a, b, metres: 2 }).m2).toBeCloseTo(1, 12);
    const [c, d] = [metres([0.2, 0.2])[0]!, metres([2.6, 2])[0]!];
    expect(area(square, 1, { a: c, b: d, metres: 3 }).m2).toBeCloseTo(1, 12);
  });

  it('two pieces add, and where they lie on each other the surface counts once', () => {
    const left = metres([0.5, 1], [1.5, 1], [1.5, 2], [0.5, 2]);
    expect(area([left, metres([2, 1], [3, 1], [3, 2], [2, 2])]).m2).toBeCloseTo(2, 9);
    expect(area([left, metres([1, 1], [2, 1], [2, 2], [1, 2])]).m2).toBeCloseTo(1.5, 9);
  });

  it('a surface that is curved or in folds is larger than it shows, by its factor', () => {
    expect(area([metres([1, 1], [2, 1], [2, 2], [1, 2])], 1.6).m2).toBeCloseTo(1.6, 12);
  });
});

describe('the range of an area from an outline', () => {
  it('is 25 % to each side, as the table of area methods says', () => {
    expect(areaMethods.find(({ id }) => id === 'outline')?.error).toBe(0.25);
    const { m2, low, high, method } = area([metres([1, 1], [3, 1], [3, 2], [1, 2])]);
    expect(method).toBe('outline');
    expect([low / m2, high / m2].map((end) => Number(end.toFixed(12)))).toEqual([0.75, 1.25]);
  });

  it('is not told from a scale whose two places nearly meet: the hand alone could double the area', () => {
    const came = areaFromOutline([metres([1, 1], [2, 1], [2, 2])], size, {
      a: [0.5, 0.5],
      b: [0.55, 0.5],
      metres: 0.2,
    });
    expect(isRefused(came) && came.refused.map(({ code }) => code)).toEqual(['area: scale too short']);
  });

  it('is not told where there is no outline', () => {
    const came = areaFromOutline([], size, scale);
    expect(isRefused(came) && came.refused.map(({ code }) => code)).toEqual(['area: no outline']);
  });
});
