import { constants } from '../condition';
import type { Figure, Reason } from '../record';
import { because } from './reasonCodes';

/** Agreement beyond what chance alone would give: 1 in all cases, 0 no more than chance, under 0 less. */
export interface Kappa {
  readonly n: number;
  /** Share of cases told alike, weighted where weights are given. */
  readonly observed: number;
  readonly byChance: number;
  /** With its 90 % range; null where it cannot be told, and the reason. */
  readonly kappa: Figure | null;
  /** Standard error, large sample. */
  readonly se: number | null;
  readonly reasons: readonly Reason[];
}

const leastCases = 2;
const sum = (row: readonly number[]): number => row.reduce((all, x) => all + x, 0);

/**
 * Cohen's kappa of a square table of counts, rows the one, columns the other: Cohen 1960, Educ. Psychol. Meas. 20:37-46; weighted:
 * Cohen 1968, Psychol. Bull. 70:213-220, with `apart(i, j)` how far two answers lie apart (0 on the diagonal). Standard error after
 * Fleiss, Cohen and Everitt 1969, Psychol. Bull. 72:323-327.
 */
export const weightedKappa = (
  table: readonly (readonly number[])[],
  apart: (i: number, j: number) => number = (i, j) => (i === j ? 0 : 1),
): Kappa => {
  const n = sum(table.map(sum));
  const none = (reason: Reason, observed = 0, byChance = 0): Kappa => ({
    n,
    observed,
    byChance,
    kappa: null,
    se: null,
    reasons: [reason],
  });
  if (n < leastCases) return none(because('agreement: too few', { n, least: leastCases }));
  const p = table.map((row) => row.map((count) => count / n));
  const rows = p.map(sum);
  const columns = rows.map((_, j) => sum(p.map((row) => row[j] ?? 0)));
  const most = Math.max(...p.flatMap((row, i) => row.map((_, j) => apart(i, j))), 0);
  const weight = (i: number, j: number): number => (most > 0 ? 1 - apart(i, j) / most : 1);
  const over = (of: (i: number, j: number) => number): number =>
    sum(p.map((row, i) => sum(row.map((_, j) => of(i, j)))));
  const at = (i: number, j: number): number => p[i]?.[j] ?? 0;
  const observed = over((i, j) => at(i, j) * weight(i, j));
  const byChance = over((i, j) => (rows[i] ?? 0) * (columns[j] ?? 0) * weight(i, j));
  const room = 1 - byChance;
  // Both gave one and the same answer throughout: chance explains all of it, and nothing is left to be told.
  if (room < 1e-12) return none(because('agreement: all alike', { n }), observed, byChance);
  const kappa = (observed - byChance) / room;
  const ofRow = rows.map((_, i) => sum(columns.map((share, j) => share * weight(i, j))));
  const ofColumn = columns.map((_, j) => sum(rows.map((share, i) => share * weight(i, j))));
  const spread =
    over((i, j) => at(i, j) * (weight(i, j) - ((ofRow[i] ?? 0) + (ofColumn[j] ?? 0)) * (1 - kappa)) ** 2) -
    (kappa - byChance * (1 - kappa)) ** 2;
  const se = Math.sqrt(Math.max(0, spread) / n) / room;
  const reach = constants.z90.value * se;
  return {
    n,
    observed,
    byChance,
    kappa: { value: kappa, low: Math.max(-1, kappa - reach), high: Math.min(1, kappa + reach), reasons: [] },
    se,
    reasons: [],
  };
};

export const cohensKappa = (table: readonly (readonly number[])[]): Kappa => weightedKappa(table);
