import { type Drawn, noiseAt } from '../chance';

/** How green grows on a bronze: round spots, runs down from where water gathers, along edges, or as a film. */
export type Growth = 'spots' | 'runs' | 'edges' | 'film';
export const growths: readonly Growth[] = ['spots', 'runs', 'edges', 'film'];

/** How ready a place is to be green; flooded from the top down, it gives the shapes of that growth. */
export type Readiness = (x: number, y: number) => number;

/** Ridges of the relief, 0 to 1, that edges follow: where a noise crosses its middle. */
export const ridgeAt = (x: number, y: number, seed: number): number =>
  1 - Math.min(1, Math.abs(noiseAt(x, y, 110, seed) - 0.5) * 7);

const spots = (drawn: Drawn, side: number, seed: number, share: number): Readiness => {
  const many = Math.round(9 + 50 * Math.sqrt(share) + drawn.below(14));
  const bumps = Array.from({ length: many }, () => {
    const wide = side * (0.014 + 0.075 * drawn.uniform() ** 2) * (1 + share);
    return { x: side * drawn.uniform(), y: side * drawn.uniform(), wide, long: wide * (0.7 + 0.6 * drawn.uniform()) };
  });
  return (x, y) => {
    let most = 0;
    let sum = 0;
    for (const { x: cx, y: cy, wide, long } of bumps) {
      const high = Math.exp(-(((x - cx) / wide) ** 2 + ((y - cy) / long) ** 2));
      sum += high;
      if (high > most) most = high;
    }
    return most + 0.35 * sum + 0.28 * noiseAt(x, y, side / 14, seed);
  };
};

const runs = (drawn: Drawn, side: number, seed: number, share: number): Readiness => {
  const many = 4 + drawn.below(4) + Math.round(9 * share);
  const streaks = Array.from({ length: many }, () => ({
    x: side * (0.04 + 0.92 * drawn.uniform()),
    from: side * (0.45 * drawn.uniform() - 0.15),
    long: side * (0.3 + 0.6 * drawn.uniform()),
    wide: side * (0.012 + 0.03 * drawn.uniform()) * (1 + 1.5 * share),
    sway: side * 0.035 * drawn.normal(),
  }));
  return (x, y) => {
    let most = 0;
    for (const { x: at, from, long, wide, sway } of streaks) {
      const down = (y - from) / long;
      if (down < 0 || down > 1.6) continue;
      const middle = at + sway * Math.sin(2.6 * down) + side * 0.03 * (noiseAt(at, y, side / 9, seed) - 0.5);
      const narrow = wide * (1.15 - 0.5 * down);
      const high = Math.exp(-(((x - middle) / narrow) ** 2)) * Math.min(1, 9 * down) * (1 - 0.55 * down);
      if (high > most) most = high;
    }
    return most + 0.3 * noiseAt(x, y / 2.4, side / 12, seed + 3);
  };
};

const edges =
  (relief: number, side: number, seed: number): Readiness =>
  (x, y) =>
    ridgeAt(x, y, relief) + 0.75 * noiseAt(x, y, side / 4, seed) + 0.35 * noiseAt(x, y, side / 18, seed + 5);

const film =
  (side: number, seed: number): Readiness =>
  (x, y) =>
    noiseAt(x, y, side / 2.6, seed) + 0.3 * noiseAt(x, y, side / 15, seed + 9);

/** `relief` is the seed of the ground, whose ridges edges follow; `share` is about what will be covered. */
export const readinessOf = (growth: Growth, share: number, side: number, relief: number, drawn: Drawn): Readiness => {
  const seed = drawn.below(1_000_000);
  if (growth === 'spots') return spots(drawn, side, seed, share);
  if (growth === 'runs') return runs(drawn, side, seed, share);
  if (growth === 'edges') return edges(relief, side, seed);
  return film(side, seed);
};
