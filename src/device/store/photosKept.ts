import type { Tables } from './database';
import type { Held, PhotoBytes } from './store';

const bytesKey = 'photoBytes';

/** What one entry and its share of present states and indexes take up, about, in bytes. */
const bytesOfAnEntry = 2000;

interface Kept {
  readonly photos: number;
  readonly bytes: number;
}

const keptIn = async (t: Tables): Promise<Kept> =>
  ((await t.meta.get(bytesKey))?.value as Kept | undefined) ?? { photos: 0, bytes: 0 };

/** Inside a transaction: puts bytes under their hash, once, and counts them. */
export const putBytes = async (t: Tables, table: 'photoBytes' | 'thumbs', photo: PhotoBytes): Promise<void> => {
  if ((await t[table].where('sha256').equals(photo.sha256).count()) > 0) return;
  await t[table].add(photo);
  const { photos, bytes } = await keptIn(t);
  const value = { photos: photos + (table === 'photoBytes' ? 1 : 0), bytes: bytes + photo.bytes.byteLength };
  await t.meta.put({ key: bytesKey, value });
};

/** Inside a transaction: a picture that does not come back as it was given is not kept. */
export const dropBytes = async (t: Tables, given: PhotoBytes): Promise<void> => {
  await t.photoBytes.delete(given.sha256);
  const { photos, bytes } = await keptIn(t);
  await t.meta.put({ key: bytesKey, value: { photos: photos - 1, bytes: bytes - given.bytes.byteLength } });
};

/** Tablets have stored pictures as nothing, or short, without a word: what lies there must be what was given. */
export const sameBytes = (given: PhotoBytes, back: PhotoBytes | undefined): boolean =>
  back?.bytes instanceof ArrayBuffer && equal(new Uint8Array(given.bytes), new Uint8Array(back.bytes));

const equal = (a: Uint8Array, b: Uint8Array): boolean => a.length === b.length && a.every((byte, i) => byte === b[i]);

export const heldIn = async (t: Tables, entries: number): Promise<Held> => {
  const { photos, bytes } = await keptIn(t);
  return { entries, photos, bytes: bytes + entries * bytesOfAnEntry };
};
