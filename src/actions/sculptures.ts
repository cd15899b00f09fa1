import { type BodyOf, nameOf } from '../engine/record';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must, refuse } from './outcome';
import { deedName, refusal } from './reasonCodes';
import { theThing } from './theThing';

export const addSculpture = (
  desk: Desk,
  body: BodyOf<'sculpture'>,
  around: Around = {},
): Promise<Outcome<{ readonly sculpture: string }>> =>
  attempt(async () => {
    const title = body.title.trim() || refuse(refusal('title missing', {}));
    const sculpture = nameOf.sculpture(desk.newId());
    const changes: Change[] = [{ thing: sculpture, kind: 'sculpture', within: sculpture, body: { ...body, title } }];
    if (around.place?.trim()) changes.push(placeSaid(sculpture, around.place.trim()));
    if (around.access?.trim()) changes.push(accessSaid(sculpture, around.access.trim()));
    must(await commitChanges(desk, deedName('deed: sculpture added', { title }), changes));
    return { sculpture };
  });

interface Around {
  readonly place?: string;
  readonly access?: string;
}

/** Fields left out stay; a field given as undefined is emptied. Place and access, where given, are part of the one deed. */
export const editSculpture = (
  desk: Desk,
  sculpture: string,
  patch: { readonly [F in keyof BodyOf<'sculpture'>]?: BodyOf<'sculpture'>[F] | undefined },
  { place, access }: Around = {},
): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'sculpture', sculpture);
    const title = String(patch.title ?? body.title).trim() || refuse(refusal('title missing', {}));
    return must(
      await commitChanges(desk, deedName('deed: sculpture edited', { title }), [
        { thing: sculpture, patch: { ...patch, title } },
        ...(place === undefined ? [] : [placeChange(sculpture, place)]),
        ...(access === undefined ? [] : [accessChange(sculpture, access)]),
      ]),
    );
  });

/** The work leaves the lists; everything recorded about it stays in the record, and Undo brings it back. */
export const removeSculpture = (desk: Desk, sculpture: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'sculpture', sculpture);
    return must(
      await commitChanges(desk, deedName('deed: sculpture removed', { title: body.title }), [
        { thing: sculpture, gone: true },
      ]),
    );
  });

/** Where the work stands. An empty text takes the place away. A thing of its own, so that it can stay at home in a carry. */
export const setPlace = (desk: Desk, sculpture: string, text: string): Promise<Outcome> =>
  commitChanges(desk, deedName('deed: place set', {}), [placeChange(sculpture, text)]);

/** Keys, codes, ladders. An empty text takes it away. */
export const setAccess = (desk: Desk, sculpture: string, text: string): Promise<Outcome> =>
  commitChanges(desk, deedName('deed: access set', {}), [accessChange(sculpture, text)]);

const placeChange = (sculpture: string, text: string): Change =>
  text.trim() ? placeSaid(sculpture, text.trim()) : { thing: nameOf.place(sculpture), gone: true };

const accessChange = (sculpture: string, text: string): Change =>
  text.trim() ? accessSaid(sculpture, text.trim()) : { thing: nameOf.access(sculpture), gone: true };

const placeSaid = (sculpture: string, text: string): Change => ({
  thing: nameOf.place(sculpture),
  kind: 'place',
  within: sculpture,
  body: { sculpture, text },
});

const accessSaid = (sculpture: string, text: string): Change => ({
  thing: nameOf.access(sculpture),
  kind: 'access',
  within: sculpture,
  body: { sculpture, text },
});
