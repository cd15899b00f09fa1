/** A straight line through points, by weighted least squares, with what the errors of both its numbers need. */
export interface Line {
  readonly intercept: number;
  readonly slope: number;
  readonly n: number;
  /** Standard deviation of a point of weight 1 about the line; 0 where there are but two points. */
  readonly residualSd: number;
  readonly interceptSd: number;
  readonly slopeSd: number;
  /** Weighted mean of x, and weighted sum of squares about it: the line is surest there. */
  readonly middle: number;
  readonly spread: number;
  /** Sum of the weights. */
  readonly weight: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
  /** 1 unless said. */
  readonly weight?: number;
}

/** Undefined for fewer than two points, and where all stand at one x. */
export const lineThrough = (points: readonly Point[]): Line | undefined => {
  const n = points.length;
  const sum = (of: (point: Point, weight: number) => number): number =>
    points.reduce((total, point) => total + of(point, point.weight ?? 1), 0);
  const weight = sum((_, w) => w);
  const middle = sum(({ x }, w) => w * x) / weight;
  const height = sum(({ y }, w) => w * y) / weight;
  const spread = sum(({ x }, w) => w * (x - middle) ** 2);
  const xs = points.map(({ x }) => x);
  // Alike but for rounding is alike: a slope through that would be any number.
  if (n < 2 || Math.max(...xs) - Math.min(...xs) <= 1e-9 * Math.max(1, Math.abs(middle))) return undefined;
  const slope = sum(({ x, y }, w) => w * (x - middle) * (y - height)) / spread;
  const intercept = height - slope * middle;
  const left = sum(({ x, y }, w) => w * (y - height - slope * (x - middle)) ** 2);
  const residualSd = n > 2 ? Math.sqrt(left / (n - 2)) : 0;
  return {
    intercept,
    slope,
    n,
    residualSd,
    interceptSd: residualSd * Math.sqrt(1 / weight + middle ** 2 / spread),
    slopeSd: residualSd / Math.sqrt(spread),
    middle,
    spread,
    weight,
  };
};

/** Height of the line at x. */
export const heightAt = (line: Line, x: number): number => line.intercept + line.slope * x;

/** Standard deviation of the height of the line at x. */
export const heightSdAt = (line: Line, x: number): number =>
  line.residualSd * Math.sqrt(1 / line.weight + (x - line.middle) ** 2 / line.spread);
