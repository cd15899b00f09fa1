import { type BodyOf, nameOf, type Thing } from '../engine/record';
import { calendarDay } from './calendarDay';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing, thingsWithin } from './theThing';
import { nextLetter } from './zoneLetters';

type ZoneBody = BodyOf<'zone'>;
export type Area = ZoneBody['versions'][number]['area'];

/** A zone as a person describes it. Letter and place in the walking order are given when left out. */
export interface ZoneFields {
  readonly name: string;
  readonly area: Area;
  readonly substrate: string;
  readonly exposure: readonly string[];
  readonly reach: string;
  /** 0.5 to 2; 1 when left out. */
  readonly significance?: number;
  readonly letter?: string;
  readonly note?: string;
  /** From which day it is surveyed so; today when left out. */
  readonly since?: string;
}

export const addZone = (
  desk: Desk,
  sculpture: string,
  fields: ZoneFields,
): Promise<Outcome<{ readonly zone: string; readonly letter: string }>> =>
  attempt(async () => {
    const zones = await thingsWithin(desk, 'zone', sculpture);
    await theThing(desk, 'sculpture', sculpture);
    const zone = nameOf.zone(desk.newId());
    const letter = freeLetter(zones, fields.letter);
    const order = Math.max(0, ...zones.map((z) => z.body.order)) + 1;
    const body = newZone(sculpture, { ...fields, since: fields.since ?? desk.today() }, letter, Math.floor(order));
    must(
      await commitChanges(desk, deedName('deed: zone added', { letter, name: body.name }), [
        { thing: zone, kind: 'zone', within: sculpture, body },
      ]),
    );
    return { zone, letter };
  });

/** The letter asked for, if no living zone has it; else the next nobody has had. */
export const freeLetter = (zones: readonly Thing<'zone'>[], wanted: string | undefined): string => {
  const asked = wanted?.trim();
  if (!asked) return nextLetter(new Set(zones.map((z) => z.body.letter)));
  if (zones.some((z) => z.body.letter === asked && !z.body.split && !z.body.joined))
    refuse(refusal('letter taken', { letter: asked }));
  return asked.slice(0, 4);
};

export const newZone = (
  sculpture: string,
  fields: ZoneFields & { readonly since: string },
  letter: string,
  order: number,
): ZoneBody => ({
  sculpture,
  letter,
  name: fields.name.trim() || refuse(refusal('name missing', {})),
  order,
  exposure: [...fields.exposure],
  reach: fields.reach,
  significance: fields.significance ?? 1,
  versions: [{ n: 1, since: calendarDay(fields.since), substrate: fields.substrate, area: soundArea(fields.area) }],
  ...(fields.note?.trim() ? { note: fields.note } : {}),
});

/** Above zero, and inside its own range. */
export const soundArea = (area: Area): Area => {
  const { low, m2, high } = area;
  const sound =
    Number.isFinite(m2) && Number.isFinite(high) && m2 > 0 && low >= 0 && low <= m2 && m2 <= high && m2 <= 1e5;
  return sound ? area : refuse(refusal('area not valid', {}));
};
