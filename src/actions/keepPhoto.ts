import { readPhoto } from '../device/photo';
import { type BodyOf, nameOf, type Reason } from '../engine/record';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must } from './outcome';
import { deedName } from './reasonCodes';
import { settings } from './settings';

export type PhotoRole = BodyOf<'photo'>['role'];

/** What a person or a shot list knows of a photo and the picture itself does not. */
export type PhotoFacts = Partial<
  Pick<BodyOf<'photo'>, 'station' | 'sentinel' | 'zone' | 'round' | 'light' | 'wet' | 'washed' | 'note' | 'taken'>
>;

/** What is known, or what can be said once the camera has told when it was taken. */
export type PhotoKnown = PhotoFacts | ((taken: string | undefined) => PhotoFacts);

/**
 * Keeps a photo under the hash of its bytes and reads it back before it says so. `notes` tell what a person should know:
 * the place was blanked out of it, or this browser cannot show it.
 */
export const keepPhoto = (
  desk: Desk,
  sculpture: string,
  file: Blob,
  role: PhotoRole,
  known: PhotoKnown = {},
): Promise<Outcome<{ readonly photo: string; readonly notes: readonly Reason[] }>> =>
  attempt(async () => {
    const kept = await keptPhoto(desk, sculpture, file, role, known);
    must(await commitChanges(desk, deedName('deed: photo kept', {}), kept.changes));
    return { photo: kept.photo, notes: kept.notes };
  });

/**
 * The bytes kept, and the change that says so, for a deed of which the photo is a part. The same bytes once more are the
 * same photo: what is newly known of it is said of the one that is here.
 */
export const keptPhoto = async (
  desk: Desk,
  sculpture: string,
  file: Blob,
  role: PhotoRole,
  known: PhotoKnown = {},
): Promise<{ photo: string; changes: Change[]; notes: readonly Reason[] }> => {
  const { photo, thumb, facts, notes } = await readPhoto(file, { keepPlace: settings.get().keepPlace });
  await desk.store.keepPhoto(photo);
  if (thumb) await desk.store.keepThumb(thumb);
  const thing = nameOf.photo(photo.sha256);
  const before = await desk.store.current(thing);
  const said = typeof known === 'function' ? known(facts.taken) : known;
  if (before && !before.gone) return { photo: thing, changes: again(thing, role, said), notes };
  const { sha256, mime, bytes } = photo;
  const body = { sculpture, sha256, mime, bytes: bytes.byteLength, role, ...said, ...facts };
  return { photo: thing, changes: [{ thing, kind: 'photo', within: sculpture, body }], notes };
};

const again = (thing: string, role: PhotoRole, { taken: _, ...known }: PhotoFacts): Change[] =>
  Object.keys(known).length > 0 ? [{ thing, patch: { ...known, ...(role === 'other' ? {} : { role }) } }] : [];
