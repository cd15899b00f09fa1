import { describe, expect, it } from 'vitest';
import { coveragePatch, patchHeight, patchWidth } from '../../../src/engine/photo';
import { ladder } from '../../../src/engine/trade';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Reads the drawn path again, apart from the code that wrote it. */
const linesOf = (path: string): Point[][] =>
  [...path.matchAll(/M([^Z]+)Z/g)].map(([, corners]) =>
    (corners as string).split('L').map((pair) => {
      const [x, y] = pair.split(' ').map(Number);
      return { x: x as number, y: y as number };
    }),
  );

/** Even-odd: how many points of a fine lattice lie inside. */
const counted = (path: string): number => {
  const edges = linesOf(path).flatMap((line) => line.map((a, i) => [a, line[(i + 1) % line.length] as Point] as const));
  const per = 8;
  let inside = 0;
  for (let row = 0; row < patchHeight * per; row += 1) {
    const y = (row + 0.5) / per;
    const cuts = edges
      .filter(([a, b]) => a.y > y !== b.y > y)
      .map(([a, b]) => a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x))
      .sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      inside += Math.floor((cuts[i + 1] as number) * per + 0.5) - Math.floor((cuts[i] as number) * per + 0.5);
    }
  }
  return inside / (patchWidth * patchHeight * per * per);
};

describe('the drawn patches beside the ladder', () => {
  it.each(ladder.map((step) => [step.name, step.value] as const))(
    '%s covers what it says, within 0.2 points',
    (_, value) => {
      const { path, share } = coveragePatch(value);
      expect(Math.abs(share - value)).toBeLessThan(0.002);
      expect(Math.abs(counted(path) - value)).toBeLessThan(0.002);
    },
  );

  it('stay within the frame', () => {
    for (const { value } of ladder) {
      for (const { x, y } of linesOf(coveragePatch(value).path).flat()) {
        expect(x >= 0 && x <= patchWidth && y >= 0 && y <= patchHeight).toBe(true);
      }
    }
  });

  it('show small amounts as several spots, as green begins', () => {
    expect(linesOf(coveragePatch(0.03).path).length).toBeGreaterThanOrEqual(3);
  });

  it('are the same each time, so that an eye can learn them', () => {
    expect(coveragePatch(0.2)).toBe(coveragePatch(0.2));
  });
});
