import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxOf } from '../../../src/device/pixels/box';
import { brushed } from '../../../src/device/pixels/brushed';
import { noClasses, outside } from '../../../src/device/pixels/classes';
import { near } from '../../../src/device/pixels/near';
import { eachSpan } from '../../../src/device/pixels/spans';
import { contains, type Outline, type Point, pixelClass } from '../../../src/engine/photo';

const point = fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
const outlines = fc.array(fc.array(point, { minLength: 3, maxLength: 9 }), { minLength: 1, maxLength: 3 });
const sizes = fc.record({ width: fc.integer({ min: 1, max: 60 }), height: fc.integer({ min: 1, max: 60 }) });

test('a pixel is of a part when its middle lies in the outline, by the rule that says so of a dot, in rings that cross themselves too', () => {
  fc.assert(
    fc.property(outlines, sizes, (outline: Outline, size) => {
      const found = new Uint8Array(size.width * size.height);
      for (let row = 0; row < size.height; row++)
        eachSpan(outline, size, row, (from, to) => found.fill(1, row * size.width + from, row * size.width + to));
      const asked = Uint8Array.from(found, (_, at) => {
        const middle: Point = [
          ((at % size.width) + 0.5) / size.width,
          (Math.floor(at / size.width) + 0.5) / size.height,
        ];
        return contains(outline, middle) ? 1 : 0;
      });
      expect(found).toEqual(asked);
    }),
  );
});

test('the box of a part holds all its pixels and none outside the picture, where corners lie outside it too', () => {
  const wide = fc.tuple(fc.double({ min: -1, max: 2, noNaN: true }), fc.double({ min: -1, max: 2, noNaN: true }));
  fc.assert(
    fc.property(fc.array(wide, { minLength: 3, maxLength: 6 }), sizes, (ring, size) => {
      const { left, top, width, height } = boxOf([ring], size);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(width).toBeGreaterThanOrEqual(1);
      expect(height).toBeGreaterThanOrEqual(1);
      expect(left + width).toBeLessThanOrEqual(size.width);
      expect(top + height).toBeLessThanOrEqual(size.height);
      for (let row = 0; row < size.height; row++)
        eachSpan([ring], size, row, (from, to) => {
          expect(row).toBeGreaterThanOrEqual(top);
          expect(row).toBeLessThan(top + height);
          expect(from).toBeGreaterThanOrEqual(left);
          expect(to).toBeLessThanOrEqual(left + width);
        });
    }),
  );
});

test('a stroke of the brush reaches as far as its radius from its path, never out of the zone, and the last stroke counts', () => {
  const size = { width: 100, height: 50 };
  const classes = noClasses(size, { left: 0, top: 0, ...size });
  classes.of.fill(pixelClass.sound);
  classes.of.fill(outside, 0, 20 * size.width);
  const path: [number, number][] = [
    [0.2, 0.5],
    [0.6, 0.5],
  ];
  brushed(classes, [
    { as: 'green', radius: 0.1, path },
    { as: 'sound', radius: 0.02, path: [[0.4, 0.5]] },
  ]);
  const at = (x: number, y: number) => classes.of[y * size.width + x];
  expect(at(20, 34)).toBe(pixelClass.green);
  expect(at(20, 35)).toBe(pixelClass.sound);
  expect(at(10, 25)).toBe(pixelClass.green);
  expect(at(9, 25)).toBe(pixelClass.sound);
  expect(at(40, 25), 'put back by the later stroke').toBe(pixelClass.sound);
  expect(at(43, 25)).toBe(pixelClass.green);
  expect(at(30, 19), 'outside the zone nothing is green').toBe(outside);
});

test('what lies near is what a search of every neighbour finds, whatever the reach', () => {
  const rows = fc.integer({ min: 1, max: 12 });
  fc.assert(
    fc.property(
      rows,
      rows,
      fc.integer({ min: 0, max: 15 }),
      fc.infiniteStream(fc.boolean()),
      (width, height, reach, dots) => {
        const of = Uint8Array.from({ length: width * height }, () => (dots.next().value && dots.next().value ? 1 : 0));
        const asked = of.map((_, at) => {
          const [x, y] = [at % width, Math.floor(at / width)];
          return of.some(
            (one, other) =>
              one === 1 && Math.max(Math.abs((other % width) - x), Math.abs(Math.floor(other / width) - y)) <= reach,
          )
            ? 1
            : 0;
        });
        expect(near(of, width, height, reach)).toEqual(asked);
      },
    ),
  );
});
