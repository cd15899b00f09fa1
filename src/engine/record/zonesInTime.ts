import type { BodyOf } from './bodies';
import type { Thing } from './current';
import type { SculptureRecord } from './sculptureRecord';

type ZoneBody = BodyOf<'zone'>;
type ZoneVersion = ZoneBody['versions'][number];

/** Days are YYYY-MM-DD throughout, so that their order is the order of the words. */
const bySince = (a: ZoneVersion, b: ZoneVersion): number =>
  a.since < b.since ? -1 : a.since > b.since ? 1 : a.n - b.n;

/** The version of a zone that held on a day; before its first, the first. */
export const zoneVersionAt = (zone: Thing<'zone'>, day: string): ZoneVersion => {
  const versions = [...zone.body.versions].sort(bySince);
  return versions.filter((v) => v.since <= day).at(-1) ?? (versions[0] as ZoneVersion);
};

/** A zone's area in m2 with its range, as it was on a day. */
export const areaOn = (zone: Thing<'zone'>, day: string): ZoneVersion['area'] => zoneVersionAt(zone, day).area;

/** The first day on which a zone no longer is: it was split, or joined to another. Undefined where it lives on. */
export const endOf = (zone: Thing<'zone'>): string | undefined => {
  const ends = [zone.body.split?.on, zone.body.joined?.on].filter((d) => d !== undefined).sort();
  return ends[0];
};

/**
 * Zones that were there on a day, in walking order. A zone lives from the day of its first version, or of the first round it was
 * visited in; on the day of a split the new ones live, not the old. Until a sculpture's first finished round all its zones count
 * whatever day they were drawn on, so that a round of last year can be typed in from paper.
 */
export const zonesAt = (record: SculptureRecord, day: string): readonly Thing<'zone'>[] => {
  const till = new Set(record.rounds.filter((r) => r.body.date <= day).map((r) => r.thing));
  const visited = new Set(record.visits.filter((v) => till.has(v.body.round)).map((v) => v.body.zone));
  const first = !record.rounds.some((r) => r.body.ended !== undefined && r.body.date <= day);
  const bornOfAnother = new Set(
    record.zones.flatMap(({ body }) => [
      ...(body.split?.into.map((part) => part.zone) ?? []),
      ...(body.joined ? [body.joined.into] : []),
    ]),
  );
  return record.zones.filter((zone) => {
    const end = endOf(zone);
    if (end !== undefined && day >= end) return false;
    const since = [...zone.body.versions].sort(bySince)[0]?.since ?? day;
    return since <= day || visited.has(zone.thing) || (first && !bornOfAnother.has(zone.thing));
  });
};
