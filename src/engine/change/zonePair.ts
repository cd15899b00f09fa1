import { type Reason, type SculptureRecord, seriesOf, type Thing, visitOf, zoneVersionAt } from '../record';
import { kindOf } from '../trade';
import { type ComparedZone, sharesOf } from './comparedZones';
import { doneBetween } from './doneBetween';
import { type Observation, observe, type SeriesKey, type Side, seriesIn, sideState } from './observation';
import { because } from './reasonCodes';
import type { Done } from './verdict';

type Round = Thing<'round'>;

/** Whether something can be judged over the two rounds. */
export type Standing =
  | { readonly state: 'judged'; readonly reasons: readonly Reason[] }
  | { readonly state: 'carried' | 'not comparable'; readonly reasons: readonly Reason[] };

/** One series over the two rounds. */
export interface SeriesPair extends SeriesKey {
  readonly series: string;
  /** Undefined where that side was not looked at. */
  readonly earlier: Observation | undefined;
  readonly later: Observation | undefined;
  readonly standing: Standing;
}

/** One compared zone over the two rounds, with all its series. */
export interface ZonePair {
  readonly zone: Thing<'zone'>;
  readonly earlier: Side;
  readonly later: Side;
  readonly standing: Standing;
  readonly series: readonly SeriesPair[];
  readonly between: readonly Done[];
  readonly things: readonly string[];
}

export interface Rounds {
  readonly earlier: Round;
  readonly later: Round;
  /** The round called "now" is the earlier one by date: a reader turned the two around. */
  readonly turned: boolean;
  readonly otherPerson: boolean;
}

export const unsettledReasons = (record: SculptureRecord, things: readonly string[]): Reason[] => {
  const open = new Set(record.unsettled);
  const count = new Set(things.filter((thing) => open.has(thing))).size;
  return count > 0 ? [because('change: two versions, not settled', { things: count })] : [];
};

/** What was redrawn between, told for a zone that is one zone both times. */
const redrawn = (record: SculptureRecord, earlier: Side, later: Side): Reason[] => {
  const [a, b] = [earlier.zones[0], later.zones[0]];
  if (!a || !b) return [];
  const zone = b.thing;
  if (earlier.zones.length > 1 || later.zones.length > 1 || a.thing !== b.thing) {
    return [
      because('change: zone split or joined', { zone, earlier: earlier.zones.length, later: later.zones.length }),
    ];
  }
  const version = (side: Side) => {
    const n = visitOf(record, side.round.thing, zone)?.body.zoneVersion;
    return b.body.versions.find((v) => v.n === n) ?? zoneVersionAt(b, side.round.body.date);
  };
  const [was, is] = [version(earlier), version(later)];
  if (was.n === is.n) return [];
  const reasons = [
    ...(was.area.m2 !== is.area.m2
      ? [because('change: zone area changed', { zone, earlier: was.area.m2, later: is.area.m2 })]
      : []),
    ...(was.substrate !== is.substrate
      ? [because('change: zone substrate changed', { zone, earlier: was.substrate, later: is.substrate })]
      : []),
  ];
  return reasons.length > 0 ? reasons : [because('change: zone redrawn', { zone, earlier: was.n, later: is.n })];
};

const zoneStanding = (record: SculptureRecord, earlier: Side, later: Side): Standing => {
  const lonely = earlier.zones[0] ?? later.zones[0];
  if (earlier.zones.length === 0 || later.zones.length === 0) {
    const code = earlier.zones.length === 0 ? 'change: zone new since' : 'change: zone ended since';
    return { state: 'not comparable', reasons: [because(code, { zone: lonely?.thing ?? '' })] };
  }
  const [a, b] = [sideState(record, earlier), sideState(record, later)];
  const of = (state: 'carried' | 'not looked'): Reason[] => [
    ...(a.state === state ? [a.reason('earlier')] : []),
    ...(b.state === state ? [b.reason('later')] : []),
  ];
  const notLooked = of('not looked');
  if (notLooked.length > 0) return { state: 'not comparable', reasons: notLooked };
  const carried = of('carried');
  if (carried.length > 0) return { state: 'carried', reasons: carried };
  return { state: 'judged', reasons: redrawn(record, earlier, later) };
};

