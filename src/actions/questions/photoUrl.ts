import { pictureType } from '../../device/photo';
import { idPart } from '../../engine/record';
import type { Desk, Question } from '../desk';

/** 'thumb' falls back to the whole picture where no thumbnail could be made. */
export type PhotoSize = 'thumb' | 'whole';

const shelves = new WeakMap<object, Map<string, Question<string | null>>>();

/**
 * An object URL for a photo while someone looks at it, null where its bytes are not on this device. The URL is given back
 * to the browser a moment after the last one stops looking.
 */
export const photoUrl = (desk: Desk, photo: string, size: PhotoSize): Question<string | null> => {
  const shelf = shelves.get(desk.store) ?? new Map<string, Question<string | null>>();
  shelves.set(desk.store, shelf);
  const key = `${size} ${photo}`;
  const known = shelf.get(key);
  if (known) return known;
  const made = urlQuestion(desk, idPart(photo), size, () => shelf.delete(key));
  shelf.set(key, made);
  return made;
};

/** A screen that is left and entered again within this time keeps its pictures. Milliseconds. */
const linger = 2000;

/** Of the type its first bytes say, whatever a file carried in has called it: a drawing that can hold a program is then no picture. */
const pictureBlob = (bytes: ArrayBuffer): Blob =>
  new Blob([bytes], { type: pictureType(new Uint8Array(bytes, 0, Math.min(bytes.byteLength, 32))) ?? notAPicture });
const notAPicture = 'application/octet-stream';

const urlQuestion = (desk: Desk, sha256: string, size: PhotoSize, dropped: () => void): Question<string | null> => {
  const listeners = new Set<() => void>();
  let url: string | null | undefined;
  let reading = false;
  const read = async () => {
    reading = true;
    const kept =
      size === 'thumb'
        ? ((await desk.store.thumb(sha256)) ?? (await desk.store.photo(sha256)))
        : await desk.store.photo(sha256);
    reading = false;
    url = kept ? URL.createObjectURL(pictureBlob(kept.bytes)) : null;
    if (listeners.size === 0) drop();
    for (const changed of listeners) changed();
  };
  const drop = () => {
    if (listeners.size > 0) return;
    if (url) URL.revokeObjectURL(url);
    url = undefined;
    dropped();
  };
  return {
    subscribe: (changed) => {
      listeners.add(changed);
      if (url === undefined && !reading)
        read().catch(() => {
          reading = false;
          url = null;
          changed();
        });
      return () => {
        listeners.delete(changed);
        if (listeners.size === 0) setTimeout(drop, linger);
      };
    },
    get: () => url,
  };
};
