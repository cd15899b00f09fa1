/** The value under which a share of the figures lies (nearest rank). `share` 0 to 1. */
export const percentile = (figures: readonly number[], share: number): number => {
  const sorted = [...figures].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(sorted.length * share) - 1)] ?? Number.NaN;
};

export const median = (figures: readonly number[]): number => percentile(figures, 0.5);

export interface Line {
  readonly what: string;
  readonly measured: number;
  /** Not to be passed; left out where the figure is only told. */
  readonly most?: number;
  readonly unit: 'ms' | 'kB' | 'times';
}

/** One line of the bench: what, how much, and whether it keeps its line. */
export const said = ({ what, measured, most, unit }: Line): string => {
  const places = measured < 10 ? 1 : 0;
  const line = most === undefined ? '' : `  (line ${most} ${unit}: ${measured <= most ? 'kept' : 'MISSED'})`;
  return `${what.padEnd(58)} ${measured.toFixed(places).padStart(8)} ${unit}${line}`;
};
