import { readPhoto } from '../../device/photo';
import { StoreProblem } from '../../device/storeProblem';
import { idPart } from '../../engine/record';
import type { Desk, Outcome } from '../desk';
import { attempt } from '../outcome';

export interface PhotosFound {
  /** Photos whose bytes are here now. */
  readonly placed: number;
  /** Files nothing here waits for, or that are no pictures. */
  readonly passedOver: number;
}

/**
 * Finds among single files the photos the survey speaks of and whose bytes are not here: by their hash, as the file is and with its place
 * blanked, as it was when it was taken in. What was placed before it was left off stays.
 */
export const photosFound = (
  desk: Desk,
  files: readonly File[],
  { heard, signal }: { heard?(done: number, all: number): void; readonly signal?: AbortSignal | undefined } = {},
): Promise<Outcome<PhotosFound>> =>
  attempt(async () => {
    const here = new Set(await desk.store.photosHere());
    const spoken = (await desk.store.ofKind('photo')).map(({ thing }) => idPart(thing));
    const waited = new Set(spoken.filter((sha256) => !here.has(sha256)));
    let placed = 0;
    let done = 0;
    for (const file of files) {
      if (signal?.aborted) break;
      const found = waited.size > 0 ? await foundIn(file, waited) : undefined;
      if (found) {
        await desk.store.keepPhoto(found.photo);
        if (found.thumb) await desk.store.keepThumb(found.thumb);
        waited.delete(found.photo.sha256);
        placed++;
      }
      done++;
      heard?.(done, files.length);
    }
    return { placed, passedOver: done - placed };
  });

/** What is no picture is none that is waited for: no fault. */
const foundIn = async (file: File, waited: ReadonlySet<string>) => {
  try {
    for (const keepPlace of [true, false]) {
      const read = await readPhoto(file, { keepPlace });
      if (waited.has(read.photo.sha256)) return read;
    }
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
  }
  return undefined;
};
