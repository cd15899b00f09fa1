import { nameOf, type Thing } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { keptPhoto } from '../keepPhoto';
import { attempt, must } from '../outcome';
import { roundDeed } from '../round';
import { theThing } from '../theThing';

type LookBody = Thing<'look'>['body'];

export type LookSaid = Pick<LookBody, 'zone' | 'result' | 'planned'> & { readonly wet: NonNullable<LookBody['wet']> };

const expected = 'photo expected for a look';

/** One zone looked at today between rounds: kept with the touch that says it. */
export const recordLook = (
  desk: Desk,
  sculpture: string,
  said: LookSaid,
): Promise<Outcome<{ readonly look: string }>> =>
  attempt(async () => {
    const zone = await theThing(desk, 'zone', said.zone);
    const look = nameOf.look(desk.newId());
    const body: LookBody = { sculpture, ...said, date: desk.today() };
    const name = roundDeed('deed: looked', { letter: zone.body.letter, result: said.result });
    must(await commitChanges(desk, name, [{ thing: look, kind: 'look', within: sculpture, body }]));
    return { look };
  });

/** All these zones of a work seen clear today: a look each, one deed, one undo. */
export const recordAllClear = (
  desk: Desk,
  sculpture: string,
  zones: readonly string[],
  said: Pick<LookSaid, 'planned' | 'wet'>,
): Promise<Outcome> =>
  attempt(async () => {
    const date = desk.today();
    const looks = zones.map((zone) => {
      const body: LookBody = { sculpture, zone, result: 'clear', ...said, date };
      return { thing: nameOf.look(desk.newId()), kind: 'look' as const, within: sculpture, body };
    });
    must(await commitChanges(desk, roundDeed('deed: looked, all clear', { count: zones.length }), looks));
    return {};
  });

/** Notes that the camera is being opened for a look: the browser may be closed behind it. */
export const expectLookPhoto = (desk: Desk, look: string): Promise<void> => desk.store.setMeta(expected, look);

/** No photo came, and none is wanted. */
export const noLookPhoto = (desk: Desk): Promise<void> => desk.store.setMeta(expected, '');

/** The look a photo was expected for and has not come, after a restart too. */
export const lookPhotoExpected = async (desk: Desk): Promise<string | undefined> =>
  (await desk.store.meta<string>(expected)) || undefined;

/** Keeps a photo and adds it to a look. */
export const photoForLook = (desk: Desk, look: string, file: File): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'look', look);
    const zone = await theThing(desk, 'zone', body.zone);
    const { photo, changes } = await keptPhoto(desk, body.sculpture, file, 'look');
    const name = roundDeed('deed: photo added to a look', { letter: zone.body.letter });
    const added = { thing: look, patch: { photos: [...(body.photos ?? []), photo] } };
    // One transaction with the note: what is told as not kept was not kept.
    const notes = { key: expected, value: '' };
    const { deed } = must(await commitChanges(desk, name, [...changes, added], { notes }));
    if (deed === '') await noLookPhoto(desk);
    return {};
  });
