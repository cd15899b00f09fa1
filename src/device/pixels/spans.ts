import type { Outline, Point, Size } from '../../engine/photo';

/**
 * Tells each run of pixels of a row whose middles lie in the outline, by the same rule as `contains`. A pixel that lies in two rings is
 * told twice.
 */
export const eachSpan = (
  outline: Outline,
  { width, height }: Size,
  row: number,
  tell: (from: number, to: number) => void,
): void => {
  const y = (row + 0.5) / height;
  const column = (x: number): number => Math.min(width, Math.max(0, Math.ceil(x * width - 0.5)));
  for (const ring of outline) {
    const crossed: number[] = [];
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const [ax, ay] = ring[i] as Point;
      const [bx, by] = ring[j] as Point;
      if (ay > y !== by > y) crossed.push(((bx - ax) * (y - ay)) / (by - ay) + ax);
    }
    crossed.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossed.length; i += 2) {
      const [from, to] = [column(crossed[i] as number), column(crossed[i + 1] as number)];
      if (to > from) tell(from, to);
    }
  }
};
