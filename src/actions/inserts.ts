import { type BodyOf, nameOf } from '../engine/record';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

type InsertFields = Omit<BodyOf<'insert'>, 'sculpture'> & Pick<BodyOf<'insert'>, 'material' | 'count' | 'removable'>;

/** What an insert is worth, in minor units; null takes the value away, undefined leaves it as it is. */
type Value = BodyOf<'insertValue'>['value'] | null | undefined;

/** The value is a thing of its own, so that it can stay at home in a carry, and part of the one deed. */
export const addInsert = (
  desk: Desk,
  sculpture: string,
  fields: InsertFields,
  value?: Value,
): Promise<Outcome<{ readonly insert: string }>> =>
  attempt(async () => {
    const material = fields.material.trim() || refuse(refusal('text missing', {}));
    if (!Number.isInteger(fields.count) || fields.count < 1) refuse(refusal('count not valid', {}));
    const insert = nameOf.insert(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: insert added', { material }), [
        { thing: insert, kind: 'insert', within: sculpture, body: { ...fields, sculpture, material } },
        ...valueChange(insert, sculpture, value),
      ]),
    );
    return { insert };
  });

export const editInsert = (
  desk: Desk,
  insert: string,
  patch: Readonly<Partial<InsertFields>>,
  value?: Value,
): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'insert', insert);
    return must(
      await commitChanges(
        desk,
        deedName('deed: insert edited', { material: String(patch.material ?? body.material) }),
        [{ thing: insert, patch }, ...valueChange(insert, body.sculpture, value)],
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

const valueChange = (insert: string, sculpture: string, value: Value): Change[] => {
  if (value === undefined) return [];
  const thing = nameOf.insertValue(insert);
  if (value === null) return [{ thing, gone: true }];
  if (!Number.isSafeInteger(value.minor) || value.minor < 0 || !/^[A-Z]{3}$/.test(value.currency))
    refuse(refusal('value not valid', {}));
  return [{ thing, kind: 'insertValue', within: sculpture, body: { insert, value: { ...value } } }];
};
