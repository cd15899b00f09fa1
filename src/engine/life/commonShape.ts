import { counted, hasEnd, type Interval } from './interval';
import { scaleNear } from './scaleNear';
import { topOf } from './search';
import { type Prepared, prepared } from './weibullLikelihood';

/** One Weibull shape for all clusters, each with a scale of its own. */
export interface CommonShape {
  readonly shape: number;
  /** Clusters that tell something of it, and their lives. */
  readonly clusters: number;
  readonly lives: number;
}

/** Shapes looked through, as logarithms: 0.2 to 40. */
const [flattest, steepest] = [Math.log(0.2), Math.log(40)];
const looked = 24;

/** A cluster tells of its spread with two lives, one of them seen to end and one seen to last. */
const tells = (lives: readonly Interval[]): boolean =>
  lives.length > 1 && lives.some(hasEnd) && lives.some(({ lower }) => lower > 0);

const startOf = (lives: readonly Interval[]): number => {
  const known = lives.flatMap(({ lower, upper }) => [lower, upper]).filter((x) => x > 0 && Number.isFinite(x));
  return known.reduce((sum, x) => sum + Math.log(x), 0) / known.length;
};

/**
 * How alike lives are within a cluster, whatever their clusters differ by: put together, clusters that differ look like one with a
 * wide spread, and a shape taken from there says of each that its next life may be far shorter than any it had. Each cluster's own
 * scale takes up some of the spread, so that the shape is lowered by the square root of (lives - clusters) / lives, as a standard
 * deviation is raised for its mean (the logarithm of a Weibull life has one of pi / (shape x square root of 6)). Null where there is
 * no maximum.
 */
export const commonShape = (clusters: readonly (readonly Interval[])[]): CommonShape | null => {
  const telling = clusters.filter(tells);
  const lives = telling.reduce((sum, { length }) => sum + length, 0);
  if (telling.length === 0) return null;
  const starts = telling.map(startOf);
  const rows: readonly (readonly Prepared[])[] = telling.map((one) => prepared(counted(one)));
  const profile = (logShape: number): number =>
    rows.reduce((sum, own, i) => {
      const best = scaleNear(own, Math.exp(logShape), starts[i] as number);
      starts[i] = Number.isFinite(best.m) ? best.m : (starts[i] as number);
      return sum + best.value;
    }, 0);
  const shapes = Array.from({ length: looked + 1 }, (_, i) => flattest + ((steepest - flattest) * i) / looked);
  const heights = shapes.map(profile);
  const highest = heights.reduce((best, height, i) => (height > (heights[best] as number) ? i : best), 0);
  if (highest === 0 || highest === looked) return null;
  const [below, at, above] = [shapes[highest - 1], shapes[highest], shapes[highest + 1]] as [number, number, number];
  const found = Math.exp(topOf(profile, below, above, at, 1e-4).at);
  return { shape: found * Math.sqrt((lives - telling.length) / lives), clusters: telling.length, lives };
};
