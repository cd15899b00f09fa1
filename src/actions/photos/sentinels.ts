import { type BodyOf, nameOf } from '../../engine/record';
import { calendarDay } from '../calendarDay';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';

/** A sentinel square as a person describes it; `since` is today when left out. */
export type SentinelFields = Pick<BodyOf<'sentinel'>, 'zone' | 'which' | 'find'> & {
  readonly since?: string;
  readonly note?: string | undefined;
};

export const addSentinel = (
  desk: Desk,
  sculpture: string,
  fields: SentinelFields,
): Promise<Outcome<{ readonly sentinel: string }>> =>
  attempt(async () => {
    const zone = await theThing(desk, 'zone', fields.zone);
    if (zone.body.sculpture !== sculpture) refuse(refusal('not here', { thing: fields.zone }));
    const find = fields.find.trim() || refuse(refusal('find missing', {}));
    const since = calendarDay(fields.since ?? desk.today());
    const sentinel = nameOf.sentinel(desk.newId());
    must(
      await commitChanges(desk, deedName('deed: square added', { which: fields.which, letter: zone.body.letter }), [
        { thing: sentinel, kind: 'sentinel', within: sculpture, body: { ...fields, sculpture, find, since } },
      ]),
    );
    return { sentinel };
  });

/** Only how it is found and the note: a square in another place is another square, and a series of its own. */
export const editSentinel = (
  desk: Desk,
  sentinel: string,
  patch: Partial<Pick<SentinelFields, 'find' | 'note' | 'since'>>,
): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'sentinel', sentinel);
    const find = (patch.find ?? body.find).trim() || refuse(refusal('find missing', {}));
    const since = calendarDay(patch.since ?? body.since);
    const zone = await theThing(desk, 'zone', body.zone);
    return must(
      await commitChanges(desk, deedName('deed: square edited', { which: body.which, letter: zone.body.letter }), [
        { thing: sentinel, patch: { ...patch, find, since } },
      ]),
    );
  });

/** The square leaves the lists; its photos stay, and Undo brings it back. */
export const removeSentinel = (desk: Desk, sentinel: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'sentinel', sentinel);
    const zone = await desk.store.current(body.zone);
    const letter = String(zone?.lead.body.letter ?? '');
    return must(
      await commitChanges(desk, deedName('deed: square removed', { which: body.which, letter }), [
        { thing: sentinel, gone: true },
      ]),
    );
  });
