import { chances, innermost, reachOf } from './innermost';
import { counted, type Interval } from './interval';
import { mostLikely } from './mostLikely';

/** Share of the lives that ended within (left, right]; equal ends: at that very time; right Infinity: after all looks. */
export interface Mass {
  readonly left: number;
  readonly right: number;
  readonly mass: number;
}

export interface Turnbull {
  /** In order of time, none of them zero, together 1. Empty where there is no interval. */
  readonly masses: readonly Mass[];
  readonly logLikelihood: number;
}

/**
 * The distribution that makes the intervals most likely without assuming its shape: nothing can be said of where within a stretch
 * its mass lies. Turnbull 1976, J. R. Statist. Soc. B 38:290-295; innermost stretches after Peto 1973, Applied Statistics 22:86-91.
 * Found when no mass moved anywhere could raise the log-likelihood by more than 1e-9 (Gentleman and Geyer 1994, Biometrika 81:618-623).
 */
export const turnbull = (intervals: readonly Interval[]): Turnbull => {
  const rows = counted(intervals);
  if (rows.length === 0) return { masses: [], logLikelihood: 0 };
  const stretches = innermost(rows);
  const reach = rows.map((row) => reachOf(row, stretches));
  const times = rows.map((row) => row.times);
  const masses = mostLikely(times, reach, stretches.length);
  const chance = chances(masses, reach);
  return {
    masses: stretches.flatMap(({ left, right }, i) => {
      const mass = masses[i] as number;
      return mass > 0 ? [{ left, right, mass }] : [];
    }),
    logLikelihood: times.reduce((sum, n, i) => sum + n * Math.log(chance[i] as number), 0),
  };
};
