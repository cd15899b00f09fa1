import { addDays, areaOn, daysBetween, type SculptureRecord, zonesAt } from '../record';
import type { ActiveArea } from '../trade';
import { type Forecast, forecastOf } from './forecastOf';
import type { Followed, Series } from './series';
import { seriesRounds, workSeries, zoneSeries } from './seriesOf';
import { type Trend, trendOf } from './trendOf';

/** A series, what it shows, and what it comes to by the next round. */
export interface Followup {
  readonly series: Series;
  readonly trend: Trend;
  /** By the day the next round is due; null where no round was made. */
  readonly next: Forecast | null;
}

export interface Trends {
  /** The day the next round may be looked for: as long after the last as rounds lie apart. Null with fewer than two rounds. */
  readonly nextRound: string | null;
  readonly work: Readonly<Record<Followed, Followup>>;
  /** Zones alive at the latest round, in walking order. */
  readonly zones: readonly {
    readonly zone: string;
    readonly index: Followup;
    readonly active: Readonly<Record<ActiveArea, Followup>>;
  }[];
}

const middleOf = (values: readonly number[]): number | undefined =>
  [...values].sort((a, b) => a - b)[values.length >> 1];

/** The index of each zone, as the order of need asks for it: of all trends the few that press. */
export interface IndexTrends {
  readonly zones: readonly { readonly zone: string; readonly index: Followup }[];
}

const following = (record: SculptureRecord) => {
  const from = seriesRounds(record);
  const days = from.rounds.map(({ round }) => round.body.date);
  const apart = middleOf(days.slice(1).map((day, i) => daysBetween(days[i] as string, day)));
  const last = days.at(-1);
  const nextRound = last !== undefined && apart !== undefined && apart > 0 ? addDays(last, apart) : null;
  const zones = last === undefined ? [] : zonesAt(record, last);
  const m2 = (some: readonly (typeof zones)[number][]): number =>
    some.reduce((sum, zone) => sum + areaOn(zone, last ?? '').m2, 0);
  const follow = (series: Series, most: number): Followup => {
    const trend = trendOf(series);
    return { series, trend, next: nextRound === null ? null : forecastOf(series, trend, nextRound, most) };
  };
  const indexOf = (zone: (typeof zones)[number]): Followup => follow(zoneSeries(from, 'index', zone.thing), 100);
  return { from, nextRound, zones, m2, follow, indexOf };
};

export const indexTrendsOf = (record: SculptureRecord): IndexTrends => {
  const { zones, indexOf } = following(record);
  return { zones: zones.map((zone) => ({ zone: zone.thing, index: indexOf(zone) })) };
};

/** All series of a work and of its zones. */
export const trendsOf = (record: SculptureRecord): Trends => {
  const { from, nextRound, zones, m2, follow, indexOf } = following(record);
  const all = m2(zones);
  const work = (what: Followed) => follow(workSeries(from, what), what === 'index' ? 100 : all);
  return {
    nextRound,
    work: { index: work('index'), green: work('green'), bare: work('bare'), scale: work('scale') },
    zones: zones.map((zone) => {
      const active = (what: ActiveArea) => follow(zoneSeries(from, what, zone.thing), m2([zone]));
      return {
        zone: zone.thing,
        index: indexOf(zone),
        active: { green: active('green'), bare: active('bare'), scale: active('scale') },
      };
    }),
  };
};
