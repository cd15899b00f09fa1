import type { Tables } from './database';
import { erasedIn, refuseErasedBytes } from './erased';
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

/** Inside a transaction: puts bytes under their hash, once, and counts them. False where some lay there already. */
export const putBytes = async (t: Tables, table: 'photoBytes' | 'thumbs', photo: PhotoBytes): Promise<boolean> => {
  refuseErasedBytes(await erasedIn(t), photo.sha256);
  if ((await t[table].where('sha256').equals(photo.sha256).count()) > 0) return false;
  await t[table].add(photo);
  const { photos, bytes } = await keptIn(t);
  const value = { photos: photos + (table === 'photoBytes' ? 1 : 0), bytes: bytes + photo.bytes.byteLength };
  await t.meta.put({ key: bytesKey, value });
  return true;
};

/** Inside a transaction: a picture that does not come back as it was given is not kept. */
export const dropBytes = async (t: Tables, given: PhotoBytes): Promise<void> => {
  await t.photoBytes.delete(given.sha256);
  const { photos, bytes } = await keptIn(t);
  await t.meta.put({ key: bytesKey, value: { photos: photos - 1, bytes: bytes - given.bytes.byteLength } });
};

/** Inside a transaction: what is kept of these photos goes, whatever became of it, and is no longer counted. */
export const dropBytesOf = async (
  t: Tables,
  hashes: readonly string[],
  tables: readonly ('photoBytes' | 'thumbs')[] = ['photoBytes', 'thumbs'],
): Promise<void> => {
  // One after the other: their bytes are not all held at once.
  for (const table of tables)
    for (const sha256 of hashes) {
      const kept = await t[table].get(sha256);
      if (!kept) continue;
      await t[table].delete(sha256);
      const { photos, bytes } = await keptIn(t);
      // A damaged photo may have come back as nothing.
      const left = Math.max(0, bytes - (kept.bytes?.byteLength ?? 0));
      await t.meta.put({ key: bytesKey, value: { photos: photos - (table === 'photoBytes' ? 1 : 0), bytes: left } });
    }
};

/** Tablets have stored pictures as nothing, or short, without a word: what lies there must be what was given. */
export const sameBytes = (given: PhotoBytes, back: PhotoBytes | undefined): boolean =>
  back?.bytes instanceof ArrayBuffer && equal(given.bytes, back.bytes);

/** Four bytes at a time, in a plain loop: this runs on the page, for millions of bytes, while a finger waits. */
const equal = (a: ArrayBuffer, b: ArrayBuffer): boolean => {
  if (a.byteLength !== b.byteLength) return false;
  const words = Math.floor(a.byteLength / 4);
  return (
    alike(new Uint32Array(a, 0, words), new Uint32Array(b, 0, words)) &&
    alike(new Uint8Array(a, words * 4), new Uint8Array(b, words * 4))
  );
};

const alike = (a: Uint32Array | Uint8Array, b: Uint32Array | Uint8Array): boolean => {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
};

export const heldIn = async (t: Tables, entries: number): Promise<Held> => {
  const { photos, bytes } = await keptIn(t);
  return { entries, photos, bytes: bytes + entries * bytesOfAnEntry };
};
