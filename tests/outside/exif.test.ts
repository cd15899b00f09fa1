import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, expect, test } from 'vitest';
import { readPhoto } from '../../src/device/photo';
import { grainyJpeg, hashOf } from '../files/pictures';

// ExifTool (Debian libimage-exiftool-perl) writes what cameras write, and says what is left once the place is blanked.
const folder = mkdtempSync(join(tmpdir(), 'patina-round-exif-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const exiftool = (...args: string[]): string => {
  const { status, stdout, stderr } = spawnSync('exiftool', args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return stdout;
};

type Told = Readonly<Record<string, string | number>>;

/** All it finds, by group and name; positions in the file and the file's own dates left out. */
const toldOf = (path: string): Told => {
  const [all] = JSON.parse(exiftool('-json', '-n', '-a', '-G1', path)) as [Record<string, string | number>];
  const own = Object.entries(all).filter(([name]) => !/^(SourceFile|System:|ExifTool:)/.test(name));
  return Object.fromEntries(own);
};

/** Anything that tells where: the GPS directory's version number tells nothing. */
const placeIn = (told: Told): string[] => Object.keys(told).filter((name) => /GPS/.test(name));
const without = (told: Told, names: readonly string[]): Told =>
  Object.fromEntries(Object.entries(told).filter(([name]) => !names.includes(name)));

const place = [
  '-GPSLatitude=52.5186',
  '-GPSLatitudeRef=N',
  '-GPSLongitude=13.4099',
  '-GPSLongitudeRef=E',
  '-GPSAltitude=34.2',
  '-GPSImgDirection=270',
  '-XMP-exif:GPSLatitude=52.5186',
  '-XMP-exif:GPSLongitude=13.4099',
];
const camera = [
  '-DateTimeOriginal=2026:05:12 10:41:07',
  '-OffsetTimeOriginal=+02:00',
  '-FocalLength=6.765',
  '-FocalLengthIn35mmFormat=26',
  '-Make=Invented',
  '-XMP-dc:Title=kept',
];

const written = (name: string, bytes: Uint8Array, tags: readonly string[]): string => {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  exiftool('-overwrite_original', '-n', ...tags, path);
  return path;
};

/** Kept as the app keeps it. */
const kept = async (path: string, keepPlace = false) => {
  const bytes = readFileSync(path);
  const read = await readPhoto(new Blob([bytes]), { keepPlace });
  const out = `${path}.kept${path.slice(path.lastIndexOf('.'))}`;
  writeFileSync(out, new Uint8Array(read.photo.bytes));
  return { ...read, bytes, out };
};

const orientations = [1, 2, 3, 4, 5, 6, 7, 8];
const orders = ['II', 'MM'];

test.each(orientations.flatMap((o) => orders.map((order) => [o, order] as const)))(
  'orientation %i, byte order %s: time, lens and size are read as ExifTool reads them, and the place is gone and nothing else',
  async (orientation, order) => {
    const name = `${order}-${orientation}.jpg`;
    const tags = [`-ExifByteOrder=${order}`, `-Orientation=${orientation}`, ...camera, ...place];
    const path = written(name, await grainyJpeg(320, 240), tags);
    const before = toldOf(path);
    const { facts, photo, bytes, out } = await kept(path);

    expect(facts.orientation).toBe(before['IFD0:Orientation']);
    expect(facts.taken).toBe('2026-05-12T10:41:07+02:00');
    expect(facts.focal).toBeCloseTo(Number(before['ExifIFD:FocalLength']), 2);
    expect(facts.focal35).toBe(before['ExifIFD:FocalLengthIn35mmFormat']);
    const upright = await sharp(bytes).rotate().toBuffer({ resolveWithObject: true });
    expect([facts.width, facts.height]).toEqual([upright.info.width, upright.info.height]);

    expect(placeIn(before).length, 'there was a place to blank').toBeGreaterThan(6);
    const after = toldOf(out);
    expect(placeIn(after).filter((tag) => String(after[tag]).trim() !== '')).toEqual([]);
    const places = [...placeIn(before), ...placeIn(after)];
    expect(without(after, places)).toEqual(without(before, places));
    expect(facts.gpsBlanked).toBe(true);
    expect(photo.bytes.byteLength).toBe(bytes.length);
    expect(photo.sha256).toBe(hashOf(readFileSync(out)));
    expect(await sharp(out).raw().toBuffer(), 'every pixel as it was').toEqual(await sharp(path).raw().toBuffer());
  },
);

test.each(['png', 'webp'] as const)('the place is blanked out of a %s too, and the file stays sound', async (kind) => {
  const bytes = await sharp(await grainyJpeg(320, 240))
    [kind]()
    .toBuffer();
  const path = written(`picture.${kind}`, bytes, ['-Orientation=6', ...camera, ...place]);
  const before = toldOf(path);
  expect(placeIn(before).length).toBeGreaterThan(6);
  const { facts, out } = await kept(path);
  const after = toldOf(out);
  expect(placeIn(after).filter((tag) => String(after[tag]).trim() !== '')).toEqual([]);
  const places = [...placeIn(before), ...placeIn(after)];
  expect(without(after, places)).toEqual(without(before, places));
  expect(facts).toMatchObject({ orientation: 6, taken: '2026-05-12T10:41:07+02:00', focal35: 26, gpsBlanked: true });
  expect([facts.width, facts.height]).toEqual([240, 320]);
  expect(exiftool('-validate', '-warning', '-a', out)).not.toMatch(/CRC|corrupt|truncat/i);
  expect(await sharp(out).raw().toBuffer()).toEqual(await sharp(path).raw().toBuffer());
});

test('chosen to be left in, the place is left in, byte for byte', async () => {
  const path = written('left-in.jpg', await grainyJpeg(320, 240), [...camera, ...place]);
  const { facts, photo, bytes } = await kept(path, true);
  expect(photo.sha256).toBe(hashOf(bytes));
  expect(facts).toMatchObject({ gpsBlanked: false, placeKept: true });
});
