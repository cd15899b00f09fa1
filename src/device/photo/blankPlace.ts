import { exifBlocks, placesOf, riffParts, type Stretch, says } from './exif';
import { jpegParts } from './jpegParts';
import { pngParts, sealPart } from './pngParts';
import { tiffAt } from './tiff';

const gps = 0x8825;
const applicationPart = 0xe1;
const xmpHead = 'http://ns.adobe.com/xap/1.0/\0';
const pngXmpHead = 'XML:com.adobe.xmp\0';

/**
 * Blanks the place out of a picture, in place, changing no length: the GPS block of EXIF is emptied, and what XMP says of
 * GPS is overwritten with spaces. True where there was any. Makers' own notes are secret formats and are not searched, nor
 * is a film some telephones hang on behind the picture.
 */
export const blankPlace = (bytes: Uint8Array): boolean => {
  const inExif = exifBlocks(bytes).filter((block) => blankExif(bytes, block));
  const inXmp = xmpPackets(bytes).filter((packet) => blankXmp(bytes, packet));
  const changed = [...inExif, ...inXmp];
  if (bytes[0] === 0x89)
    for (const part of pngParts(bytes))
      if (changed.some(({ start }) => start >= part.start && start < part.end)) sealPart(bytes, part);
  return changed.length > 0;
};

const blankExif = (bytes: Uint8Array, { start, end }: Stretch): boolean => {
  const directory = tiffAt(bytes, start, end)?.directory(gps);
  if (!directory || directory.fields.length === 0) return false;
  for (const field of directory.fields) {
    bytes.fill(0, start + field.valueAt, start + field.valueAt + field.length);
    bytes.fill(0, start + field.at, start + field.at + 12);
  }
  bytes.fill(0, start + directory.at, start + directory.at + 2);
  return true;
};

const xmpPackets = (bytes: Uint8Array): Stretch[] => {
  if (bytes[0] === 0xff)
    return jpegParts(bytes).filter((part) => part.marker === applicationPart && says(bytes, part.start, xmpHead));
  if (bytes[0] === 0x89)
    return pngParts(bytes).filter(({ name, start }) => name === 'iTXt' && says(bytes, start, pngXmpHead));
  if (!says(bytes, 4, 'ftyp')) return riffParts(bytes).filter(({ name }) => name === 'XMP ');
  return placesOf(bytes, '<x:xmpmeta').map((start) => ({
    start,
    end: placesOf(bytes, '</x:xmpmeta', start)[0] ?? bytes.length,
  }));
};

const blankXmp = (bytes: Uint8Array, { start, end }: Stretch): boolean => {
  const text = new TextDecoder('latin1').decode(bytes.subarray(start, end));
  let found = false;
  for (const match of text.matchAll(/exif:GPS\w+\s*=\s*(["'])(.*?)\1|<exif:GPS(\w+)[^>]*>([\s\S]*?)<\/exif:GPS\3>/g)) {
    const value = match[2] ?? match[4] ?? '';
    if (value.trim() === '') continue;
    const at = start + match.index + match[0].indexOf(value, match[0].search(/["'>]/));
    bytes.fill(0x20, at, at + value.length);
    found = true;
  }
  return found;
};
