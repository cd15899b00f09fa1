import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blankPlace } from '../../../src/device/photo/blankPlace';
import { cameraFacts } from '../../../src/device/photo/exif';
import { sizeOf } from '../../../src/device/photo/sizeOf';
import { jpeg, tiff } from './camera';

const takenAt = (bytes: Uint8Array) => cameraFacts(bytes).taken;

const degrees = [52, 31, 7, 13, 24, 36];
/** Every rational of the place, however the camera orders its bytes. */
const tellsPlace = (bytes: Uint8Array): boolean => {
  const view = new DataView(bytes.buffer);
  for (let at = 0; at + 24 <= bytes.length; at++)
    for (const little of [true, false])
      for (const [a, b, c] of [degrees.slice(0, 3), degrees.slice(3)])
        if (
          view.getUint32(at, little) === a &&
          view.getUint32(at + 8, little) === b &&
          view.getUint32(at + 16, little) === c
        )
          return true;
  return false;
};

test.each([true, false])(
  'the place is blanked out of EXIF in place, little-endian %s, and the time stays',
  (little) => {
    const bytes = jpeg({ exif: tiff(little, { taken: '2026:05:12 10:41:07', offset: '+01:00', gps: true }) });
    const before = bytes.length;
    expect(tellsPlace(bytes)).toBe(true);
    expect(blankPlace(bytes)).toBe(true);
    expect(tellsPlace(bytes)).toBe(false);
    expect(bytes.length).toBe(before);
    expect(takenAt(bytes)).toBe('2026-05-12T10:41:07+01:00');
    expect(sizeOf(bytes)).toEqual({ width: 4032, height: 3024 });
    expect(blankPlace(bytes), 'nothing is left to blank').toBe(false);
  },
);

test('a picture without a place is left as it was, byte for byte', () => {
  const bytes = jpeg({ exif: tiff(true, { taken: '2026:05:12 10:41:07' }) });
  const was = bytes.slice();
  expect(blankPlace(bytes)).toBe(false);
  expect(bytes).toEqual(was);
  expect(takenAt(bytes)).toBe('2026-05-12T10:41:07');
});

test('the place is blanked out of XMP too, written as attribute or as element', () => {
  const xmp = '<x exif:GPSLatitude="52,31.12N" dc:title="kept"/><exif:GPSLongitude>13,24.6E</exif:GPSLongitude>';
  const bytes = jpeg({ xmp });
  expect(blankPlace(bytes)).toBe(true);
  const text = new TextDecoder('latin1').decode(bytes);
  expect(text).not.toMatch(/52,31|13,24/);
  expect(text).toContain('dc:title="kept"');
});

test('a camera clock never set gives no time', () => {
  expect(takenAt(jpeg({ exif: tiff(true, { taken: '0000:00:00 00:00:00' }) }))).toBeUndefined();
  expect(takenAt(jpeg({}))).toBeUndefined();
});

test('whatever byte is altered and wherever the file is cut, reading it never fails', () => {
  const whole = jpeg({
    exif: tiff(false, { taken: '2026:05:12 10:41:07', gps: true }),
    xmp: '<exif:GPSLatitude>1</exif:GPSLatitude>',
  });
  fc.assert(
    fc.property(fc.nat(whole.length), fc.nat(whole.length - 1), fc.nat(255), (length, at, value) => {
      const bytes = whole.slice();
      bytes[at] = value;
      const cut = bytes.slice(0, length);
      takenAt(cut);
      sizeOf(cut);
      blankPlace(cut);
      expect(cut.length).toBe(length);
    }),
    { numRuns: 3000, seed: 20261125 },
  );
});
