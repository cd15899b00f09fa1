import { type BodyOf, nameOf } from '../engine/record';
import { calendarDay } from './calendarDay';
import { commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

/** Something that could hurt someone. It stands above every list until a named person closes it. */
export const openPersonCheck = (
  desk: Desk,
  sculpture: string,
  fields: { readonly what: string; readonly zone?: string; readonly finding?: string; readonly opened?: string },
): Promise<Outcome<{ readonly personCheck: string }>> =>
  attempt(async () => {
    const what = fields.what.trim() || refuse(refusal('text missing', {}));
    const personCheck = nameOf.personCheck(desk.newId());
    const opened = calendarDay(fields.opened ?? desk.today());
    const body: BodyOf<'personCheck'> = { ...fields, sculpture, what, opened };
    must(
      await commitChanges(desk, deedName('deed: person check opened', {}), [
        { thing: personCheck, kind: 'personCheck', within: sculpture, body },
      ]),
    );
    return { personCheck };
  });

export const closePersonCheck = (
  desk: Desk,
  personCheck: string,
  closed: { readonly by: string; readonly on?: string; readonly note?: string | undefined },
): Promise<Outcome> =>
  attempt(async () => {
    const by = closed.by.trim() || refuse(refusal('name missing', {}));
    const { body } = await theThing(desk, 'personCheck', personCheck);
    if (body.closed) refuse(refusal('already closed', {}));
    const on = calendarDay(closed.on ?? desk.today());
    const note = closed.note?.trim();
    return must(
      await commitChanges(desk, deedName('deed: person check closed', { by }), [
        { thing: personCheck, patch: { closed: { on, by, ...(note ? { note } : {}) } } },
      ]),
    );
  });
