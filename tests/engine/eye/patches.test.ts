import { describe, expect, it } from 'vitest';
import { eyeNumbers, patchesOf, patchOf, patchSide } from '../../../src/engine/eye';

const green = (pixels: Uint8ClampedArray): number => {
  let count = 0;
  for (let i = 0; i < pixels.length; i += 4) if ((pixels[i + 1] ?? 0) >= (pixels[i] ?? 0)) count++;
  return count / (pixels.length / 4);
};

describe('The patches of an eye check', () => {
  const patches = patchesOf(11);

  it('are twelve pictures of the stated size', () => {
    expect(patches).toHaveLength(eyeNumbers.patches.value);
    for (const { pixels, side } of patches) {
      expect(side).toBe(patchSide);
      expect(pixels).toHaveLength(side * side * 4);
    }
  });

  it('cover just what they say: all that is grown is at least as green as red, nothing of the ground is', () => {
    for (const { pixels, truth } of patches) expect(green(pixels)).toBe(truth);
  });

  it.each([1, 2, 3])('have half of their covers under 10, one under 1 and one over 60 percent (seed %i)', (seed) => {
    const truths = patchesOf(seed).map(({ truth }) => truth);
    expect(truths.filter((truth) => truth < 0.1)).toHaveLength(6);
    expect(Math.min(...truths)).toBeLessThan(0.01);
    expect(Math.min(...truths)).toBeGreaterThan(0.002);
    expect(Math.max(...truths)).toBeGreaterThan(0.6);
  });

  it('are drawn the same for the same seed, alone or together', () => {
    const [one, again] = [patches[7], patchOf(11, 7)];
    expect(again.truth).toBe(one?.truth);
    expect(again.pixels).toEqual(one?.pixels);
  });

  it('come in another order, of other covers and shapes, for another seed', () => {
    const told = (seed: number) => patchesOf(seed).map(({ truth, growth }) => `${truth} ${growth}`);
    const seen = [1, 2].map(told);
    expect(new Set(seen.map((one) => one.join())).size).toBe(2);
    expect(new Set(seen.flat()).size).toBe(24);
  });

  it('have each way of growing three times, and none of them only where little is green', () => {
    const all = [1, 2, 3].flatMap((seed) => patchesOf(seed));
    for (const growth of ['spots', 'runs', 'edges', 'film']) {
      const truths = all.filter((patch) => patch.growth === growth).map(({ truth }) => truth);
      expect(truths).toHaveLength(9);
      expect(Math.min(...truths)).toBeLessThan(0.05);
      expect(Math.max(...truths)).toBeGreaterThan(0.2);
    }
  });

  it('refuse a place outside the check', () => {
    expect(() => patchOf(1, 12)).toThrow(RangeError);
  });
});
