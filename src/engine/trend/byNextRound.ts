import { areaOn, type Figure, type SculptureRecord } from '../record';
import { isFigure } from './forecastOf';
import type { IndexTrends } from './trendsOf';

/** What the zones of a work are expected to come to by the next round, if care goes on as now. Zones without a trend are left out. */
export interface ByNextRound {
  /** True where the index now stands at or over the action level and is forecast to fall below it. */
  readonly crossing: ReadonlyMap<string, boolean>;
  /** Burden that comes on top: m2 x significance x points of index; 0 where it gets no worse. */
  readonly growth: ReadonlyMap<string, Figure>;
}

export const byNextRound = (record: SculptureRecord, trends: IndexTrends, actionLevel: number): ByNextRound => {
  const crossing = new Map<string, boolean>();
  const growth = new Map<string, Figure>();
  for (const { zone, index } of trends.zones) {
    const now = index.series.points.at(-1);
    const row = record.zones.find(({ thing }) => thing === zone);
    if (!now || !row || index.next === null || !isFigure(index.next)) continue;
    const { next } = index;
    crossing.set(zone, now.figure.value >= actionLevel && next.value < actionLevel);
    const size = areaOn(row, now.day).m2 * row.body.significance;
    const lost = (by: number): number => size * Math.max(0, now.figure.value - by);
    growth.set(zone, { value: lost(next.value), low: lost(next.high), high: lost(next.low), reasons: next.reasons });
  }
  return { crossing, growth };
};
