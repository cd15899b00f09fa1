import { afterEach, expect, test, vi } from 'vitest';
import { pictureType, readPhoto } from '../../../src/device/photo';
import { jpeg, tiff } from './camera';

afterEach(() => vi.unstubAllGlobals());

const sha256 = async (bytes: BufferSource) =>
  Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (b) => b.toString(16).padStart(2, '0')).join(
    '',
  );

test('a picture is told by its first bytes, whatever its name and type say', () => {
  const heic = new Uint8Array([0, 0, 0, 24, ...new TextEncoder().encode('ftypheic')]);
  const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const webp = new TextEncoder().encode('RIFF\0\0\0\0WEBPVP8 ');
  expect(
    [jpeg({}), png, webp, heic, new TextEncoder().encode('<svg onload=…>'), new Uint8Array(0)].map(pictureType),
  ).toEqual(['image/jpeg', 'image/png', 'image/webp', 'image/heic', undefined, undefined]);
});

test('the hash names the bytes that are kept: those with the place blanked out, and that is said', async () => {
  const photo = await readPhoto(new Blob([jpeg({ exif: tiff(true, { taken: '2026:05:12 10:41:07', gps: true }) })]));
  expect(photo.photo.sha256).toBe(await sha256(photo.photo.bytes));
  expect(photo.facts).toEqual({ width: 4032, height: 3024, taken: '2026-05-12T10:41:07', gpsBlanked: true });
  expect(photo.notes).toEqual([{ code: 'location blanked', params: {} }]);
});

test('a picture without a place is kept byte for byte as it was taken', async () => {
  const taken = jpeg({ exif: tiff(false, { taken: '2026:05:12 10:41:07' }) });
  const { photo, facts } = await readPhoto(new Blob([taken]));
  expect(new Uint8Array(photo.bytes)).toEqual(taken);
  expect(facts.gpsBlanked).toBe(false);
});

test('one this browser cannot show is kept all the same, and that is said', async () => {
  vi.stubGlobal('createImageBitmap', () => Promise.reject(new DOMException('cannot decode', 'InvalidStateError')));
  const heic = new Uint8Array([0, 0, 0, 24, ...new TextEncoder().encode('ftypheic'), 1, 2, 3]);
  const read = await readPhoto(new Blob([heic]));
  expect(read.thumb).toBeUndefined();
  expect(read.photo.mime).toBe('image/heic');
  expect(read.notes).toEqual([{ code: 'HEIC not shown', params: { mime: 'image/heic' } }]);
  expect(read.facts.flaw).toBe('not shown');
});

test.each([
  ['an empty file', new Blob([]), 'photo empty'],
  ['a text named as a picture', new File(['hello'], 'x.jpg', { type: 'image/jpeg' }), 'not a picture'],
])('%s is refused in words', async (_, file, code) => {
  await expect(readPhoto(file)).rejects.toMatchObject({ reason: { code } });
});

test('at an address without https a photo is refused with that reason, not with a fault', async () => {
  vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
  await expect(readPhoto(new Blob([jpeg({})]))).rejects.toMatchObject({ reason: { code: 'address not secure' } });
});
