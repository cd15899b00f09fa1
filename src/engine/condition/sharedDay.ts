import type { Figure } from '../record';
import type { ActiveArea, Scale } from '../trade';
import { constants } from './constants';
import type { EyeError } from './coverageError';
import { figureAround, inQuadrature } from './figure';
import { because } from './reasonCodes';
import { onShiftedDay, type ShiftedZone } from './shiftedDay';
import { scoreZone, type ZoneScore } from './zoneIndex';
import type { ZoneInRound } from './zoneInRound';

export const weightOf = (zone: Pick<ZoneScore, 'area' | 'significance'>): number => zone.area.m2 * zone.significance;
export const total = <T>(rows: readonly T[], of: (row: T) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0);
export const meanIndex = (zones: readonly ShiftedZone[]): number =>
  total(zones, (z) => weightOf(z) * z.value) / total(zones, weightOf);

/** The same zones as scored, and as they would be had light and damp shifted every eye of the day one way or the other. */
export interface DayScores {
  readonly zones: readonly ZoneScore[];
  readonly shifted: readonly (readonly ShiftedZone[])[];
}

/** The same day over some of its zones. */
export const dayOver = (day: DayScores, zones: ReadonlySet<string>): DayScores => {
  const some = <Z extends ShiftedZone>(rows: readonly Z[]) => rows.filter(({ zone }) => zones.has(zone));
  return { zones: some(day.zones), shifted: day.shifted.map((rows) => some(rows)) };
};

/** How far a figure moves with the day: what does not average out over zones. */
const sharedReach = (day: DayScores, figure: (zones: readonly ShiftedZone[]) => number) => {
  const middle = figure(day.zones);
  const ends = day.shifted.map(figure);
  return { down: Math.max(0, middle - Math.min(...ends)), up: Math.max(0, Math.max(...ends) - middle) };
};

const both = (own: { down: number; up: number }, shared: { down: number; up: number }) => ({
  down: Math.hypot(own.down, shared.down),
  up: Math.hypot(own.up, shared.up),
});

/** Mean of zone indices by area x significance: the zones' own errors in quadrature, the day's effect once. */
export const indexOf = (day: DayScores): Figure => {
  const { zones } = day;
  const weight = total(zones, weightOf);
  const own = inQuadrature(
    zones.map((z) => {
      const share = weightOf(z) / weight;
      return { value: z.value * share, low: z.low * share, high: z.high * share };
    }),
  );
  const shared = sharedReach(day, meanIndex);
  const points = (shared.down + shared.up) / 2;
  const said = points > 0 ? [because('score: day effect counted once', { points })] : [];
  return figureAround(meanIndex(zones), both(own, shared), { least: 0, most: 100 }, said);
};

/** m2 of one sort over the zones, not over their area: the zones' own errors in quadrature, the day's effect once. */
export const activeOver = (day: DayScores, what: ActiveArea): Figure => {
  const sum = (rows: readonly ShiftedZone[]): number => total(rows, (z) => z.active[what].value);
  const own = inQuadrature(day.zones.map((z) => z.active[what]));
  const most = total(day.zones, (z) => z.area.high);
  const reasons = day.zones.flatMap((z) => z.active[what].reasons).slice(0, 1);
  return figureAround(sum(day.zones), both(own, sharedReach(day, sum)), { least: 0, most }, reasons);
};

/** Scores the zones of a round that can be scored, on its day and on a duller and a brighter one. */
export const scoredDay = (
  rows: readonly ZoneInRound[],
  scale: Scale,
  options: EyeError & { readonly withCarried?: boolean },
): DayScores => {
  const zones = rows.flatMap(({ seen }) => (seen && scoreZone(seen, scale, options)) ?? []);
  const reach = constants.z90.value * constants.daySd.value;
  return { zones, shifted: [-reach, reach].map((shift) => zones.map((zone) => onShiftedDay(zone, shift))) };
};
