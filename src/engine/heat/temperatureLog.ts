import { type BodyOf, daysBetween, type Reason } from '../record';
import { alarmRules } from '../trade';
import { because } from './reasonCodes';

/** What one reading says: the spot it was taken at, the minute of the day, degrees Celsius. */
export type HeatReading = Pick<BodyOf<'insertReading'>, 'time' | 'spot' | 'celsius'>;

/** What a named expert allows an insert: degrees Celsius; kelvin between two sides; kelvin in a minute. */
export type HeatLimits = Pick<BodyOf<'insertCare'>, 'most' | 'mostDifference' | 'mostPerMinute'>;

type Timed = HeatReading & Pick<LoggedReading, 'minute'>;

export type HeatLevel = 'no limit' | 'under' | 'near' | 'over';

export interface LoggedReading extends HeatReading {
  /** Since the midnight before the work began: over 1440 where it went on past the next one. */
  readonly minute: number;
  /** Kelvin in a minute since the last reading at the same spot. */
  readonly perMinute: number | undefined;
  /** To the coolest other spot, each at its last reading that is no longer ago than the longest gap; kelvin. */
  readonly apart: number | undefined;
  readonly level: HeatLevel;
}

export interface TemperatureLog {
  /** In order of time. */
  readonly rows: readonly LoggedReading[];
  readonly highest: LoggedReading | undefined;
  /** The worst of all. */
  readonly level: HeatLevel;
  /** Worst first. What is not known is said too. */
  readonly reasons: readonly Reason[];
}

export const minuteOf = (time: string): number => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));

const dayLong = 1440;

/** The minute the work of a day ended, counted as the minutes of its readings are; undefined while it goes on. */
export const endOfWork = ({ date, workEnded }: Pick<BodyOf<'hotDay'>, 'date' | 'workEnded'>): number | undefined =>
  workEnded ? daysBetween(date, workEnded.slice(0, 10)) * dayLong + minuteOf(workEnded.slice(11, 16)) : undefined;

