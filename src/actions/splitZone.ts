import { type BodyOf, nameOf, type Thing } from '../engine/record';
import { type Area, freeLetter, newZone, type ZoneFields } from './addZone';
import { calendarDay } from './calendarDay';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing, thingsWithin } from './theThing';
import { lastVisitDay } from './visitsOfZone';

type Zone = Thing<'zone'>;
const lastVersion = (zone: Zone) =>
  zone.body.versions[zone.body.versions.length - 1] as Zone['body']['versions'][number];

/** One part of a split; what is left out is taken from the zone that ends. */
export type SplitPart = { readonly name: string; readonly share: number } & Partial<Omit<ZoneFields, 'area' | 'since'>>;

/** Shares of the area need to sum to 1 within this. */
const shareTolerance = 0.001;

/** The zone ends on a day and lives on in two or more new ones: B becomes B1, B2. One deed. */
export const splitZone = (
  desk: Desk,
  zone: string,
  parts: readonly SplitPart[],
  on?: string,
): Promise<Outcome<{ readonly zones: readonly string[] }>> =>
  attempt(async () => {
    const parent = await theThing(desk, 'zone', zone);
    const { sculpture, letter } = parent.body;
    const day = await endingDay(desk, [parent], on);
    if (parts.length < 2) refuse(refusal('split needs two', {}));
    const sum = parts.reduce((total, part) => total + part.share, 0);
    if (Math.abs(sum - 1) > shareTolerance || parts.some((part) => !(part.share > 0)))
      refuse(refusal('shares do not sum', { sum }));
    const version = lastVersion(parent);
    const siblings = (await thingsWithin(desk, 'zone', sculpture)).filter((z) => z.thing !== zone);
    const children = parts.map((part, i) => {
      const fields = {
        ...parent.body,
        substrate: version.substrate,
        ...part,
        area: shareOf(version.area, part.share),
        since: day,
      };
      const wanted = part.letter ?? `${letter}${i + 1}`;
      const body = newZone(sculpture, fields, freeLetter(siblings, wanted), parent.body.order + i / (parts.length + 1));
      return { zone: nameOf.zone(desk.newId()), share: part.share, body };
    });
    const into = children.map((child) => ({ zone: child.zone, share: child.share }));
    must(
      await commitChanges(desk, deedName('deed: zone split', { letter, parts: parts.length }), [
        ...children.map((child) => zoneSaid(child.zone, child.body)),
        { thing: zone, patch: { split: { on: day, into } } },
      ]),
    );
    return { zones: children.map((child) => child.zone) };
  });

/** Two or more zones of one work end on a day and become one new zone, its area their sum unless given. One deed. */
export const joinZones = (
  desk: Desk,
  zones: readonly string[],
  fields: { readonly name: string } & Partial<Omit<ZoneFields, 'since'>>,
  on?: string,
): Promise<Outcome<{ readonly zone: string }>> =>
  attempt(async () => {
    const parents = await Promise.all([...new Set(zones)].map((zone) => theThing(desk, 'zone', zone)));
    const [first] = parents;
    if (!first || parents.length < 2) return refuse(refusal('join needs two', {}));
    const { sculpture } = first.body;
    if (parents.some((parent) => parent.body.sculpture !== sculpture)) refuse(refusal('join across sculptures', {}));
    const day = await endingDay(desk, parents, on);
    const zone = nameOf.zone(desk.newId());
    const all = {
      ...first.body,
      substrate: lastVersion(first).substrate,
      area: sumOf(parents.map((parent) => lastVersion(parent).area)),
      exposure: [...new Set(parents.flatMap((parent) => parent.body.exposure))],
      ...fields,
      since: day,
    };
    const letter = freeLetter(await thingsWithin(desk, 'zone', sculpture), fields.letter);
    const body = newZone(sculpture, all, letter, Math.min(...parents.map((parent) => parent.body.order)));
    const letters = parents.map((parent) => parent.body.letter).join(', ');
    must(
      await commitChanges(desk, deedName('deed: zones joined', { letters, name: body.name }), [
        zoneSaid(zone, body),
        ...parents.map((parent) => ({ thing: parent.thing, patch: { joined: { on: day, into: zone } } })),
      ]),
    );
    return { zone };
  });

const zoneSaid = (thing: string, body: BodyOf<'zone'>): Change => ({
  thing,
  kind: 'zone',
  within: body.sculpture,
  body,
});

const endingDay = async (desk: Desk, parents: readonly Zone[], on: string | undefined): Promise<string> => {
  const day = calendarDay(on ?? desk.today());
  for (const { thing, body } of parents) {
    if (body.split || body.joined) refuse(refusal('zone has ended', { letter: body.letter }));
    const last = await lastVisitDay(desk, body.sculpture, thing);
    if (last !== undefined && day < last) refuse(refusal('day before last visit', { day, last }));
  }
  return day;
};

const shareOf = (area: Area, share: number): Area => ({
  m2: area.m2 * share,
  low: area.low * share,
  high: area.high * share,
  method: area.method,
});

const sumOf = (areas: readonly Area[]): Area => ({
  m2: areas.reduce((sum, a) => sum + a.m2, 0),
  low: areas.reduce((sum, a) => sum + a.low, 0),
  high: areas.reduce((sum, a) => sum + a.high, 0),
  method: areas[0]?.method ?? 'typed',
});
