import { describe, expect, it } from 'vitest';
import { areaOf, partArea, type Solid, typedArea } from '../../src/engine/condition';

const surface = (solid: Solid, ...sizes: number[]): number => partArea({ solid, sizes, share: 1 });

describe('surfaces of simple shapes against closed forms of geometry', () => {
  it('a dome as high as half its width is half a sphere, 2 pi r^2', () => {
    expect(surface('cap', 2, 1)).toBeCloseTo(2 * Math.PI, 12);
  });

  it('a dome closed to a point below is the whole unit sphere, 12.5663706144 (4 pi r^2)', () => {
    expect(surface('cap', 0.0000001, 2)).toBeCloseTo(12.5663706144, 9);
  });

  it('a dome of a sphere of radius 5, 2 high and so 8 across, is 2 pi r h', () => {
    expect(surface('cap', 8, 2)).toBeCloseTo(2 * Math.PI * 5 * 2, 12);
  });

  it('a cone of 3-4-5 has a side of pi r s', () => {
    expect(surface('cone', 6, 4)).toBeCloseTo(Math.PI * 3 * 5, 12);
  });

  it('a cone pressed flat is a disc', () => {
    expect(surface('cone', 3, 0.0000001)).toBeCloseTo(surface('disc', 3), 9);
  });

  it('a cylinder unrolled is a strip as long as its girth', () => {
    expect(surface('cylinder', 0.8, 1.7)).toBeCloseTo(surface('strip', Math.PI * 0.8, 1.7), 12);
  });

  it('a cube has six faces', () => {
    expect(surface('box', 2, 2, 2)).toBe(24);
  });

  it('strips taped round an ellipsoid of half-axes 2, 1, 1 add up to its surface, 21.4784353279 (Legendre integrals)', () => {
    const n = 400;
    const at = (i: number) => ({ x: -2 * Math.cos((Math.PI * i) / n), r: Math.sin((Math.PI * i) / n) });
    const parts = Array.from({ length: n }, (_, i) => {
      const [a, b] = [at(i), at(i + 1)];
      return { solid: 'strip' as const, sizes: [Math.PI * (a.r + b.r), Math.hypot(b.x - a.x, b.r - a.r)], share: 1 };
    });
    expect(areaOf(parts, 'strips').m2).toBeCloseTo(21.4784353279, 3);
  });
});

describe('the range of a zone area', () => {
  it('is 15 % to each side from shapes and 10 % from strips, however many parts', () => {
    const part = { solid: 'cylinder' as const, sizes: [1 / Math.PI, 1], share: 0.5 };
    const shapes = areaOf([part, part, part, part], 'solids');
    expect(shapes.m2).toBeCloseTo(2, 12);
    expect([shapes.low, shapes.high].map((end) => Number(end.toFixed(9)))).toEqual([1.7, 2.3]);
    const strips = areaOf([{ solid: 'strip', sizes: [2, 1], share: 1 }], 'strips');
    expect([strips.low, strips.high].map((end) => Number(end.toFixed(9)))).toEqual([1.8, 2.2]);
  });

  it('is what the person said where the area was typed', () => {
    expect(typedArea(4, 0.2)).toMatchObject({ m2: 4, low: 3.2, high: 4.8, method: 'typed' });
  });
});
