import { nameOf } from '../engine/record';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { setSetting } from './settings';

/** The collection's name and, in the same deed, the first surveyor, who is then the one at work. */
export const setUpCollection = (
  desk: Desk,
  fields: { readonly name: string; readonly role: string; readonly personName?: string },
): Promise<Outcome<{ readonly surveyor: string }>> =>
  attempt(async () => {
    const name = fields.name.trim() || refuse(refusal('name missing', {}));
    const role = fields.role.trim() || refuse(refusal('role missing', {}));
    const surveyor = nameOf.surveyor(desk.newId());
    const person = fields.personName?.trim();
    const within = desk.collection;
    must(
      await commitChanges(desk, deedName('deed: collection set up', { name }), [
        { thing: within, kind: 'collection', within, body: { name } },
        { thing: surveyor, kind: 'surveyor', within, body: { role } },
        ...(person
          ? [{ thing: nameOf.personName(surveyor), kind: 'name' as const, within, body: { surveyor, name: person } }]
          : []),
      ]),
    );
    setSetting('surveyor', surveyor);
    return { surveyor };
  });

export const renameCollection = (desk: Desk, to: string): Promise<Outcome> =>
  attempt(async () => {
    const name = to.trim() || refuse(refusal('name missing', {}));
    return must(
      await commitChanges(desk, deedName('deed: collection renamed', { name }), [
        { thing: desk.collection, patch: { name } },
      ]),
    );
  });
