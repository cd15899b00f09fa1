import type { BodyOf } from '../../engine/record';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import type { PhotoFacts, PhotoRole } from '../keepPhoto';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { theThing } from '../theThing';

/** A field given as undefined is emptied; one not given stays. */
export type PhotoSorting = { readonly [K in Exclude<keyof PhotoFacts, 'taken'>]?: PhotoFacts[K] | undefined } & {
  readonly role?: PhotoRole;
};

/** Puts a photo where it belongs: its station, square, zone and round, and what the light and the surface were. */
export const sortPhoto = (desk: Desk, photo: string, sorting: PhotoSorting): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'photo', photo);
    for (const kind of ['station', 'sentinel', 'zone', 'round'] as const) {
      const thing = sorting[kind];
      if (thing === undefined) continue;
      const there = await theThing(desk, kind, thing);
      if (there.body.sculpture !== body.sculpture) refuse(refusal('not here', { thing }));
    }
    const role = sorting.role ?? roleOf({ ...body, ...sorting });
    return must(
      await commitChanges(desk, deedName('deed: photo sorted', {}), [{ thing: photo, patch: { ...sorting, role } }]),
    );
  });

/** A photo of a finding, a look or a side stays one, wherever else it belongs. */
const roleOf = ({
  role,
  station,
  sentinel,
  zone,
}: Pick<PhotoSorting, 'station' | 'sentinel' | 'zone'> & BodyOf<'photo'>) => {
  if (!['station', 'sentinel', 'zone', 'other'].includes(role)) return role;
  if (station) return 'station';
  if (sentinel) return 'sentinel';
  return zone ? 'zone' : 'other';
};

/** Takes a photo out of the record. Refused where something rests on it; its bytes stay until space is freed. */
export const removePhoto = (desk: Desk, photo: string): Promise<Outcome> =>
  attempt(async () => {
    const { body } = await theThing(desk, 'photo', photo);
    const within = await desk.store.within(body.sculpture);
    const resting = within.filter(
      (other) => !other.gone && other.thing !== photo && JSON.stringify(other.lead.body).includes(photo),
    );
    if (resting.length > 0) refuse(refusal('photo in use', { count: resting.length }));
    return must(await commitChanges(desk, deedName('deed: photo removed', {}), [{ thing: photo, gone: true }]));
  });
