import { describe, expect, test } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import {
  contains,
  joined,
  labelAt,
  nearestCorner,
  type Outline,
  outlineFault,
  type Ring,
  withCorner,
  withCornerAfter,
} from '../../../src/engine/photo';

const box = (x: number, y: number, wide: number, high = wide): Ring => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];
const size = { width: 300, height: 400 };

describe('What is an outline', () => {
  test('pieces that meet, or lie a little over each other, are one outline; one drawn mostly on another is not', () => {
    expect(outlineFault([box(0.1, 0.1, 0.2), box(0.3, 0.1, 0.2)])).toBeUndefined();
    expect(outlineFault([box(0.1, 0.1, 0.2), box(0.3, 0.3, 0.2)])).toBeUndefined();
    expect(outlineFault([box(0.1, 0.1, 0.2), box(0.28, 0.1, 0.2)])).toBeUndefined();
    expect(outlineFault([box(0.1, 0.1, 0.2), box(0.15, 0.15, 0.2)])).toBe('pieces overlap');
    expect(outlineFault([box(0.1, 0.1, 0.2), box(0.1, 0.1, 0.2)])).toBe('pieces overlap');
  });

  test('a cross of two bars overlaps though no corner of one lies in the other', () => {
    expect(outlineFault([box(0.1, 0.4, 0.8, 0.1), box(0.45, 0.1, 0.1, 0.8)])).toBe('pieces overlap');
  });
});

describe('Corners', () => {
  test('a corner joins a neighbour’s within twelve thousandths of the width, measured alike both ways, and no other', () => {
    const neighbours: Outline = [box(0.2, 0.2, 0.2)];
    expect(joined([0.41, 0.2], neighbours, size)).toEqual([0.4, 0.2]);
    expect(joined([0.415, 0.2], neighbours, size)).toEqual([0.415, 0.2]);
    // That much of the width is less of the height where the picture is upright.
    expect(joined([0.4, 0.192], neighbours, size)).toEqual([0.4, 0.2]);
    expect(joined([0.4, 0.19], neighbours, size)).toEqual([0.4, 0.19]);
    expect(joined([0.4, 0.2], [], size)).toEqual([0.4, 0.2]);
  });

  test('moving a corner leaves the others, and keeps it on the picture', () => {
    const outline: Outline = [box(0.1, 0.1, 0.2), box(0.5, 0.5, 0.2)];
    const at = nearestCorner(outline, [0.71, 0.72], size);
    expect(at).toEqual({ ring: 1, corner: 2 });
    const moved = withCorner(outline, at!, () => [1.3, -0.2]);
    expect(moved[0]).toEqual(outline[0]);
    expect(moved[1]).toEqual([
      [0.5, 0.5],
      [0.7, 0.5],
      [1, 0],
      [0.5, 0.7],
    ]);
    expect(withCorner(outline, at!, () => undefined)[1]).toHaveLength(3);
  });

  test('a corner added lies halfway to the next one, also from the last to the first', () => {
    const { outline, at } = withCornerAfter([box(0, 0, 0.2)], { ring: 0, corner: 3 });
    expect(at).toEqual({ ring: 0, corner: 4 });
    expect(outline[0]?.[4]).toEqual([0, 0.1]);
  });
});

describe('Where the letter of a zone stands', () => {
  test('in the zone and clear of what lies over it, for two hundred drawn zones', () => {
    const drawn = drawnFrom(11);
    for (let i = 0; i < 200; i++) {
      const corners = 3 + drawn.below(9);
      const ring: Ring = Array.from({ length: corners }, (_, k) => {
        const [angle, reach] = [(2 * Math.PI * k) / corners, 0.08 + 0.3 * drawn.uniform()];
        return [0.5 + reach * Math.cos(angle), 0.5 + reach * Math.sin(angle)];
      });
      const over: Outline[] = [[box(0.44 + 0.1 * drawn.uniform(), 0.44 + 0.1 * drawn.uniform(), 0.06)]];
      const label = labelAt([ring], over, size);
      expect(label, `zone ${i}`).toBeDefined();
      expect(contains([ring], label!.at), `zone ${i}`).toBe(true);
      expect(contains(over[0]!, label!.at), `zone ${i}`).toBe(false);
      expect(label!.room).toBeGreaterThan(0);
    }
  });

  test('in the middle of a square, half its width from every edge', () => {
    const label = labelAt([box(0.2, 0.2, 0.4, 0.3)], [], size)!;
    expect(label.at[0]).toBeCloseTo(0.4, 1);
    expect(label.at[1]).toBeCloseTo(0.35, 1);
    expect(label.room).toBeCloseTo(0.2, 1);
  });
});
