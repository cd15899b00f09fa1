import type { SculptureRecord, Thing } from '../../engine/record';
import { roundTypes } from '../../engine/trade';
import { date, type NameOfThing, w } from '../../words';

/** "Annual, 12 May 2026". */
export const roundName = ({ body }: Thing<'round'>): string =>
  `${roundTypes.find(({ id }) => id === body.type)?.name ?? body.type}, ${date(body.date)}`;

/** With the state the surface was in: what decides whether two rounds are alike. */
export const roundNameInFull = (round: Thing<'round'>): string =>
  `${roundName(round)} (${round.body.wet}, ${round.body.washed})`;

/** "zone B, left arm". */
export const zoneName = ({ body }: Thing<'zone'>): string => w.thenAndNow.zoneNamed(body.letter, body.name);

/** What this screen calls the things of a record, for the sentences of reasons. */
export const thingNames = (
  record: SculptureRecord,
  people: readonly { readonly thing: string; readonly role: string }[],
): NameOfThing => {
  const names = new Map<string, string>([
    ...record.zones.map((zone) => [zone.thing, zoneName(zone)] as const),
    ...record.rounds.map((round) => [round.thing, w.thenAndNow.roundNamed(date(round.body.date))] as const),
    ...people.map(({ thing, role }) => [thing, role] as const),
  ]);
  return (thing) => names.get(thing);
};

/** Number and title of a work, letter and name of a zone, over the whole collection. */
export const namesOfWorks = (
  works: readonly { readonly thing: string; readonly body: { readonly number: string; readonly title: string } }[],
  zones: ReadonlyMap<string, Thing<'zone'>['body']>,
): NameOfThing => {
  const titles = new Map(works.map(({ thing, body }) => [thing, `${body.number} ${body.title}`.trim()]));
  return (thing) => {
    const zone = zones.get(thing);
    return zone ? w.thenAndNow.zoneNamed(zone.letter, zone.name) : titles.get(thing);
  };
};
