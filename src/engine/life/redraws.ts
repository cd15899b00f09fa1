import { type Drawn, drawnFrom } from '../chance';
import type { Interval } from './interval';
import { scaleNear } from './scaleNear';
import { topOf } from './search';
import type { Prepared } from './weibullLikelihood';

/** One redraw: the shape and scale its lives come to. Scale 0: in none was anything seen lasting; Infinity: in none an end. */
export interface Redraw {
  readonly shape: number;
  readonly scale: number;
}

export interface RedrawOptions {
  readonly draws: number;
  /** Any whole number; the same gives the same redraws. */
  readonly seed: number;
  /** The shape was given and is not sought anew. */
  readonly shapeHeld: boolean;
  /** Ends are rounded to this, in the unit of the intervals, so that thousands of lives make hundreds of rows. 0: not at all. */
  readonly grain?: number;
}

interface Row extends Interval {
  readonly place: number;
}

/** Shapes are looked for within this factor of the one found on all lives. */
const farFromShape = Math.log(6);

const grained = ({ lower, upper }: Interval, grain: number): Interval => {
  if (grain <= 0) return { lower, upper };
  const to = (x: number): number => Math.round(x / grain) * grain;
  const from = to(lower);
  return { lower: from, upper: Math.max(to(upper), lower === upper ? grain : from + grain) };
};

/** Every life once, and each cluster's rows by their place in that list. */
const rowsOf = (clusters: readonly (readonly Interval[])[], grain: number) => {
  const rows = new Map<string, Row>();
  const places = clusters.map((lives) =>
    lives.map((life) => {
      const { lower, upper } = grained(life, grain);
      const key = `${lower} ${upper}`;
      const row = rows.get(key) ?? { lower, upper, place: rows.size };
      rows.set(key, row);
      return row.place;
    }),
  );
  return { rows: [...rows.values()], places };
};

/**
 * Lives that come in clusters (all holds of one zone) drawn anew by whole clusters, with replacement, and fitted again each time: how
 * far the fit hangs on which clusters there happened to be. `near` is the fit on all of them. Cluster bootstrap: Davison and Hinkley
 * 1997, Bootstrap Methods and their Application, 3.8 (from memory).
 */
export const redraws = (
  clusters: readonly (readonly Interval[])[],
  near: Redraw,
  { draws, seed, shapeHeld, grain = 0 }: RedrawOptions,
): readonly Redraw[] => {
  const { rows, places } = rowsOf(clusters, grain);
  const logs = rows.map(({ lower, upper }) => ({
    logLower: Math.log(lower),
    logUpper: Math.log(upper),
    exact: lower === upper,
  }));
  const drawn = drawnFrom(seed);
  return Array.from({ length: draws }, () => {
    const times = timesDrawn(places, rows.length, drawn);
    const taken = rows.filter(({ place }) => (times[place] as number) > 0);
    if (taken.every(({ upper }) => upper === Number.POSITIVE_INFINITY))
      return { shape: near.shape, scale: Number.POSITIVE_INFINITY };
    if (taken.every(({ lower }) => lower === 0)) return { shape: near.shape, scale: 0 };
    const prepared = taken.map(({ place }) => ({
      ...(logs[place] as Omit<Prepared, 'times'>),
      times: times[place] as number,
    }));
    return fitted(prepared, near, shapeHeld);
  });
};

const timesDrawn = (places: readonly (readonly number[])[], rows: number, drawn: Drawn): Float64Array => {
  const times = new Float64Array(rows);
  for (let i = 0; i < places.length; i++)
    for (const place of places[drawn.below(places.length)] as readonly number[])
      times[place] = (times[place] as number) + 1;
  return times;
};

const fitted = (rows: readonly Prepared[], near: Redraw, shapeHeld: boolean): Redraw => {
  const held = Math.log(near.shape);
  let start = Math.log(near.scale);
  const profile = (logShape: number): number => {
    const best = scaleNear(rows, Math.exp(logShape), start);
    start = best.m;
    return best.value;
  };
  const logShape = shapeHeld ? held : topOf(profile, held - farFromShape, held + farFromShape, held, 1e-3).at;
  return { shape: Math.exp(logShape), scale: Math.exp(scaleNear(rows, Math.exp(logShape), start).m) };
};
