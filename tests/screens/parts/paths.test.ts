import { area, line } from 'd3-shape';
import { expect, it } from 'vitest';
import { bandPath, linePath } from '../../../src/screens/parts/charts/paths';
import { seeded } from '../../files/seeded';

it('draws lines and bands as the shapes of d3 do, from none to many places', () => {
  const draw = seeded(9);
  const number = () => (draw.below(20_000_001) - 10_000_000) / 10 ** draw.below(7);
  for (let i = 0; i < 200; i++) {
    const rows = Array.from({ length: i % 12 }, () => ({ x: number(), low: number(), high: number() }));
    const low = rows.map(({ x, low }) => [x, low] as const);
    const high = rows.map(({ x, high }) => [x, high] as const);
    const theirLine = line<(typeof rows)[number]>(
      (p) => p.x,
      (p) => p.low,
    );
    const theirBand = area<(typeof rows)[number]>(
      (p) => p.x,
      (p) => p.low,
      (p) => p.high,
    );
    expect(linePath(low)).toBe(theirLine(rows) ?? '');
    expect(bandPath(high, low)).toBe(theirBand(rows) ?? '');
  }
});
