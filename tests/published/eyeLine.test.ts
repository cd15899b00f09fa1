import { describe, expect, it } from 'vitest';
import { heightSdAt, lineThrough } from '../../src/engine/eye';

/** NIST StRD, data set Norris (linear, 36 observations): y, x. Source: itl.nist.gov/div898/strd, as published; public domain. */
const norris = `
0.1 0.2  338.8 337.4  118.1 118.2  888.0 884.6  9.2 10.1  228.1 226.5  668.5 666.3  998.5 996.3  449.1 448.6
778.9 777.0  559.2 558.2  0.3 0.4  0.1 0.6  778.1 775.5  668.8 666.9  339.3 338.0  448.9 447.5  10.8 11.6
557.7 556.0  228.3 228.1  998.0 995.8  888.8 887.6  119.6 120.2  0.3 0.3  0.6 0.3  557.6 556.8  339.3 339.1
888.0 887.2  998.5 999.0  778.9 779.0  10.2 11.1  117.6 118.3  228.9 229.2  668.4 669.1  449.2 448.9  0.2 0.5
`
  .trim()
  .split(/\s+/)
  .map(Number);
const points = Array.from({ length: norris.length / 2 }, (_, i) => ({
  y: norris[2 * i] as number,
  x: norris[2 * i + 1] as number,
}));

const digits = (found: number, certified: number): number => -Math.log10(Math.abs(found / certified - 1));

describe('The line through what an eye said, on NIST Norris', () => {
  const line = lineThrough(points);

  it.each([
    ['intercept', -0.262323073774029],
    ['slope', 1.00211681802045],
    ['residualSd', 0.884796396144373],
    ['interceptSd', 0.232818234301152],
    ['slopeSd', 0.429796848199937e-3],
  ] as const)('gives the certified %s to ten digits', (what, certified) => {
    expect(points).toHaveLength(36);
    expect(digits(line?.[what] ?? 0, certified)).toBeGreaterThan(10);
  });

  it('does not give the numbers of x on y', () => {
    const turned = lineThrough(points.map(({ x, y }) => ({ x: y, y: x })));
    expect(turned?.slope).toBeCloseTo(0.997881, 5);
    expect(turned?.intercept).toBeCloseTo(0.264389, 5);
  });

  it('gives a point that counts double the same say as the point twice', () => {
    const doubled = lineThrough([...points.slice(1), { ...(points[0] as (typeof points)[number]), weight: 2 }]);
    const twice = lineThrough([...points, points[0] as (typeof points)[number]]);
    expect(doubled?.slope).toBeCloseTo(twice?.slope ?? 0, 12);
    expect(doubled?.intercept).toBeCloseTo(twice?.intercept ?? 0, 12);
  });

  it('is surest in the middle of its points', () => {
    if (!line) throw new Error('no line');
    expect(heightSdAt(line, line.middle)).toBeCloseTo(line.residualSd / 6, 12);
    expect(heightSdAt(line, 0)).toBeCloseTo(line.interceptSd, 12);
  });
});