/** The last round before a date in which a zone was judged afresh: what the person saw when asked "same, or was last year wrong?". */
const lastJudgedBefore = (record: SculptureRecord, zone: string, date: string): string | undefined =>
  record.rounds
    .filter((r) => r.body.date < date)
    .filter((r) => {
      const state = visitOf(record, r.thing, zone)?.body.state;
      return state === 'found' || state === 'nothing';
    })
    .at(-1)?.thing;

const seriesStanding = (
  record: SculptureRecord,
  rounds: Rounds,
  zone: Standing,
  key: SeriesKey,
  earlier: Observation | undefined,
  later: Observation | undefined,
): Standing => {
  if (zone.state !== 'judged' || !earlier || !later) return zone;
  const no = (reason: Reason): Standing => ({ state: 'not comparable', reasons: [reason] });
  const carried: Reason[] = [
    ...(earlier.state === 'carried'
      ? [because('change: carried then', { round: rounds.earlier.thing, from: earlier.carriedFrom ?? '' })]
      : []),
    ...(later.state === 'carried'
      ? [because('change: carried now', { round: rounds.later.thing, from: later.carriedFrom ?? '' })]
      : []),
  ];
  if (carried.length > 0) return { state: 'carried', reasons: carried };
  const row = kindOf(key.kind);
  if (!row) return no(because('change: kind not known', { kind: key.kind }));
  // What stood there before should have been asked for; what came new could not have been. So only the later date can be silent.
  const [first, second, secondRound, firstRound] = rounds.turned
    ? [later, earlier, rounds.earlier, rounds.later]
    : [earlier, later, rounds.later, rounds.earlier];
  if (first.state === 'seen' && second.state === 'silent')
    return no(because('change: not spoken of', { round: secondRound.thing }));
  const said = second.body?.against === 'earlier was wrong' && second.body.zone;
  if (said && lastJudgedBefore(record, said, secondRound.body.date) === firstRound.thing) {
    return no(because('change: earlier said to be wrong'));
  }
  const bare = [earlier, later].some((o) => o.state === 'seen' && !o.rating);
  if (row.measure === 'area' && bare) return no(because('change: no coverage given'));
  return { state: 'judged', reasons: zone.reasons };
};

/** Lays the two rounds side by side for one compared zone. */
export const zonePair = (record: SculptureRecord, rounds: Rounds, compared: ComparedZone): ZonePair => {
  const [zonesThen, zonesNow] = rounds.turned ? [compared.second, compared.first] : [compared.first, compared.second];
  const side = (round: Round, zones: ComparedZone['first']): Side => ({
    round,
    zones,
    shares: sharesOf(zones, round.body.date),
  });
  const earlier = side(rounds.earlier, zonesThen);
  const later = side(rounds.later, zonesNow);
  const standing = zoneStanding(record, earlier, later);
  const looked = (s: Side): boolean => s.zones.length > 0 && sideState(record, s).state !== 'not looked';
  const [lookedEarlier, lookedLater] = [looked(earlier), looked(later)];
  const series = seriesIn(record, [earlier, later]).flatMap((key): SeriesPair[] => {
    const a = lookedEarlier ? observe(record, earlier, key) : undefined;
    const b = lookedLater ? observe(record, later, key) : undefined;
    const there = [a, b].some((o) => o?.body !== undefined);
    if (!there) return [];
    return [
      {
        ...key,
        series: seriesOf(compared.zone.thing, key.kind, key.origin),
        earlier: a,
        later: b,
        standing: seriesStanding(record, rounds, standing, key, a, b),
      },
    ];
  });
  const names = new Set([...zonesThen, ...zonesNow, compared.zone].map((z) => z.thing));
  const [first, second] = rounds.turned ? [rounds.later, rounds.earlier] : [rounds.earlier, rounds.later];
  return {
    zone: compared.zone,
    earlier,
    later,
    standing,
    series,
    between: doneBetween(record, first, second, names),
    things: [...new Set(series.flatMap((s) => [...(s.earlier?.things ?? []), ...(s.later?.things ?? [])]))],
  };
};
