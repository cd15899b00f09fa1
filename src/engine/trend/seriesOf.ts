import { activeOver, type DayScores, dayOver, indexOf } from '../condition';
import { areaOn, dayNumber, type Figure, type Reason, type SculptureRecord } from '../record';
import { brokenSince, doneTo, spanOf } from './breaks';
import { daysOfYear, trendNumbers } from './numbers';
import { because } from './reasonCodes';
import { alikeRounds, type SeriesRound, scoredRounds } from './rounds';
import type { Followed, Series, SeriesPoint, SurveyorMark } from './series';

/** The rounds of a work that make a series, scored once for all series drawn from them. */
export interface SeriesRounds {
  readonly record: SculptureRecord;
  readonly rounds: readonly SeriesRound[];
  readonly leftOut: number;
}

export const seriesRounds = (record: SculptureRecord): SeriesRounds => {
  const { alike, leftOut } = alikeRounds(record);
  return { record, rounds: scoredRounds(record, alike), leftOut };
};

const yearOf = (day: string): number => dayNumber(day) / daysOfYear;

const figureOf = (day: DayScores, what: Followed): Figure | null =>
  day.zones.length === 0 ? null : what === 'index' ? indexOf(day) : activeOver(day, what);

const zonesIn = ({ day }: SeriesRound): readonly string[] => day.zones.map(({ zone }) => zone);

/** Zones seen in every one of these rounds: a zone missed once would else look like a change of the work. */
const seenThroughout = (rounds: readonly SeriesRound[]): ReadonlySet<string> => {
  const [first, ...rest] = rounds.map(zonesIn);
  return new Set((first ?? []).filter((zone) => rest.every((zones) => zones.includes(zone))));
};

const marksIn = (rounds: readonly SeriesRound[]): readonly SurveyorMark[] =>
  rounds.flatMap(({ round }, i) => {
    const before = rounds[i - 1]?.round.body.surveyor;
    const { surveyor, date } = round.body;
    return before !== undefined && before !== surveyor ? [{ day: date, surveyor }] : [];
  });

const areas = (record: SculptureRecord, zones: ReadonlySet<string>, day: string): ReadonlyMap<string, number> =>
  new Map(record.zones.filter(({ thing }) => zones.has(thing)).map((zone) => [zone.thing, areaOn(zone, day).m2]));

const made = (
  { record, leftOut }: SeriesRounds,
  what: Followed,
  zone: string | null,
  rounds: readonly SeriesRound[],
  zones: ReadonlySet<string>,
  more: readonly Reason[],
): Series => {
  const { breaks, ticks } = doneTo(record, areas(record, zones, rounds.at(-1)?.round.body.date ?? '9999-12-31'));
  const points = rounds.flatMap((row): SeriesPoint[] => {
    const { round, seenShare } = row;
    const figure = figureOf(dayOver(row.day, zones), what);
    if (!figure) return [];
    const { date, surveyor } = round.body;
    return [
      {
        round: round.thing,
        day: date,
        t: yearOf(date),
        figure,
        seenShare: zone ? 1 : seenShare,
        surveyor,
        span: spanOf(round, breaks),
      },
    ];
  });
  const first = points[0]?.day ?? '9999';
  const last = points.at(-1)?.day ?? '';
  const marks = marksIn(rounds);
  const since = points.length > 0 ? brokenSince(rounds.at(-1)?.round, breaks) : null;
  return {
    what,
    zone,
    points,
    breaks: breaks.filter(({ day }) => day >= first),
    ticks: ticks.filter(({ day }) => day >= first.slice(0, 4)),
    marks,
    brokenSince: since,
    reasons: [
      ...(leftOut > 0 ? [because('trend: rounds of another kind left out', { rounds: leftOut })] : []),
      ...more,
      ...breaks
        .filter((row) => row.day >= first && row.day <= last && row !== since)
        .map(({ type, date, share, sure }) =>
          sure
            ? because('trend: series broken', { treatment: type, date, share })
            : because('trend: perhaps broken between', { treatment: type, date }),
        ),
      ...(since ? [because('trend: broken since', { treatment: since.type, date: since.date })] : []),
      ...(marks.length > 0 ? [because('trend: other surveyor', { count: marks.length })] : []),
    ],
  };
};

/** One zone over the years: the rounds in which it was judged afresh, of one kind and state. */
export const zoneSeries = (from: SeriesRounds, what: Followed, zone: string): Series => {
  const rounds = from.rounds.filter((row) => zonesIn(row).includes(zone));
  return made(from, what, zone, rounds, new Set([zone]), []);
};

/** The whole work over the years, over the zones seen in every round that stands in the series. */
export const workSeries = (from: SeriesRounds, what: Followed): Series => {
  const rounds = from.rounds.filter(({ seenShare }) => seenShare >= trendNumbers.seen.value);
  const zones = seenThroughout(rounds);
  const latest = rounds.at(-1);
  const whole = latest?.day.zones ?? [];
  const all = new Set(rounds.flatMap(zonesIn));
  const m2 = whole.reduce((sum, { area }) => sum + area.m2, 0);
  const kept = whole.filter(({ zone }) => zones.has(zone)).reduce((sum, { area }) => sum + area.m2, 0);
  const thin = from.rounds.length - rounds.length;
  return made(from, what, null, rounds, zones, [
    ...(thin > 0 ? [because('trend: rounds with too little seen left out', { rounds: thin })] : []),
    ...(all.size > zones.size
      ? [because('trend: zones left out', { zones: all.size - zones.size, area: m2 > 0 ? (m2 - kept) / m2 : 1 })]
      : []),
  ]);
};

/** Convenience for one series of one record. */
export const seriesOf = (record: SculptureRecord, what: Followed, zone?: string): Series => {
  const from = seriesRounds(record);
  return zone === undefined ? workSeries(from, what) : zoneSeries(from, what, zone);
};
