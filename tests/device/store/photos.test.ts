import { afterEach, expect, test, vi } from 'vitest';
import { sha256 as hashOf } from '../../../src/device/hash';
import type { PhotoBytes } from '../../../src/device/store';
import { open, openFresh } from './around';

afterEach(() => vi.restoreAllMocks());

const photo: PhotoBytes = { sha256: 'a'.repeat(64), mime: 'image/jpeg', bytes: new Uint8Array([1, 2, 3, 4]).buffer };

/** Reads give back something else than was stored, as tablets have done. */
const readBack = (bytes: unknown) => {
  const real = IDBObjectStore.prototype.get;
  vi.spyOn(IDBObjectStore.prototype, 'get').mockImplementation(function (this: IDBObjectStore, key) {
    const request = real.call(this, key);
    if (this.name === 'photoBytes')
      Object.defineProperty(request, 'result', { get: () => bytes, set: () => undefined });
    return request;
  });
};

test.each([
  ['nothing', undefined],
  ['null for bytes', { ...photo, bytes: null }],
  ['fewer bytes', { ...photo, bytes: new Uint8Array([1, 2, 3]).buffer }],
  ['altered bytes', { ...photo, bytes: new Uint8Array([1, 2, 3, 5]).buffer }],
])('a photo that comes back as %s is not said to be kept, and can be kept again', async (_, back) => {
  const { store } = await openFresh(1);
  const empty = await store.held();
  readBack(back);
  await expect(store.keepPhoto(photo)).rejects.toMatchObject({ reason: { code: 'photo not kept' } });
  vi.restoreAllMocks();
  expect(await store.photosHere()).toEqual([]);
  expect(await store.held()).toEqual(empty);
  await store.keepPhoto(photo);
  expect(await store.photo(photo.sha256)).toEqual(photo);
  store.close();
});

test('the store counts its photos and their bytes itself, a photo kept twice once', async () => {
  const { store, around, name } = await openFresh(2);
  await store.keepPhoto(photo);
  await store.keepPhoto(photo);
  await store.keepThumb({ ...photo, bytes: new Uint8Array(10).buffer });
  store.close();
  const again = await open(name, around);
  expect(await again.held()).toEqual({ entries: 0, photos: 1, bytes: 14 });
  again.close();
});

test('altered bytes under an old name are refused, and the old ones stay', async () => {
  const { store } = await openFresh(3);
  const sha256 = await hashOf(photo.bytes);
  await store.keepPhoto({ ...photo, sha256 });
  const altered = { ...photo, sha256, bytes: new Uint8Array([9, 9]).buffer };
  await expect(store.keepPhoto(altered)).rejects.toMatchObject({ reason: { code: 'photo altered' } });
  expect(await store.photo(sha256)).toEqual({ ...photo, sha256 });
  expect(await store.held()).toEqual({ entries: 0, photos: 1, bytes: 4 });
  store.close();
});

test('the right bytes take the place of what the tablet damaged under their name', async () => {
  const { store } = await openFresh(4);
  const sha256 = await hashOf(photo.bytes);
  await store.keepPhoto({ ...photo, sha256, bytes: new Uint8Array([1, 2, 3, 5]).buffer });
  await store.keepPhoto({ ...photo, sha256 });
  expect(await store.photo(sha256)).toEqual({ ...photo, sha256 });
  expect(await store.held()).toEqual({ entries: 0, photos: 1, bytes: 4 });
  store.close();
});
