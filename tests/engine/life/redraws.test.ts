import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import { type Interval, redraws, weibull } from '../../../src/engine/life';

const open = Number.POSITIVE_INFINITY;

/** Lives of a shape of 2 and a scale of 8, seen every 1.5; each cluster is a little better or worse than the others. */
const clustersOf = (clusters: number, each: number): Interval[][] => {
  const drawn = drawnFrom(7);
  return Array.from({ length: clusters }, () => {
    const scale = 8 * Math.exp(0.2 * drawn.normal());
    return Array.from({ length: each }, () => {
      const life = scale * Math.sqrt(-Math.log(1 - drawn.uniform()));
      const lower = Math.floor(life / 1.5) * 1.5;
      return { lower, upper: life > 11 ? open : lower + 1.5 };
    });
  });
};
const nearOf = (clusters: readonly (readonly Interval[])[]) => {
  const fit = weibull(clusters.flat());
  if (!fit.ok) throw new Error('no fit');
  return { shape: fit.shape.value, scale: fit.scale.value };
};

describe('lives drawn anew by clusters', () => {
  const clusters = clustersOf(12, 6);
  const near = nearOf(clusters);

  it('come to the fit of the drawn lives, as the full fit finds it', () => {
    const seed = 11;
    const [first] = redraws(clusters, near, { draws: 1, seed, shapeHeld: false });
    const drawn = drawnFrom(seed);
    const taken = clusters.map(() => clusters[drawn.below(clusters.length)] ?? []);
    const full = nearOf(taken);
    expect(first?.shape).toBeCloseTo(full.shape, 1);
    expect((first?.scale ?? 0) / full.scale).toBeCloseTo(1, 2);
  });

  it('hold a shape that was given', () => {
    const drawn = redraws(clusters, { shape: 3, scale: 8 }, { draws: 20, seed: 1, shapeHeld: true });
    expect(new Set(drawn.map(({ shape }) => shape.toFixed(12)))).toEqual(new Set(['3.000000000000']));
  });

  it('are the same for the same seed and others for another', () => {
    const of = (seed: number) => redraws(clusters, near, { draws: 5, seed, shapeHeld: false });
    expect(of(3)).toEqual(of(3));
    expect(of(3)).not.toEqual(of(4));
  });

  it('spread more where lives of a cluster are alike than were each life drawn alone', () => {
    const spread = (list: readonly (readonly Interval[])[]) => {
      const scales = redraws(list, near, { draws: 200, seed: 5, shapeHeld: true }).map(({ scale }) => Math.log(scale));
      const mean = scales.reduce((sum, x) => sum + x, 0) / scales.length;
      return Math.sqrt(scales.reduce((sum, x) => sum + (x - mean) ** 2, 0) / scales.length);
    };
    const same = clusters.map(([life]) => Array.from({ length: 6 }, () => life as Interval));
    expect(spread(same)).toBeGreaterThan(1.7 * spread(same.flat().map((life) => [life])));
  });

  it('say endless where no end was drawn, and nothing where nothing was seen lasting', () => {
    const near1 = { shape: 1, scale: 5 };
    const options = { draws: 3, seed: 1, shapeHeld: true };
    expect(redraws([[{ lower: 4, upper: open }]], near1, options).map(({ scale }) => scale)).toEqual([
      open,
      open,
      open,
    ]);
    expect(redraws([[{ lower: 0, upper: 4 }]], near1, options).map(({ scale }) => scale)).toEqual([0, 0, 0]);
  });

  it('hardly move when ends are rounded to a quarter', () => {
    const scales = (grain: number) =>
      redraws(clusters, near, { draws: 40, seed: 9, shapeHeld: false, grain }).map(({ scale }) => scale);
    const [fine, coarse] = [scales(0), scales(0.25)];
    for (const [i, scale] of fine.entries()) expect((coarse[i] ?? 0) / scale).toBeCloseTo(1, 1);
  });
});
