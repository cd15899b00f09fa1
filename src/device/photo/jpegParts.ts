/** One marked part of a JPEG: where its content starts and ends, after the marker and the length. */
export interface JpegPart {
  readonly marker: number;
  readonly start: number;
  readonly end: number;
}

const startOfScan = 0xda;
const endOfImage = 0xd9;
const isRestart = (marker: number): boolean => marker >= 0xd0 && marker <= 0xd7;

/** The marked parts before the picture itself (ITU-T T.81, B.1). Ends quietly where the file is cut or strange. */
export const jpegParts = (bytes: Uint8Array): JpegPart[] => {
  const parts: JpegPart[] = [];
  for (let at = 2; at + 4 <= bytes.length && bytes[at] === 0xff; ) {
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) {
      at++;
      continue;
    }
    const end = at + 2 + lengthAt(bytes, at + 2);
    if (marker === startOfScan || end > bytes.length || end < at + 4) break;
    parts.push({ marker, start: at + 4, end });
    at = end;
  }
  return parts;
};

const lengthAt = (bytes: Uint8Array, at: number): number => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);

/**
 * Whether the picture comes to its end mark. A file cut on its way, or filled up with zeros, has none; what a camera hangs
 * on behind the mark is not looked at.
 */
export const jpegEnds = (bytes: Uint8Array): boolean => {
  let at = jpegParts(bytes).at(-1)?.end ?? 2;
  while (at >= 0 && at + 1 < bytes.length) {
    const marker = bytes[at + 1] as number;
    if (bytes[at] !== 0xff || marker === 0 || marker === 0xff || isRestart(marker)) at = bytes.indexOf(0xff, at + 1);
    else if (marker === endOfImage) return true;
    else at += 2 + lengthAt(bytes, at + 2);
  }
  return false;
};

/** Frame headers; the three left out among them are tables. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Where the frame header of a JPEG starts, which says its size. */
export const jpegFrame = (bytes: Uint8Array): number | undefined =>
  jpegParts(bytes).find((part) => isFrame(part.marker) && part.end - part.start >= 5)?.start;
