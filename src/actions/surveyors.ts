import { nameOf } from '../engine/record';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { setSetting } from './settings';

/** A person who surveys: a pseudonym with a role; the name stands apart and may stay at home. */
export const addSurveyor = (
  desk: Desk,
  fields: { readonly role: string; readonly name?: string },
): Promise<Outcome<{ readonly surveyor: string }>> =>
  attempt(async () => {
    const role = fields.role.trim() || refuse(refusal('role missing', {}));
    const surveyor = nameOf.surveyor(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: surveyor added', { role }), [
        { thing: surveyor, kind: 'surveyor', within: desk.collection, body: { role } },
        ...personName(desk, surveyor, fields.name),
      ]),
    );
    return { surveyor };
  });

/** A name left empty is taken away; a name left out stays. */
export const editSurveyor = (
  desk: Desk,
  surveyor: string,
  fields: { readonly role: string; readonly name?: string },
): Promise<Outcome> =>
  attempt(async () => {
    const role = fields.role.trim() || refuse(refusal('role missing', {}));
    return must(
      await commitChanges(desk, deedName('deed: surveyor edited', { role }), [
        { thing: surveyor, patch: { role } },
        ...(fields.name === undefined
          ? []
          : fields.name.trim()
            ? personName(desk, surveyor, fields.name)
            : [{ thing: nameOf.personName(surveyor), gone: true as const }]),
      ]),
    );
  });

/** Who is at work on this device from now on. A setting of the device, not in the record. */
export const setSurveyor = (surveyor: string): void => setSetting('surveyor', surveyor);

const personName = (desk: Desk, surveyor: string, name: string | undefined): Change[] => {
  const trimmed = name?.trim();
  if (!trimmed) return [];
  return [
    { thing: nameOf.personName(surveyor), kind: 'name', within: desk.collection, body: { surveyor, name: trimmed } },
  ];
};
