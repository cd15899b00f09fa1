import { areaOn, type Figure, type Reason, type SculptureRecord, type Thing, zonesAt } from '../record';
import { type ActiveArea, type Scale, scaleOf } from '../trade';
import { activeKinds } from './activeArea';
import { isStrong } from './conditionClass';
import type { EyeError } from './coverageError';
import { because } from './reasonCodes';
import { activeOver, type DayScores, indexOf, meanIndex, scoredDay, total, weightOf } from './sharedDay';
import { seenThings, unsettledIn, type ZoneScore } from './zoneIndex';
import { type Standing, type ZoneInRound, zoneInRound } from './zoneInRound';

/** A zone of the round that has no index, and why. */
export interface Unscored {
  readonly zone: string;
  readonly standing: Exclude<Standing, 'seen'>;
  readonly m2: number;
  readonly reasons: readonly Reason[];
}

/** Sculpture index of one round, 0 to 100 with its 90 % range, never without its parts. Null values where no zone was looked at. */
export interface SculptureScore {
  readonly round: string;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** With zones carried over counted as they stood: a second figure; missing where none was carried. */
  readonly withCarried?: Figure;
  /** Share of the living zones' area that was looked at, 0 to 1. */
  readonly seenShare: number;
  /** The index if the zones not seen were all as good as the best or as bad as the worst of those seen. */
  readonly ifUnseenBest: number | null;
  readonly ifUnseenWorst: number | null;
  readonly weakest: ZoneScore | null;
  /** m2 over the zones looked at. */
  readonly active: Readonly<Record<ActiveArea, Figure>>;
  /** Share of the area looked at whose condition is proposed as CC3, 0 to 1. */
  readonly shareCC3: number;
  readonly zones: readonly ZoneScore[];
  readonly unscored: readonly Unscored[];
  /** Names the weights it was made with. */
  readonly scale: string;
  readonly reasons: readonly Reason[];
}

export interface RoundOptions extends EyeError {
  readonly scale?: Scale;
}

/** The index if every zone not seen had this one. */
const filledWith = (zones: readonly ZoneScore[], unseenWeight: number, value: number): number => {
  const seenWeight = total(zones, weightOf);
  return (seenWeight * meanIndex(zones) + unseenWeight * value) / (seenWeight + unseenWeight);
};

const weakestOf = (zones: readonly ZoneScore[]): ZoneScore | null =>
  [...zones].sort((a, b) => a.value - b.value || (a.zone < b.zone ? -1 : 1))[0] ?? null;

/** The zones of a round that can be scored, for figures over some of them: see indexOf and activeOver. `round` is a thing name. */
export const roundDay = (record: SculptureRecord, round: string, options: RoundOptions = {}): DayScores => {
  const here = record.rounds.find(({ thing }) => thing === round);
  if (!here) throw new RangeError(`There is no round ${round} among this sculpture's rounds.`);
  const { scale = scaleOf(record.scale), ...error } = options;
  return scoredDay(
    zonesAt(record, here.body.date).map((zone) => zoneInRound(record, here, zone)),
    scale,
    error,
  );
};

/** Scores one round of one sculpture. `round` is a thing name; an unknown one is an error of the caller. */
export const scoreRound = (record: SculptureRecord, round: string, options: RoundOptions = {}): SculptureScore => {
  const here = record.rounds.find(({ thing }) => thing === round);
  if (!here) throw new RangeError(`There is no round ${round} among this sculpture's rounds.`);
  const { scale = scaleOf(record.scale), ...error } = options;
  return scoreRows(
    record,
    here,
    zonesAt(record, here.body.date).map((zone) => zoneInRound(record, here, zone)),
    scale,
    error,
  );
};

const scoreRows = (
  record: SculptureRecord,
  round: Thing<'round'>,
  rows: readonly ZoneInRound[],
  scale: Scale,
  error: EyeError,
): SculptureScore => {
  const day = scoredDay(rows, scale, error);
  const { zones } = day;
  const unseen = rows.filter(({ standing }) => standing !== 'seen');
  const areaIn = ({ zone }: ZoneInRound): number => areaOn(zone, round.body.date).m2;
  const unseenWeight = total(unseen, (row) => areaIn(row) * row.zone.body.significance);
  const seenArea = total(zones, (z) => z.area.m2);
  const seenShare = seenArea / total(rows, areaIn) || 0;
  const index = zones.length > 0 ? indexOf(day) : null;
  const weakest = weakestOf(zones);
  const best = Math.max(...zones.map((z) => z.value));
  const carried = unseen.some(({ seen }) => seen !== undefined)
    ? indexOf(scoredDay(rows, scale, { ...error, withCarried: true }))
    : null;
  const unsettled =
    unsettledIn([round]) + total(rows, ({ zone, seen }) => unsettledIn(seen ? seenThings(seen) : [zone]));
  const [green, bare, scaleArea] = activeKinds.map((what) => activeOver(day, what)) as [Figure, Figure, Figure];
  return {
    round: round.thing,
    value: index?.value ?? null,
    low: index?.low ?? null,
    high: index?.high ?? null,
    ...(carried ? { withCarried: carried } : {}),
    seenShare,
    ifUnseenBest: weakest && filledWith(zones, unseenWeight, best),
    ifUnseenWorst: weakest && filledWith(zones, unseenWeight, weakest.value),
    weakest,
    active: { green, bare, scale: scaleArea },
    shareCC3:
      total(
        zones.filter((z) => isStrong(z)),
        (z) => z.area.m2,
      ) / seenArea || 0,
    zones,
    unscored: unseen.map((row) => ({
      zone: row.zone.thing,
      standing: row.standing as Unscored['standing'],
      m2: areaIn(row),
      reasons: row.reasons,
    })),
    scale: scale.id,
    reasons: [
      ...(index?.reasons ?? [because('score: no zone looked at')]),
      ...zones.flatMap(({ reasons }) => reasons.filter(({ code }) => code === 'score: own eye')).slice(0, 1),
      because('score: share seen', { percent: Math.round(seenShare * 100), seen: zones.length, zones: rows.length }),
      ...(weakest ? [because('score: weakest zone', { zone: weakest.zone, index: weakest.value })] : []),
      ...(unsettled > 0 ? [because('score: two versions, not settled', { things: unsettled })] : []),
      ...(record.unknown.length > 0 ? [because('score: things not known', { things: record.unknown.length })] : []),
    ],
  };
};
