import sharp from 'sharp';
import { expect, test } from 'vitest';
import { readPhoto } from '../../../src/device/photo';
import { jpegEnds } from '../../../src/device/photo/jpegParts';
import { checksum, pngHolds } from '../../../src/device/photo/pngParts';
import { sizeOf, upright } from '../../../src/device/photo/sizeOf';
import { grainyJpeg, heic, lyingPng, svg } from '../../files/pictures';
import { jpeg, tiff } from './camera';

const own = (buffer: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(buffer);
const file = (bytes: Uint8Array, name: string) => new File([own(bytes)], name);
const small = { create: { width: 61, height: 47, channels: 3 as const, background: '#654' } };

test('a JPEG is whole where its end mark stands, whatever a camera hung on behind it, and cut where it does not', async () => {
  const photo = await grainyJpeg(200, 150);
  const byRows = await sharp(photo).jpeg({ progressive: true }).toBuffer();
  for (const whole of [photo, byRows, Buffer.concat([photo, Buffer.alloc(500, 9)])]) expect(jpegEnds(whole)).toBe(true);
  for (let share = 1; share < 20; share++) {
    const length = Math.floor((photo.length * share) / 20);
    expect(jpegEnds(photo.subarray(0, length)), `cut at ${share * 5} %`).toBe(false);
    const filled = Buffer.concat([photo.subarray(0, length), Buffer.alloc(photo.length - length)]);
    expect(jpegEnds(filled), `filled up with zeros from ${share * 5} %`).toBe(false);
    expect(jpegEnds(byRows.subarray(0, Math.floor((byRows.length * share) / 20)))).toBe(false);
  }
});

test.each([
  ['of colours', {}],
  ['of a palette', { palette: true }],
  ['laid in passes', { progressive: true }],
])('a PNG %s holds as many pixels as it says', async (_, options) => {
  expect(await pngHolds(own(await sharp(small).png(options).toBuffer()))).toBe('whole');
});

test.each([
  [30_000, 20_000, 'no file packs so tight'],
  [121, 90, 'one column too many'],
  [120, 91, 'one line too many'],
  [120, 89, 'one line too few'],
])('a PNG that says %i by %i is found out: %s', async (width, height) => {
  expect(await pngHolds(own(await lyingPng(width, height)))).toBe('size untrue');
});

test('a PNG that was cut is told from one that lies', async () => {
  const photo = await sharp(await grainyJpeg(200, 150))
    .png()
    .toBuffer();
  expect(await pngHolds(own(photo.subarray(0, photo.length / 2)))).toBe('cut short');
});

test('the checksum is that of the PNG specification', () => {
  // The end chunk of every PNG: IEND and AE 42 60 82 (PNG, third edition, 11.2.5; the figure as files bear it).
  expect(checksum(new TextEncoder().encode('IEND'))).toBe(0xae426082);
});

test.each(['jpeg', 'png', 'webp'] as const)('the size of a %s is read from its own header', async (kind) => {
  expect(sizeOf(await sharp(small)[kind]().toBuffer())).toEqual({ width: 61, height: 47 });
});

test('a WebP without loss, and one with more to it, say their size too', async () => {
  expect(sizeOf(await sharp(small).webp({ lossless: true }).toBuffer())).toEqual({ width: 61, height: 47 });
  const more = await sharp({ ...small, create: { ...small.create, channels: 4, background: '#6548' } });
  expect(sizeOf(await more.webp().toBuffer())).toEqual({ width: 61, height: 47 });
});

test('a picture on its side is as wide as it is high', () => {
  const lying = { width: 4, height: 3 };
  expect([1, 2, 3, 4].map((o) => upright(lying, o))).toEqual([lying, lying, lying, lying]);
  expect([5, 6, 7, 8].map((o) => upright(lying, o).width)).toEqual([3, 3, 3, 3]);
});

test('what is damaged is kept byte for byte, and marked', async () => {
  const photo = await grainyJpeg(200, 150);
  const cut = photo.subarray(0, photo.length / 2);
  const read = await readPhoto(file(cut, 'cut.jpg'));
  expect(Buffer.from(read.photo.bytes)).toEqual(cut);
  expect(read.facts).toMatchObject({ flaw: 'cut short', width: 200, height: 150 });
  expect(read.notes.map(({ code }) => code)).toEqual(['picture cut']);
  const lying = await readPhoto(file(await lyingPng(30_000, 20_000), 'lying.png'));
  expect(lying.facts).toEqual({ flaw: 'size untrue', gpsBlanked: false });
  expect(lying.notes.map(({ code }) => code)).toEqual(['picture size untrue']);
});

test('a HEIC is known whatever its name says, an SVG is refused by its own sentence', async () => {
  expect((await readPhoto(file(heic(), 'IMG_1.jpg'))).photo.mime).toBe('image/heic');
  await expect(readPhoto(file(svg(), 'drawing.png'))).rejects.toMatchObject({
    reason: { code: 'drawing not taken', params: { name: 'drawing.png' } },
  });
});

test('the place in a HEIC is blanked, wherever its EXIF lies', async () => {
  const block = tiff(true, { taken: '2026:05:12 10:41:07', gps: true });
  const bytes = Buffer.concat([heic(), Buffer.from(block), Buffer.alloc(40)]);
  const read = await readPhoto(file(bytes, 'a.heic'));
  expect(read.facts).toMatchObject({ gpsBlanked: true, taken: '2026-05-12T10:41:07' });
  expect((await readPhoto(new Blob([read.photo.bytes]))).facts.gpsBlanked, 'nothing is left to blank').toBe(false);
});

test('a further picture behind the first, as cameras hang on, has its place blanked too', async () => {
  const one = jpeg({ exif: tiff(false, { taken: '2026:05:12 10:41:07' }) });
  const further = jpeg({ exif: tiff(true, { gps: true }) });
  const read = await readPhoto(file(Buffer.concat([one, further]), 'a.jpg'));
  expect(read.facts).toMatchObject({ gpsBlanked: true, taken: '2026-05-12T10:41:07' });
});

test('chosen to be left in, the place is, and that is noted', async () => {
  const bytes = jpeg({ exif: tiff(true, { gps: true }) });
  const read = await readPhoto(new Blob([bytes]), { keepPlace: true });
  expect(new Uint8Array(read.photo.bytes)).toEqual(bytes);
  expect(read.facts).toMatchObject({ gpsBlanked: false, placeKept: true });
});
