import { afterEach, expect, test, vi } from 'vitest';
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
