import { type BodyOf, nameOf, type Thing } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { keptPhoto } from '../keepPhoto';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing, thingsWithin } from '../theThing';
import { nextLetter } from '../zoneLetters';

type Body = BodyOf<'station'>;

/**
 * A station as a person describes it; a field given as undefined is emptied. Metres, millimetres of a 36 x 24 mm frame,
 * degrees from north. The letter is given when left out.
 */
export type StationFields = { readonly aim: string; readonly letter?: string } & {
  readonly [K in 'bearing' | 'distance' | 'height' | 'lens' | 'format' | 'mark' | 'light' | 'wet' | 'note']?:
    | Body[K]
    | undefined;
};

/** What can be at all; further off, a station would show no work of sculpture. */
const possible = { bearing: [0, 360], distance: [0.1, 1000], height: [0, 100], lens: [1, 5000] } as const;

const soundFields = <F extends Partial<StationFields>>(fields: F): F => {
  for (const what of Object.keys(possible) as (keyof typeof possible)[]) {
    const value = fields[what];
    const [low, high] = possible[what];
    if (value !== undefined && !(value >= low && value <= high))
      refuse(refusal('station not possible', { what, low, high }));
  }
  return fields;
};

const aimOf = (aim: string): string => aim.trim() || refuse(refusal('aim missing', {}));

export const addStation = (
  desk: Desk,
  sculpture: string,
  fields: StationFields,
): Promise<Outcome<{ readonly station: string; readonly letter: string }>> =>
  attempt(async () => {
    const [added] = must(await addStations(desk, sculpture, [fields])).stations;
    return added ?? refuse(refusal('aim missing', {}));
  });

/** Several in one deed, lettered and walked in the order given. */
export const addStations = (
  desk: Desk,
  sculpture: string,
  rows: readonly StationFields[],
): Promise<Outcome<{ readonly stations: readonly { readonly station: string; readonly letter: string }[] }>> =>
  attempt(async () => {
    await theThing(desk, 'sculpture', sculpture);
    const here = await thingsWithin(desk, 'station', sculpture);
    const taken = await lettersSpent(desk, sculpture, here);
    const last = Math.max(0, ...here.map(({ body }) => body.order));
    const made = rows.map(({ letter: wanted, ...fields }, i) => {
      const letter = wanted?.trim() ? freeLetter(wanted, taken) : nextLetter(taken);
      taken.add(letter);
      const body = { ...soundFields(fields), sculpture, letter, aim: aimOf(fields.aim), order: last + 1 + i };
      return { thing: nameOf.station(desk.newId()), kind: 'station' as const, within: sculpture, body };
    });
    const letters = made.map(({ body }) => body.letter).join(', ');
    must(await commitChanges(desk, deedName('deed: station added', { letter: letters }), made));
    return { stations: made.map(({ thing, body }) => ({ station: thing, letter: body.letter })) };
  });

/** The letters in use, and those of stations that were taken away and left photos: a card in such a photo must not name another spot. */
const lettersSpent = async (desk: Desk, sculpture: string, here: readonly Thing<'station'>[]): Promise<Set<string>> => {
  const photographed = new Set((await thingsWithin(desk, 'photo', sculpture)).map(({ body }) => body.station ?? ''));
  const left = await desk.store.currents([...photographed]);
  return new Set([...here, ...left].map((station) => String(station?.lead.body.letter ?? '')));
};

const freeLetter = (wanted: string, taken: ReadonlySet<string>): string => {
  const letter = wanted.trim().toUpperCase().slice(0, 4);
  return taken.has(letter) ? refuse(refusal('station letter taken', { letter })) : letter;
};

export const editStation = (desk: Desk, station: string, patch: Partial<StationFields>): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'station', station);
    const { letter: wanted, ...fields } = patch;
    const aim = aimOf(patch.aim ?? body.aim);
    const asked = wanted?.trim().toUpperCase() || body.letter;
    const here = await thingsWithin(desk, 'station', body.sculpture);
    const letter = asked === body.letter ? asked : freeLetter(asked, await lettersSpent(desk, body.sculpture, here));
    return must(
      await commitChanges(desk, deedName('deed: station edited', { letter }), [
        { thing: station, patch: { ...soundFields(fields), letter, aim } },
      ]),
    );
  });

/** The station leaves the lists; its photos stay, and Undo brings it back. */
export const removeStation = (desk: Desk, station: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'station', station);
    return must(
      await commitChanges(desk, deedName('deed: station removed', { letter: body.letter }), [
        { thing: station, gone: true },
      ]),
    );
  });

/** The stations in the order they are walked to; each is named once. */
export const orderStations = (desk: Desk, sculpture: string, order: readonly string[]): Promise<Outcome> =>
  attempt(async () => {
    const here: readonly Thing<'station'>[] = await thingsWithin(desk, 'station', sculpture);
    const named = new Set(order);
    if (named.size !== order.length || here.length !== order.length || !here.every(({ thing }) => named.has(thing)))
      refuse(refusal('order incomplete', {}));
    return must(
      await commitChanges(
        desk,
        deedName('deed: stations ordered', {}),
        order.map((thing, i) => ({ thing, patch: { order: i + 1 } })),
      ),
    );
  });

/** A photo of the spot itself, that shows where to stand. It is none of the photos taken from the station. */
export const setStandHere = (desk: Desk, station: string, file: Blob): Promise<Outcome<{ readonly photo: string }>> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'station', station);
    const kept = await keptPhoto(desk, body.sculpture, file, 'other');
    must(
      await commitChanges(desk, deedName('deed: station edited', { letter: body.letter }), [
        ...kept.changes,
        { thing: station, patch: { standHere: kept.photo } },
      ]),
    );
    return { photo: kept.photo };
  });
