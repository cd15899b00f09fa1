import { unpackedFile } from '../../device/bag';
import { sha256 } from '../../device/hash';
import { bagReason } from '../../engine/bag';
import { journalStart } from '../arrivingJournal';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { thumbOfArrived } from '../thumbOfArrived';
import { type Arriving, dropArriving } from './arriving';
import type { CarryPreview } from './openSurveyFile';

export interface ArrivingWay {
  /** Bytes done of all. */
  heard?(done: number, all: number): void;
  readonly signal?: AbortSignal | undefined;
}

/**
 * Keeps the photos of a bag, one transaction each, under a journal that says which they are. Whatever ends it in the middle, what came so
 * far is dropped again: here, or at the next start.
 */
export const photosArriving = async (
  desk: Desk,
  deed: string,
  { file, photos }: CarryPreview,
  { heard, signal }: ArrivingWay,
): Promise<Arriving> => {
  const here = new Set(await desk.store.photosHere());
  const coming = photos.filter((photo) => !here.has(photo.sha256));
  const arriving = { journal: journalStart + deed, photos: coming.map((photo) => photo.sha256) };
  await desk.store.setMeta(arriving.journal, arriving.photos);
  const all = coming.reduce((sum, photo) => sum + photo.file.bytes, 0);
  let done = 0;
  try {
    for (const { sha256: name, mime, file: inBag } of coming) {
      if (signal?.aborted) refuse(refusal('carrying in left off', {}));
      const bytes = await unpackedFile(file, inBag);
      // The file may have been changed since it was looked through.
      if ((await sha256(bytes)) !== name) refuse(bagReason('bag: file altered', { path: inBag.name }));
      const photo = { sha256: name, mime, bytes: bytes.buffer };
      await desk.store.keepPhoto(photo);
      await thumbOfArrived(desk, photo);
      done += inBag.bytes;
      heard?.(done, all);
    }
    if (signal?.aborted) refuse(refusal('carrying in left off', {}));
  } catch (error) {
    await dropArriving(desk, arriving).catch(() => undefined);
    throw error;
  }
  return arriving;
};
