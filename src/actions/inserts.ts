import { type BodyOf, nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

type InsertFields = Omit<BodyOf<'insert'>, 'sculpture'> & Pick<BodyOf<'insert'>, 'material' | 'count' | 'removable'>;

export const addInsert = (
  desk: Desk,
  sculpture: string,
  fields: InsertFields,
): Promise<Outcome<{ readonly insert: string }>> =>
  attempt(async () => {
    const material = fields.material.trim() || refuse(refusal('text missing', {}));
    if (!Number.isInteger(fields.count) || fields.count < 1) refuse(refusal('count not valid', {}));
    const insert = nameOf.insert(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: insert added', { material }), [
        { thing: insert, kind: 'insert', within: sculpture, body: { ...fields, sculpture, material } },
      ]),
    );
    return { insert };
  });

export const editInsert = (desk: Desk, insert: string, patch: Readonly<Partial<InsertFields>>): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'insert', insert);
    return must(
      await commitChanges(
        desk,
        deedName('deed: insert edited', { material: String(patch.material ?? body.material) }),
        [{ thing: insert, patch }],
      ),
    );
  });

export const removeInsert = (desk: Desk, insert: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'insert', insert);
    return must(
      await commitChanges(desk, deedName('deed: insert removed', { material: body.material }), [
        { thing: insert, gone: true },
        { thing: nameOf.insertValue(insert), gone: true },
      ]),
    );
  });

/** What an insert is worth, in minor units; null takes the value away. A thing of its own, so that it can stay at home. */
export const setInsertValue = (
  desk: Desk,
  insert: string,
  value: { readonly minor: number; readonly currency: string } | null,
): Promise<Outcome> =>
  attempt(async () => {
    const thing = nameOf.insertValue(insert);
    const { body } = await theThing(desk, 'insert', insert);
    if (value && (!Number.isSafeInteger(value.minor) || value.minor < 0 || !/^[A-Z]{3}$/.test(value.currency)))
      refuse(refusal('value not valid', {}));
    return must(
      await commitChanges(desk, deedName('deed: insert value set', {}), [
        value
          ? { thing, kind: 'insertValue', within: body.sculpture, body: { insert, value: { ...value } } }
          : { thing, gone: true },
      ]),
    );
  });
