import { unpackedFile } from '../../device/bag';
import { sha256 } from '../../device/hash';
import { bagReason } from '../../engine/bag';
import { nameOf } from '../../engine/record';
import { journalStart } from '../arrivingJournal';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import type { CarryPreview } from './openSurveyFile';

export interface ArrivingWay {
  /** Bytes done of all. */
  heard?(done: number, all: number): void;
  readonly signal?: AbortSignal | undefined;
}

export interface Arriving {
  readonly journal: string;
  /** SHA-256 of photos whose bytes were not here before. */
  readonly photos: readonly string[];
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
): Promise<Arriving | undefined> => {
  if (photos.length === 0) return undefined;
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
      if ((await sha256(bytes.buffer)) !== name) refuse(bagReason('bag: file altered', { path: inBag.name }));
      await desk.store.keepPhoto({ sha256: name, mime, bytes: bytes.buffer });
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

/** Bytes of an import that did not come to its end go, those something here speaks of excepted. */
export const dropArriving = async (desk: Desk, { journal, photos }: Arriving): Promise<void> => {
  const spokenOf = await desk.store.currents(photos.map(nameOf.photo));
  for (const [i, sha256] of photos.entries()) if (!spokenOf[i]) await desk.store.dropPhoto(sha256);
  const none = { id: journal, name: refusal('carrying in left off', {}), at: desk.now() };
  await desk.store.takeIn([], none, { ends: { journal, photos: [] } });
};

/** At the start: imports that were cut off in the middle leave nothing behind. */
export const sweepArrivals = async (desk: Desk): Promise<void> => {
  if (desk.store.mode !== 'writing') return;
  for (const [deed, photos] of await desk.store.metas<readonly string[]>(journalStart))
    await dropArriving(desk, { journal: journalStart + deed, photos });
};
