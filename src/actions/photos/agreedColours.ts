import { type BodyOf, nameOf } from '../../engine/record';
import { calendarDay } from '../calendarDay';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';
import { soundAperture, soundColour } from './soundColour';

type Body = BodyOf<'agreedColour'>;

/** A colour as it was agreed: what it is called, by whom, and its figures; a field given as undefined is emptied. */
export type AgreedColourFields = Pick<
  Body,
  'name' | 'date' | 'by' | 'value' | 'illuminant' | 'observer' | 'geometry'
> & { readonly [K in 'zone' | 'aperture' | 'kept' | 'note']?: Body[K] | undefined };

const sound = async <F extends Partial<AgreedColourFields>>(desk: Desk, sculpture: string, fields: F): Promise<F> => {
  if (fields.name !== undefined && !fields.name.trim()) refuse(refusal('name missing', {}));
  if (fields.by !== undefined && !fields.by.trim()) refuse(refusal('agreed by missing', {}));
  if (fields.date !== undefined) calendarDay(fields.date);
  if (fields.value) soundColour(fields.value);
  soundAperture(fields.aperture);
  if (fields.zone && (await theThing(desk, 'zone', fields.zone)).body.sculpture !== sculpture)
    refuse(refusal('not here', { thing: fields.zone }));
  return fields;
};

/** Writes down a colour that was agreed, for one zone or the whole work. Later readings are held against it. */
export const setAgreedColour = (
  desk: Desk,
  sculpture: string,
  fields: AgreedColourFields,
): Promise<Outcome<{ readonly agreedColour: string }>> =>
  attempt(async () => {
    await theThing(desk, 'sculpture', sculpture);
    const body = { ...(await sound(desk, sculpture, fields)), sculpture } as Body;
    const agreedColour = nameOf.agreedColour(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: colour agreed', { name: fields.name }), [
        { thing: agreedColour, kind: 'agreedColour', within: sculpture, body },
      ]),
    );
    return { agreedColour };
  });

export const editAgreedColour = (
  desk: Desk,
  agreedColour: string,
  patch: Readonly<Partial<AgreedColourFields>>,
): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'agreedColour', agreedColour);
    await sound(desk, body.sculpture, patch);
    return must(
      await commitChanges(desk, deedName('deed: agreed colour edited', { name: patch.name ?? body.name }), [
        { thing: agreedColour, patch },
      ]),
    );
  });

export const removeAgreedColour = (desk: Desk, agreedColour: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'agreedColour', agreedColour);
    return must(
      await commitChanges(desk, deedName('deed: agreed colour removed', { name: body.name }), [
        { thing: agreedColour, gone: true },
      ]),
    );
  });
