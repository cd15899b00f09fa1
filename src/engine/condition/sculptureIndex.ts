import { areaOn, type Figure, type Reason, type SculptureRecord, type Thing, zonesAt } from '../record';
import { type ActiveArea, type Scale, scaleOf } from '../trade';
import { activeKinds } from './activeArea';
import { isStrong } from './conditionClass';
import { constants } from './constants';
import type { EyeError } from './coverageError';
import { figureAround, inQuadrature } from './figure';
import { because } from './reasonCodes';
import { scoreZone, type ZoneScore } from './zoneIndex';
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

const weightOf = (zone: ZoneScore): number => zone.area.m2 * zone.significance;
const total = <T>(rows: readonly T[], of: (row: T) => number): number => rows.reduce((sum, row) => sum + of(row), 0);
const meanIndex = (zones: readonly ZoneScore[]): number =>
  total(zones, (z) => weightOf(z) * z.value) / total(zones, weightOf);

type ScoreAt = (dayShift: number) => readonly ZoneScore[];

/** Change of a figure when light and damp shift every eye of the day one way or the other: what does not average out over zones. */
const sharedReach = (scoreAt: ScoreAt, figure: (zones: readonly ZoneScore[]) => number) => {
  const shift = constants.z90.value * constants.daySd.value;
  const middle = figure(scoreAt(0));
  const ends = [figure(scoreAt(-shift)), figure(scoreAt(shift))];
  return { down: Math.max(0, middle - Math.min(...ends)), up: Math.max(0, Math.max(...ends) - middle) };
};

const both = (own: { down: number; up: number }, shared: { down: number; up: number }) => ({
  down: Math.hypot(own.down, shared.down),
  up: Math.hypot(own.up, shared.up),
});

/** Mean of zone indices by area x significance: the zones' own errors in quadrature, the day's effect once. */
const indexOf = (scoreAt: ScoreAt): Figure => {
  const zones = scoreAt(0);
  const weight = total(zones, weightOf);
  const own = inQuadrature(
    zones.map((z) => {
      const share = weightOf(z) / weight;
      return { value: z.value * share, low: z.low * share, high: z.high * share };
    }),
  );
  const shared = sharedReach(scoreAt, meanIndex);
  const points = (shared.down + shared.up) / 2;
  const said = points > 0 ? [because('score: day effect counted once', { points })] : [];
  return figureAround(meanIndex(zones), both(own, shared), { least: 0, most: 100 }, said);
};

const activeOf = (scoreAt: ScoreAt, what: ActiveArea): Figure => {
  const zones = scoreAt(0);
  const sum = (rows: readonly ZoneScore[]): number => total(rows, (z) => z.active[what].value);
  const own = inQuadrature(zones.map((z) => z.active[what]));
  const most = total(zones, (z) => z.area.high);
  const reasons = zones.flatMap((z) => z.active[what].reasons).slice(0, 1);
  return figureAround(sum(zones), both(own, sharedReach(scoreAt, sum)), { least: 0, most }, reasons);
};

/** The index if every zone not seen had this one. */
const filledWith = (zones: readonly ZoneScore[], unseenWeight: number, value: number): number => {
  const seenWeight = total(zones, weightOf);
  return (seenWeight * meanIndex(zones) + unseenWeight * value) / (seenWeight + unseenWeight);
};

const weakestOf = (zones: readonly ZoneScore[]): ZoneScore | null =>
  [...zones].sort((a, b) => a.value - b.value || (a.zone < b.zone ? -1 : 1))[0] ?? null;

const scorer =
  (rows: readonly ZoneInRound[], scale: Scale, options: EyeError & { readonly withCarried?: boolean }): ScoreAt =>
  (dayShift) =>
    rows.flatMap(({ seen }) => {
      const score = seen && scoreZone(seen, scale, { ...options, dayShift });
      return score ? [score] : [];
    });

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
  const scoreAt = scorer(rows, scale, error);
  const zones = scoreAt(0);
  const unseen = rows.filter(({ standing }) => standing !== 'seen');
  const areaIn = ({ zone }: ZoneInRound): number => areaOn(zone, round.body.date).m2;
  const unseenWeight = total(unseen, (row) => areaIn(row) * row.zone.body.significance);
  const seenArea = total(zones, (z) => z.area.m2);
  const seenShare = seenArea / total(rows, areaIn) || 0;
  const index = zones.length > 0 ? indexOf(scoreAt) : null;
  const weakest = weakestOf(zones);
  const best = Math.max(...zones.map((z) => z.value));
  const carried = unseen.some(({ seen }) => seen !== undefined)
    ? indexOf(scorer(rows, scale, { ...error, withCarried: true }))
    : null;
  const [green, bare, scaleArea] = activeKinds.map((what) => activeOf(scoreAt, what)) as [Figure, Figure, Figure];
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
      because('score: share seen', { percent: Math.round(seenShare * 100), seen: zones.length, zones: rows.length }),
      ...(weakest ? [because('score: weakest zone', { zone: weakest.zone, index: weakest.value })] : []),
      ...(record.unsettled.length > 0
        ? [because('score: two versions, not settled', { things: record.unsettled.length })]
        : []),
      ...(record.unknown.length > 0 ? [because('score: things not known', { things: record.unknown.length })] : []),
    ],
  };
};
