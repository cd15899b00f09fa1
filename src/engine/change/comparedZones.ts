import { areaOn, type SculptureRecord, type Thing, zonesAt } from '../record';

type Zone = Thing<'zone'>;

/** A part of the surface both rounds can speak of: the same zone, or the zones it was split into or joined from. */
export interface ComparedZone {
  /** The zone it is told under: the undivided one. */
  readonly zone: Zone;
  /** As it was on the first day, and as it is on the second. Either is empty where the zone did not live then. */
  readonly first: readonly Zone[];
  readonly second: readonly Zone[];
}

const becomes = ({ body }: Zone): readonly string[] =>
  body.split ? body.split.into.map((part) => part.zone) : body.joined ? [body.joined.into] : [];

/** Names of the zones a zone lives on in, on the day whose living zones are given. */
const followed = (zone: Zone, living: ReadonlySet<string>, byName: ReadonlyMap<string, Zone>): string[] => {
  const walk = (name: string, seen: readonly string[]): string[] => {
    if (living.has(name)) return [name];
    const here = byName.get(name);
    if (!here || seen.includes(name)) return [];
    return becomes(here).flatMap((next) => walk(next, [...seen, name]));
  };
  return walk(zone.thing, []);
};

const toldUnder = (first: readonly Zone[], second: readonly Zone[]): Zone[] => {
  const told = first.length === 1 && second.length > 1 ? first[0] : (second[0] ?? first[0]);
  return told ? [told] : [];
};

/**
 * Pairs the zones living on two days, the first not after the second, following splits and joins made between, in walking
 * order. Each pair is the smallest surface that was surveyed as whole zones both times.
 */
export const comparedZones = (record: SculptureRecord, firstDay: string, secondDay: string): ComparedZone[] => {
  const before = zonesAt(record, firstDay);
  const after = zonesAt(record, secondDay);
  const living = new Set(after.map((z) => z.thing));
  const byName = new Map(record.zones.map((z) => [z.thing, z]));
  let groups: { first: readonly Zone[]; second: ReadonlySet<string> }[] = [];
  for (const zone of before) {
    const ends = followed(zone, living, byName);
    const met = groups.filter((g) => ends.some((end) => g.second.has(end)));
    const second = new Set([...ends, ...met.flatMap((g) => [...g.second])]);
    groups = [...groups.filter((g) => !met.includes(g)), { first: [...met.flatMap((g) => g.first), zone], second }];
  }
  const reached = new Set(groups.flatMap((g) => [...g.second]));
  const place = new Map(record.zones.map((z, i) => [z.thing, i]));
  return [
    ...groups.map((g) => ({ first: g.first, second: after.filter((z) => g.second.has(z.thing)) })),
    ...after.filter((z) => !reached.has(z.thing)).map((z) => ({ first: [], second: [z] })),
  ]
    .flatMap((pair) => toldUnder(pair.first, pair.second).map((zone) => ({ zone, ...pair })))
    .sort((a, b) => (place.get(a.zone.thing) ?? 0) - (place.get(b.zone.thing) ?? 0));
};

/** Each zone's share of their joined area on a day; sums to 1. */
export const sharesOf = (zones: readonly Zone[], day: string): number[] => {
  const areas = zones.map((z) => areaOn(z, day).m2);
  const all = areas.reduce((sum, m2) => sum + m2, 0);
  return areas.map((m2) => m2 / all);
};
