import type { SculptureRecord, Thing } from '../engine/record';
import { roundTypes } from '../engine/trade';
import { paperCondition } from './en/paperCondition';
import { sculptures } from './en/sculptures';
import type { NameOfThing } from './en/sentence';
import { thenAndNow } from './en/thenAndNow';
import { date } from './format';

/** "Annual, 12 May 2026". */
export const roundName = ({ body }: Thing<'round'>): string =>
  `${roundTypes.find(({ id }) => id === body.type)?.name ?? body.type}, ${date(body.date)}`;

/** With the state the surface was in: what decides whether two rounds are alike. */
export const roundNameInFull = (round: Thing<'round'>): string =>
  `${roundName(round)} (${paperCondition.surfaceOf(paperCondition.wet[round.body.wet], paperCondition.washed[round.body.washed])})`;

/** "zone B, left arm". */
export const zoneName = ({ body }: Thing<'zone'>): string => thenAndNow.zoneNamed(body.letter, body.name);

/** What this screen calls the things of a record, for the sentences of reasons. */
export const thingNames = (
  record: SculptureRecord,
  people: readonly { readonly thing: string; readonly role: string }[],
): NameOfThing => {
  const names = new Map<string, string>([
    ...record.zones.map((zone) => [zone.thing, zoneName(zone)] as const),
    ...record.rounds.map((round) => [round.thing, thenAndNow.roundNamed(date(round.body.date))] as const),
    ...people.map(({ thing, role }) => [thing, role] as const),
  ]);
  return (thing) => names.get(thing);
};

interface Titled {
  readonly body: { readonly number: string; readonly title: string };
}

interface NumberedWork extends Titled {
  readonly thing: string;
}

/** "SW-02 Half-Tide Stair". */
export const workName = ({ body }: Titled): string => `${body.number} ${body.title}`.trim();

export interface WorkNamed {
  readonly thing: string;
  readonly name: string;
}

/** Works by number, as they are called in a list. */
export const worksNamed = (works: readonly NumberedWork[]): readonly WorkNamed[] =>
  works
    .map((work) => ({ thing: work.thing, name: workName(work) }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));

/** Zones to choose from, by letter and name. */
export const zoneOptions = (zones: readonly Thing<'zone'>[]) =>
  zones.map(({ thing, body }) => ({ value: thing, label: sculptures.zone.edit(body.letter, body.name) }));

/** Number and title of a work, letter and name of a zone, over the whole collection. */
export const namesOfWorks = (
  works: readonly NumberedWork[],
  zones: ReadonlyMap<string, Thing<'zone'>['body']>,
): NameOfThing => {
  const titles = new Map(works.map((work) => [work.thing, workName(work)]));
  return (thing) => {
    const zone = zones.get(thing);
    return zone ? thenAndNow.zoneNamed(zone.letter, zone.name) : titles.get(thing);
  };
};
