import type { Point } from '../../engine/photo';

interface Arrow {
  /** The bent line. */
  readonly line: string;
  /** Its head, filled. */
  readonly head: string;
}

const at = ([x, y]: Point): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/**
 * An arrow from one letter to another, bent a little aside, clear of both by `clear`; `head` is the length of its head. All in units
 * of the drawing. Undefined where the letters lie too near for one.
 */
export const arrowBetween = (from: Point, to: Point, clear: number, head: number): Arrow | undefined => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const far = Math.hypot(dx, dy);
  if (far < 2 * clear + head) return undefined;
  const bend = Math.min(far * 0.18, 60);
  const middle: Point = [(from[0] + to[0]) / 2 - (dy / far) * bend, (from[1] + to[1]) / 2 + (dx / far) * bend];
  const towards = (one: Point, other: Point, by: number): Point => {
    const length = Math.hypot(other[0] - one[0], other[1] - one[1]) || 1;
    return [one[0] + ((other[0] - one[0]) / length) * by, one[1] + ((other[1] - one[1]) / length) * by];
  };
  const start = towards(from, middle, clear);
  const tip = towards(to, middle, clear);
  const neck = towards(tip, middle, head);
  const [ux, uy] = [(tip[0] - neck[0]) / head, (tip[1] - neck[1]) / head];
  const half = head * 0.55;
  const sides: [Point, Point] = [
    [neck[0] - uy * half, neck[1] + ux * half],
    [neck[0] + uy * half, neck[1] - ux * half],
  ];
  return {
    line: `M${at(start)}Q${at(middle)} ${at(neck)}`,
    head: `M${at(tip)}L${at(sides[0])}L${at(sides[1])}Z`,
  };
};
