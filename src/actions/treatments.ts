import { type BodyOf, nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

/** What was done: zones (none named: the whole work), what, and when as far as it is known. */
export interface TreatmentFields {
  readonly zones: readonly string[];
  readonly type: string;
  readonly date: string;
  readonly product?: string | undefined;
  readonly coats?: number | undefined;
  readonly by?: string | undefined;
  readonly note?: string | undefined;
}

export const recordTreatment = (
  desk: Desk,
  sculpture: string,
  fields: TreatmentFields,
): Promise<Outcome<{ readonly treatment: string }>> =>
  attempt(async () => {
    if (!fields.date.trim()) refuse(refusal('day not valid', { day: fields.date }));
    const treatment = nameOf.treatment(desk.newId());
    const body = { ...fields, sculpture, zones: [...fields.zones] } as BodyOf<'treatment'>;
    must(
      await commitChanges(desk, deedName('deed: treatment recorded', { type: fields.type }), [
        { thing: treatment, kind: 'treatment', within: sculpture, body },
      ]),
    );
    return { treatment };
  });

export const editTreatment = (desk: Desk, treatment: string, patch: Partial<TreatmentFields>): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'treatment', treatment);
    return must(
      await commitChanges(desk, deedName('deed: treatment edited', { type: patch.type ?? body.type }), [
        { thing: treatment, patch: { ...patch } },
      ]),
    );
  });

export const removeTreatment = (desk: Desk, treatment: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'treatment', treatment);
    return must(
      await commitChanges(desk, deedName('deed: treatment removed', { type: body.type }), [
        { thing: treatment, gone: true },
      ]),
    );
  });