const timeOf = (minute: number): string =>
  `${String(Math.floor(minute / 60) % 24).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

/**
 * Readings carry a time of the day and no day. Those of the small hours belong to the night after where the longest pause of the
 * whole day and night lies between them and the rest: nobody pauses longest with the flame lit.
 */
const inOrderOf = (readings: readonly HeatReading[]): readonly Timed[] => {
  const byTime = readings
    .map((reading) => ({ ...reading, minute: minuteOf(reading.time) }))
    .sort((a, b) => a.minute - b.minute);
  const [first] = byTime;
  const last = byTime.at(-1);
  if (!first || !last) return byTime;
  let longest = first.minute + dayLong - last.minute;
  let from = 0;
  for (const [i, { minute }] of byTime.entries()) {
    const before = byTime[i - 1];
    if (!before || before.minute >= alarmRules.nightEnds || minute - before.minute <= longest) continue;
    longest = minute - before.minute;
    from = i;
  }
  const after = byTime.slice(0, from).map((reading) => ({ ...reading, minute: reading.minute + dayLong }));
  return [...byTime.slice(from), ...after];
};

/** From where on a reading is near its limit. */
export const alarmAt = (limit: number): number =>
  limit - Math.min(alarmRules.under, Math.abs(limit) * alarmRules.share);

const order: readonly HeatLevel[] = ['no limit', 'under', 'near', 'over'];
const worse = (a: HeatLevel, b: HeatLevel): HeatLevel => (order.indexOf(b) > order.indexOf(a) ? b : a);

const against = (value: number | undefined, limit: number | undefined): HeatLevel => {
  if (limit === undefined || value === undefined) return 'no limit';
  if (value >= limit) return 'over';
  return value >= alarmAt(limit) ? 'near' : 'under';
};

/**
 * The readings at one insert in a day of hot work, beside its limits. `ended` is the minute the work ended (see `endOfWork`): a
 * log that stops before it has a gap too. Readings come in any order; they may go on past midnight.
 */
export const temperatureLog = (
  readings: readonly HeatReading[],
  limits: HeatLimits = {},
  ended?: number,
): TemperatureLog => {
  const reasons: Reason[] = [];
  const lastAt = new Map<string, Timed>();
  const rows = inOrderOf(readings).map((reading): LoggedReading => {
    const before = lastAt.get(reading.spot);
    const perMinute = rateBetween(before, reading);
    if (before && before.time === reading.time && before.celsius !== reading.celsius)
      reasons.push(because('heat: two values at once', { time: reading.time, spot: reading.spot }));
    lastAt.set(reading.spot, reading);
    const apart = apartAt(reading, lastAt);
    const level = [
      against(reading.celsius, limits.most),
      against(apart, limits.mostDifference),
      against(perMinute, limits.mostPerMinute),
    ].reduce(worse, 'no limit');
    return { ...reading, perMinute, apart, level };
  });
  const highest = rows.reduce<LoggedReading | undefined>(
    (top, row) => (top && top.celsius >= row.celsius ? top : row),
    undefined,
  );
  return {
    rows,
    highest,
    level: rows.reduce<HeatLevel>((level, row) => worse(level, row.level), 'no limit'),
    reasons: [...overLimits(rows, limits), ...unknowns(rows, limits), ...reasons, ...gaps(rows, ended)],
  };
};

const rateBetween = (before: Timed | undefined, now: Timed): number | undefined => {
  const minutes = before ? now.minute - before.minute : 0;
  return before && minutes > 0 ? (now.celsius - before.celsius) / minutes : undefined;
};

const apartAt = (reading: Timed, lastAt: ReadonlyMap<string, Timed>): number | undefined => {
  const others = [...lastAt.values()].filter(
    ({ spot, minute }) => spot !== reading.spot && reading.minute - minute <= alarmRules.longestGap,
  );
  if (others.length === 0) return undefined;
  return Math.max(...others.map(({ celsius }) => Math.abs(reading.celsius - celsius)));
};

/** The worst reading of each limit, said once. */
const overLimits = (rows: readonly LoggedReading[], limits: HeatLimits): Reason[] => {
  const said: Reason[] = [];
  const { most, mostDifference, mostPerMinute } = limits;
  const hot = worst(rows, ({ celsius }) => celsius);
  const hotLevel = against(hot?.celsius, most);
  if (hot && most !== undefined && hotLevel !== 'under')
    said.push(
      because(hotLevel === 'over' ? 'heat: over the limit' : 'heat: near the limit', {
        ...{ time: hot.time, celsius: hot.celsius, limit: most },
      }),
    );
  const wide = worst(rows, ({ apart }) => apart);
  const wideLevel = against(wide?.apart, mostDifference);
  if (wide?.apart !== undefined && mostDifference !== undefined && wideLevel !== 'under')
    said.push(
      because(wideLevel === 'over' ? 'heat: sides apart' : 'heat: sides near apart', {
        ...{ time: wide.time, kelvin: wide.apart, limit: mostDifference },
      }),
    );
  const fast = worst(rows, ({ perMinute }) => perMinute);
  const fastLevel = against(fast?.perMinute, mostPerMinute);
  if (fast?.perMinute !== undefined && mostPerMinute !== undefined && fastLevel !== 'under')
    said.push(because('heat: rises fast', { time: fast.time, perMinute: fast.perMinute, limit: mostPerMinute }));
  return said;
};

const worst = (rows: readonly LoggedReading[], of: (row: LoggedReading) => number | undefined) =>
  rows.reduce<LoggedReading | undefined>((top, row) => {
    const value = of(row);
    return value === undefined || (top && (of(top) ?? Number.NEGATIVE_INFINITY) >= value) ? top : row;
  }, undefined);

const unknowns = (rows: readonly LoggedReading[], { most, mostDifference }: HeatLimits): Reason[] => [
  ...(rows.length === 0 ? [because('heat: no reading')] : []),
  ...(most === undefined ? [because('heat: no limit set')] : []),
  ...(mostDifference !== undefined && rows.length > 0 && new Set(rows.map(({ spot }) => spot)).size === 1
    ? [because('heat: one side only')]
    : []),
];

/**
 * Between two readings at one spot that lie too far apart, and from the last one to the end of the work: what it was then
 * nobody knows. `could`: had it gone on rising as fast as the fastest rise of the day from the last reading on, degrees Celsius; '' where
 * no rise was ever read, which tells nothing of the rise nobody saw.
 */
const gaps = (rows: readonly LoggedReading[], ended: number | undefined): Reason[] => {
  const fastest = Math.max(0, ...rows.map(({ perMinute }) => perMinute ?? 0));
  const found: Reason[] = [];
  for (const spot of new Set(rows.map((row) => row.spot))) {
    const own = rows.filter((row) => row.spot === spot);
    for (const [i, { time, minute, celsius }] of own.entries()) {
      const until = own[i + 1]?.minute ?? ended;
      const minutes = until === undefined ? 0 : until - minute;
      if (until === undefined || minutes <= alarmRules.longestGap) continue;
      const could = fastest > 0 ? celsius + fastest * minutes : '';
      found.push(because('heat: gap in the log', { spot, since: time, until: timeOf(until), minutes, could }));
    }
  }
  return found;
};
