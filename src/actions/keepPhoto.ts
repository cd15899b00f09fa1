import { readPhoto } from '../device/photo';
import { type BodyOf, nameOf, type Reason } from '../engine/record';
import { type Change, commitChanges } from './commitChanges';
import type { Desk, Outcome } from './desk';
import { attempt, must } from './outcome';
import { deedName } from './reasonCodes';

export type PhotoRole = BodyOf<'photo'>['role'];

/**
 * Keeps a photo under the hash of its bytes and reads it back before it says so. `notes` tell what a person should know:
 * the place was blanked out of it, or this browser cannot show it.
 */
export const keepPhoto = (
  desk: Desk,
  sculpture: string,
  file: Blob,
  role: PhotoRole,
): Promise<Outcome<{ readonly photo: string; readonly notes: readonly Reason[] }>> =>
  attempt(async () => {
    const kept = await keptPhoto(desk, sculpture, file, role);
    must(await commitChanges(desk, deedName('deed: photo kept', {}), kept.changes));
    return { photo: kept.photo, notes: kept.notes };
  });

/** The bytes kept, and the change that says so, for a deed of which the photo is a part. */
export const keptPhoto = async (
  desk: Desk,
  sculpture: string,
  file: Blob,
  role: PhotoRole,
): Promise<{ photo: string; changes: Change[]; notes: readonly Reason[] }> => {
  const { photo, thumb, facts, notes } = await readPhoto(file);
  await desk.store.keepPhoto(photo);
  if (thumb) await desk.store.keepThumb(thumb);
  const thing = nameOf.photo(photo.sha256);
  const before = await desk.store.current(thing);
  const body = { sculpture, sha256: photo.sha256, mime: photo.mime, bytes: photo.bytes.byteLength, role, ...facts };
  const changes: Change[] = before && !before.gone ? [] : [{ thing, kind: 'photo', within: sculpture, body }];
  return { photo: thing, changes, notes };
};
