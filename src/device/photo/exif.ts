import { jpegParts } from './jpegParts';
import { pngParts } from './pngParts';
import { type Tiff, tiffAt } from './tiff';

/** Stretches of a picture file, each with what follows when it is changed. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

const applicationPart = 0xe1;
const exifHead = 'Exif\0\0';

const tags = {
  exif: 0x8769,
  orientation: 0x0112,
  taken: 0x9003,
  takenOffset: 0x9011,
  focal: 0x920a,
  focal35: 0xa405,
} as const;

export const says = (bytes: Uint8Array, at: number, text: string): boolean =>
  [...text].every((letter, i) => bytes[at + i] === letter.charCodeAt(0));

/** Every place a text of plain letters stands at. */
export const placesOf = (bytes: Uint8Array, text: string, from = 0): number[] => {
  const found: number[] = [];
  const first = text.charCodeAt(0);
  for (let at = bytes.indexOf(first, from); at >= 0; at = bytes.indexOf(first, at + 1))
    if (says(bytes, at, text)) found.push(at);
  return found;
};

/** RIFF chunks, as WebP has them. */
export const riffParts = (bytes: Uint8Array): (Stretch & { readonly name: string })[] => {
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

/**
 * Where blocks of EXIF lie, the picture's own first: in a JPEG also those of the further pictures a camera hangs on behind
 * it, in HEIC and AVIF wherever a TIFF starts, since their index of items may itself be damaged.
 */
export const exifBlocks = (bytes: Uint8Array): Stretch[] => {
  const past = (start: number, end: number) => ({
    start: says(bytes, start, exifHead) ? start + exifHead.length : start,
    end,
  });
  if (bytes[0] === 0xff) {
    const own = jpegParts(bytes);
    const named = own.filter((part) => part.marker === applicationPart && says(bytes, part.start, exifHead));
    const further = placesOf(bytes, exifHead, own.at(-1)?.end ?? 2).map((at) => past(at, bytes.length));
    return [...named.map(({ start, end }) => past(start, end)), ...further];
  }
  if (bytes[0] === 0x89) return pngParts(bytes).filter(({ name }) => name === 'eXIf');
  if (says(bytes, 4, 'ftyp'))
    return ['II*\0', 'MM\0*'].flatMap((head) => placesOf(bytes, head)).map((at) => past(at, bytes.length));
  return riffParts(bytes)
    .filter(({ name }) => name === 'EXIF')
    .map(({ start, end }) => past(start, end));
};

/** What the camera says of a picture; each missing where it does not say. */
export interface CameraFacts {
  /** ISO 8601, with its offset where it gives one. */
  readonly taken?: string;
  /** 1 to 8. */
  readonly orientation?: number;
  /** Focal length, mm, and the same on a 36 x 24 mm frame. */
  readonly focal?: number;
  readonly focal35?: number;
}

export const cameraFacts = (bytes: Uint8Array): CameraFacts => {
  for (const { start, end } of exifBlocks(bytes)) {
    const tiff = tiffAt(bytes, start, end);
    const facts = tiff ? factsIn(tiff) : {};
    if (Object.keys(facts).length > 0) return facts;
  }
  return {};
};

const factsIn = (tiff: Tiff): CameraFacts => {
  const own = tiff.directory(tags.exif)?.fields ?? [];
  const field = (tag: number) => own.find((f) => f.tag === tag);
  const taken = takenOf(tiff.text(field(tags.taken)), tiff.text(field(tags.takenOffset)));
  const orientation = tiff.whole(tiff.first.find((f) => f.tag === tags.orientation));
  const focal = lens(tiff.ratio(field(tags.focal)));
  const focal35 = lens(tiff.whole(field(tags.focal35)));
  return {
    ...(taken ? { taken } : {}),
    ...(orientation && orientation <= 8 ? { orientation } : {}),
    ...(focal ? { focal } : {}),
    ...(focal35 ? { focal35 } : {}),
  };
};

/** A clock never set gives no time. */
const takenOf = (taken: string, offset: string): string | undefined => {
  const said = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}:\d{2}:\d{2})$/.exec(taken);
  const zone = /^[+-]\d{2}:\d{2}$/.exec(offset)?.[0] ?? '';
  return said && said[1] !== '0000' ? `${said[1]}-${said[2]}-${said[3]}T${said[4]}${zone}` : undefined;
};

/** Nought stands for "unknown" (Exif 2.32, 4.6.5); a record holds millimetres up to 5000. */
const lens = (mm: number | undefined): number | undefined =>
  mm !== undefined && mm > 0 && mm <= 5000 ? Math.round(mm * 100) / 100 : undefined;
