import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import { commonShape, type Interval, weibull } from '../../../src/engine/life';

const open = Number.POSITIVE_INFINITY;

/** Lives of one shape in clusters whose scales differ by a factor, seen every half unit. */
const clustersOf = (shape: number, clusters: number, each: number, spread: number, seed = 3): Interval[][] => {
  const drawn = drawnFrom(seed);
  return Array.from({ length: clusters }, () => {
    const scale = 10 * Math.exp(spread * drawn.normal());
    return Array.from({ length: each }, () => {
      const life = scale * (-Math.log(1 - drawn.uniform())) ** (1 / shape);
      const lower = Math.floor(life * 2) / 2;
      return { lower, upper: lower + 0.5 };
    });
  });
};

describe('a shape common to clusters', () => {
  it('is found back where the clusters differ widely, and a fit of all together is far flatter', () => {
    const clusters = clustersOf(3, 60, 5, 0.8);
    const common = commonShape(clusters);
    expect(common?.shape).toBeGreaterThan(2.6);
    expect(common?.shape).toBeLessThan(3.5);
    const together = weibull(clusters.flat());
    expect(together.ok && together.shape.value).toBeLessThan(1.8);
  });

  it('is hardly off with three lives in each cluster', () => {
    const shapes = [1, 2, 3, 4].map((seed) => commonShape(clustersOf(2, 80, 3, 0.5, seed))?.shape ?? 0);
    const mean = shapes.reduce((sum, shape) => sum + shape, 0) / shapes.length;
    expect(mean).toBeGreaterThan(1.7);
    expect(mean).toBeLessThan(2.4);
  });

  it('counts the clusters that tell of it, and leaves out those that cannot', () => {
    const clusters = [
      ...clustersOf(2, 4, 5, 0.3),
      [{ lower: 3, upper: 4 }],
      [
        { lower: 0, upper: 4 },
        { lower: 0, upper: 5 },
      ],
      [
        { lower: 3, upper: open },
        { lower: 5, upper: open },
      ],
    ];
    expect(commonShape(clusters)).toMatchObject({ clusters: 4, lives: 20 });
  });

  it('is none where one moment in each cluster would suit all its lives, or nothing tells', () => {
    const alike = { lower: 2, upper: 3 };
    expect(commonShape([[alike, alike, alike]])).toBeNull();
    expect(commonShape([])).toBeNull();
    expect(commonShape([[{ lower: 0, upper: 2 }]])).toBeNull();
  });
});
