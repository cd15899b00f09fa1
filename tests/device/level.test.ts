import { expect, test } from 'vitest';
import { leanOf } from '../../src/device/level';

test.each([
  ['upright', 90, 0, 0, 0],
  ['upright and tipped back', 60, 0, 0, 0],
  ['flat on the table', 0, 0, 0, 0],
  // Turned left onto its side, screen turned with it: gravity along the left edge, beta 0, gamma -90.
  ['on its left side', 0, -90, 90, 0],
  ['on its right side', 0, 90, -90, 0],
])('a tablet held %s is level', (_, beta, gamma, turned, lean) => {
  expect(Math.abs(leanOf(beta, gamma, turned) - lean)).toBeLessThan(1e-9);
});

/** The angles a tablet reports that is held upright facing the person and turned clockwise, worked out apart: down on the glass. */
const turnedClockwise = (degrees: number): readonly [number, number] => {
  const a = (degrees * Math.PI) / 180;
  // Down = (sin a, -cos a, 0) = (cos b sin g, -sin b, -cos b cos g): so g = 90 and b from its sine.
  return [(Math.asin(Math.cos(a)) * 180) / Math.PI, 90 * Math.sign(degrees)];
};

test.each([-30, -5, 5, 30])('a tablet turned by %i degrees leans by as many, to the same side', (degrees) => {
  const [beta, gamma] = turnedClockwise(degrees);
  expect(leanOf(beta, gamma, 0)).toBeCloseTo(degrees, 9);
});
