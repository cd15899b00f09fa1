import { type BodyOf, nameOf } from '../../engine/record';
import { calendarDay } from '../calendarDay';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { soundAperture, soundColour } from './soundColour';

type Body = BodyOf<'reading'>;

/** A reading as a person copies it from the instrument; a field given as undefined is emptied. */
export type ReadingFields = Pick<Body, 'date' | 'values' | 'illuminant' | 'observer' | 'geometry'> & {
  readonly [K in 'zone' | 'sentinel' | 'aperture' | 'instrument' | 'calibration' | 'position' | 'surface' | 'note']?:
    | Body[K]
    | undefined;
};

/** Refuses what no instrument says and places that are not of this work; the fields else, as they are. */
const sound = async <F extends Partial<ReadingFields>>(desk: Desk, sculpture: string, fields: F): Promise<F> => {
  if (fields.date !== undefined) calendarDay(fields.date);
  if (fields.values?.length === 0) refuse(refusal('colour missing', {}));
  for (const value of fields.values ?? []) soundColour(value);
  soundAperture(fields.aperture);
  for (const kind of ['zone', 'sentinel'] as const) {
    const place = fields[kind];
    if (place && (await theThing(desk, kind, place)).body.sculpture !== sculpture)
      refuse(refusal('not here', { thing: place }));
  }
  return fields;
};

/** Keeps what an instrument read. Nothing else gives a reading: no photo, no eye. */
export const addReading = (
  desk: Desk,
  sculpture: string,
  fields: ReadingFields,
): Promise<Outcome<{ readonly reading: string }>> =>
  attempt(async () => {
    await theThing(desk, 'sculpture', sculpture);
    const body = { ...(await sound(desk, sculpture, fields)), sculpture, quantity: 'colour' } as Body;
    const reading = nameOf.reading(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: reading added', { day: fields.date }), [
        { thing: reading, kind: 'reading', within: sculpture, body },
      ]),
    );
    return { reading };
  });

export const editReading = (desk: Desk, reading: string, patch: Readonly<Partial<ReadingFields>>): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'reading', reading);
    await sound(desk, body.sculpture, patch);
    return must(
      await commitChanges(desk, deedName('deed: reading edited', { day: patch.date ?? body.date }), [
        { thing: reading, patch },
      ]),
    );
  });

export const removeReading = (desk: Desk, reading: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'reading', reading);
    return must(
      await commitChanges(desk, deedName('deed: reading removed', { day: body.date }), [
        { thing: reading, gone: true },
      ]),
    );
  });
