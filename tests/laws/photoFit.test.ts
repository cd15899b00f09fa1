import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fewestPairs, fitPhotos, isRefused, type PhotoFitKind, turnedRound } from '../../src/engine/photo';

const kind = fc.constantFrom<PhotoFitKind>('similarity', 'affine', 'homography');
const fraction = fc.integer({ min: 0, max: 1000 }).map((n) => n / 1000);
const place = fc.tuple(fraction, fraction);
const pairs = fc.array(fc.record({ from: place, onto: place }), { maxLength: 12 });
const size = fc.record({ width: fc.integer({ min: 1, max: 9000 }), height: fc.integer({ min: 1, max: 9000 }) });

/** Pairs of a picture taken from nearly the same spot, each off by a hand. */
const likely = fc
  .record({
    turn: fc.integer({ min: -100, max: 100 }).map((n) => n / 1000),
    scale: fc.integer({ min: 90, max: 110 }).map((n) => n / 100),
    at: fc.array(fc.record({ from: place, off: fc.tuple(fraction, fraction) }), { minLength: 6, maxLength: 12 }),
  })
  .map(({ turn, scale, at }) =>
    at.map(({ from: [x, y], off: [u, v] }) => {
      const [dx, dy] = [(x - 0.5) * scale, (y - 0.5) * scale];
      const onto = [
        0.5 + dx * Math.cos(turn) - dy * Math.sin(turn) + (u - 0.5) * 0.01,
        0.5 + dx * Math.sin(turn) + dy * Math.cos(turn) + (v - 0.5) * 0.01,
      ] as const;
      return { from: [x, y] as const, onto };
    }),
  );
const square = { width: 3000, height: 3000 };

describe('one photo laid on another, whatever was touched', () => {
  test('either stands with finite figures, or is refused with a reason: it never fails', () => {
    fc.assert(
      fc.property(pairs, size, size, kind, (touched, one, other, way) => {
        const came = fitPhotos(touched, one, other, way);
        if (isRefused(came)) return came.refused.length > 0;
        const numbers = [...came.matrix, came.residual.share, came.residual.px, ...came.perPair.map((p) => p.leftOut)];
        return touched.length >= fewestPairs[way] && numbers.every(Number.isFinite) && came.reasons.length > 0;
      }),
      { numRuns: 1000 },
    );
  });

  test('thin and crowded pairs too', () => {
    const near = fc.tuple(fc.integer({ min: 495, max: 520 }), fc.integer({ min: 0, max: 1000 }));
    const thin = fc.array(
      fc.tuple(near, near).map(([a, b]) => ({
        from: [a[0] / 1000, a[1] / 1000] as const,
        onto: [b[0] / 1000, a[1] / 1000] as const,
      })),
      { minLength: 6, maxLength: 9 },
    );
    fc.assert(
      fc.property(thin, kind, (touched, way) => {
        const came = fitPhotos(touched, square, square, way);
        return isRefused(came) || Number.isFinite(came.residual.share);
      }),
      { numRuns: 500 },
    );
  });

  test('is the same in whatever order the pairs were touched, and in whatever pixels the photos came', () => {
    fc.assert(
      fc.property(likely, kind, (touched, way) => {
        const [one, other, large] = [
          fitPhotos(touched, square, square, way),
          fitPhotos(touched.toReversed(), square, square, way),
          fitPhotos(touched, { width: 600, height: 600 }, { width: 6000, height: 6000 }, way),
        ];
        if (isRefused(one) || isRefused(other) || isRefused(large))
          return isRefused(one) && isRefused(other) && isRefused(large);
        expect(other.residual.share).toBeCloseTo(one.residual.share, 6);
        expect(large.residual.share).toBeCloseTo(one.residual.share, 9);
        expect(large.residual.px).toBeCloseTo(one.residual.share * 6000, 5);
        return true;
      }),
      { numRuns: 150 },
    );
  });

  test('leads there and back to the same place, and turned round the other way', () => {
    fc.assert(
      fc.property(likely, kind, place, (touched, way, at) => {
        const came = fitPhotos(touched, square, square, way);
        if (isRefused(came)) return;
        const there = came.through(at);
        for (const back of [came.back(there), turnedRound(came).through(there)])
          expect(Math.hypot(back[0] - at[0], back[1] - at[1])).toBeLessThan(1e-6);
      }),
      { numRuns: 150 },
    );
  });
});
