import { jpegParts } from './jpegParts';

const applicationPart = 0xe1;
const exifHead = 'Exif\0\0';
const xmpHead = 'http://ns.adobe.com/xap/1.0/\0';

const tags = { gps: 0x8825, exif: 0x8769, taken: 0x9003, takenOffset: 0x9011 } as const;

/** Bytes one value of each TIFF type takes up (TIFF 6.0, section 2). */
const sizes: readonly number[] = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];

interface Field {
  readonly tag: number;
  /** Where its twelve bytes stand, and where its value does. */
  readonly at: number;
  readonly valueAt: number;
  readonly length: number;
}

/** One block of EXIF: a TIFF inside the picture file (Exif 2.32, 4.5). Offsets in it count from its own start. */
const tiffAt = (bytes: Uint8Array, start: number, end: number) => {
  const view = new DataView(bytes.buffer, bytes.byteOffset + start, Math.max(0, end - start));
  const inside = (at: number, length: number) => at >= 0 && length >= 0 && at + length <= view.byteLength;
  const order = inside(0, 8) ? view.getUint16(0) : 0;
  if (order !== 0x4949 && order !== 0x4d4d) return undefined;
  const little = order === 0x4949;
  const fields = (directory: number): Field[] => {
    if (!inside(directory, 2)) return [];
    const count = view.getUint16(directory, little);
    return Array.from({ length: count }, (_, i) => directory + 2 + i * 12)
      .filter((at) => inside(at, 12))
      .map((at) => {
        const length = (sizes[view.getUint16(at + 2, little)] ?? 0) * view.getUint32(at + 4, little);
        const valueAt = length <= 4 ? at + 8 : view.getUint32(at + 8, little);
        return { tag: view.getUint16(at, little), at, valueAt, length };
      })
      .filter(({ valueAt, length }) => inside(valueAt, length));
  };
  const first = fields(view.getUint32(4, little));
  const directory = (tag: number): { at: number; fields: Field[] } | undefined => {
    const pointer = first.find((field) => field.tag === tag);
    if (!pointer) return undefined;
    const at = view.getUint32(pointer.valueAt, little);
    return { at, fields: fields(at) };
  };
  return { view, fields, directory };
};

/** Where blocks of EXIF lie in a JPEG or a WebP. */
const exifBlocks = (bytes: Uint8Array): { start: number; end: number }[] => {
  if (bytes[0] === 0xff)
    return jpegParts(bytes)
      .filter((part) => part.marker === applicationPart && says(bytes, part.start, exifHead))
      .map((part) => ({ start: part.start + exifHead.length, end: part.end }));
  return riffParts(bytes)
    .filter((part) => part.name === 'EXIF')
    .map(({ start, end }) => ({ start: says(bytes, start, exifHead) ? start + exifHead.length : start, end }));
};

const riffParts = (bytes: Uint8Array): { name: string; start: number; end: number }[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts = [];
  if (!says(bytes, 0, 'RIFF')) return [];
  for (let at = 12; at + 8 <= bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    const end = Math.min(at + 8 + length, bytes.length);
    parts.push({ name: String.fromCharCode(...bytes.subarray(at, at + 4)), start: at + 8, end });
    at += 8 + length + (length % 2);
  }
  return parts;
};

const says = (bytes: Uint8Array, at: number, text: string): boolean =>
  [...text].every((letter, i) => bytes[at + i] === letter.charCodeAt(0));

/** When the camera says it was taken, as ISO 8601, with its offset where it gives one; undefined where it does not say. */
export const takenAt = (bytes: Uint8Array): string | undefined => {
  for (const { start, end } of exifBlocks(bytes)) {
    const tiff = tiffAt(bytes, start, end);
    const own = tiff?.directory(tags.exif)?.fields ?? [];
    const text = (tag: number): string => {
      const field = own.find((f) => f.tag === tag);
      if (!field) return '';
      return String.fromCharCode(
        ...bytes.subarray(start + field.valueAt, start + field.valueAt + field.length),
      ).replace(/\0.*$/, '');
    };
    const said = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})$/.exec(text(tags.taken));
    const offset = /^[+-]\d{2}:\d{2}$/.exec(text(tags.takenOffset))?.[0] ?? '';
    if (said && said[1] !== '0000') return `${said[1]}-${said[2]}-${said[3]}T${said[4]}${offset}`;
  }
  return undefined;
};

/**
 * Blanks the place out of a picture, in place, changing no length: the GPS block of EXIF is emptied, and what XMP says of
 * GPS is overwritten with spaces. True where there was any. Makers' own notes are not searched.
 */
export const blankPlace = (bytes: Uint8Array): boolean => {
  let found = false;
  for (const { start, end } of exifBlocks(bytes)) {
    const gps = tiffAt(bytes, start, end)?.directory(tags.gps);
    if (!gps || gps.fields.length === 0) continue;
    found = true;
    for (const field of gps.fields) {
      bytes.fill(0, start + field.valueAt, start + field.valueAt + field.length);
      bytes.fill(0, start + field.at, start + field.at + 12);
    }
    bytes.fill(0, start + gps.at, start + gps.at + 2);
  }
  return blankXmp(bytes) || found;
};

const blankXmp = (bytes: Uint8Array): boolean => {
  let found = false;
  const packets =
    bytes[0] === 0xff
      ? jpegParts(bytes).filter((part) => part.marker === applicationPart && says(bytes, part.start, xmpHead))
      : riffParts(bytes).filter((part) => part.name === 'XMP ');
  for (const { start, end } of packets) {
    const text = new TextDecoder('latin1').decode(bytes.subarray(start, end));
    for (const match of text.matchAll(
      /exif:GPS\w+\s*=\s*(["'])(.*?)\1|<exif:GPS(\w+)[^>]*>([\s\S]*?)<\/exif:GPS\3>/g,
    )) {
      const value = match[2] ?? match[4] ?? '';
      const at = start + match.index + match[0].indexOf(value, match[0].search(/["'>]/));
      bytes.fill(0x20, at, at + value.length);
      found = true;
    }
  }
  return found;
};
