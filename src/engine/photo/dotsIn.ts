import { drawnFrom, shuffle } from '../chance';
import { aspectOf, type Outline, type Point, type Size } from './point';
import { boundsOf, contains, outlineArea } from './polygon';

export interface Dots {
  /** Row by row, from the top left. */
  readonly dots: readonly Point[];
  /** From one dot to the next on the average, share of the photo width. */
  readonly spacing: number;
}

/** An outline that crosses itself may come to next to no area; the grid over it is not begun finer than this many cells a dot. */
const mostCells = 100;

/** Each try the cells are made this much smaller, until enough dots fall inside. */
const finer = 0.99;

/** One dot in every cell of a grid laid at a place drawn by chance, where it falls inside the outline. */
const jittered = (outline: Outline, aspect: number, cell: number, seed: number): Point[] => {
  const drawn = drawnFrom(seed);
  const { x, y } = boundsOf(outline);
  const high = cell / aspect;
  const left = x[0] - drawn.uniform() * cell;
  const top = y[0] - drawn.uniform() * high;
  const dots: Point[] = [];
  for (let row = top; row < y[1]; row += high) {
    for (let column = left; column < x[1]; column += cell) {
      const dot: Point = [column + drawn.uniform() * cell, row + drawn.uniform() * high];
      if (contains(outline, dot)) dots.push(dot);
    }
  }
  return dots;
};

/**
 * `n` dots spread over an outline: a grid with one dot at a chance place in each cell, so that none is nearer to be asked
 * than another and no pattern of the surface can fall in step with it. The same seed lays the same dots. Empty where the
 * outline has no area.
 */
export const dotsIn = (outline: Outline, size: Size, n: number, seed: number): Dots => {
  const aspect = aspectOf(size);
  const area = outlineArea(outline) * aspect;
  const spacing = Math.sqrt(area / n);
  if (!(area > 0)) return { dots: [], spacing: 0 };
  const { x, y } = boundsOf(outline);
  const coarse = Math.sqrt(((x[1] - x[0]) * (y[1] - y[0]) * aspect) / (mostCells * n));
  let dots: Point[] = [];
  for (let cell = Math.max(spacing, coarse); dots.length < n; cell *= finer)
    dots = jittered(outline, aspect, cell, seed);
  const surplus = new Set(shuffle([...dots.keys()], drawnFrom(seed + 1)).slice(n));
  return { dots: dots.filter((_, i) => !surplus.has(i)), spacing };
};
