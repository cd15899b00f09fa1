import { treatmentAgainst } from '../engine/care';
import { type BodyOf, nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

type Body = BodyOf<'treatment'>;

/** What was done: zones (none named: the whole work), what, and when as far as it is known; all else as the record has it. */
export type TreatmentFields = Pick<Body, 'type' | 'date'> & { readonly zones: readonly string[] } & {
  readonly [F in Exclude<keyof Body & KnownField, 'sculpture' | 'zones' | 'type' | 'date'>]?: Body[F] | undefined;
};

/** Fields the schema names; bodies are open for those of later versions. */
type KnownField =
  | 'product'
  | 'coats'
  | 'by'
  | 'note'
  | 'source'
  | 'batch'
  | 'stock'
  | 'used'
  | 'people'
  | 'weather'
  | 'ended'
  | 'cost'
  | 'campaign'
  | 'takenAway'
  | 'left'
  | 'photosBefore'
  | 'photosAfter';

export const recordTreatment = (
  desk: Desk,
  sculpture: string,
  fields: TreatmentFields,
): Promise<Outcome<{ readonly treatment: string }>> =>
  attempt(async () => {
    if (!fields.date.trim()) refuse(refusal('day not valid', { day: fields.date }));
    const treatment = nameOf.treatment(desk.newId());
    const body = { ...fields, sculpture, zones: [...fields.zones] } as Body;
    check(body);
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
    check({ ...body, ...patch } as Body);
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

const check = (body: Body): void => {
  const against = treatmentAgainst(body);
  if (against) refuse(against);
};
