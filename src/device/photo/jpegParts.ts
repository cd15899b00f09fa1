/** One marked part of a JPEG: where its content starts and ends, after the marker and the length. */
export interface JpegPart {
  readonly marker: number;
  readonly start: number;
  readonly end: number;
}

const startOfScan = 0xda;

/** The marked parts before the picture itself (ITU-T T.81, B.1). Ends quietly where the file is cut or strange. */
export const jpegParts = (bytes: Uint8Array): JpegPart[] => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const parts: JpegPart[] = [];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === startOfScan) break;
    const end = at + 2 + view.getUint16(at + 2);
    if (end > bytes.length || end < at + 4) break;
    parts.push({ marker, start: at + 4, end });
    at = end;
  }
  return parts;
};

/** Frame headers; the three left out among them are tables. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Width and height in pixels as they lie in the file, before it is turned upright. */
export const sizeOf = (bytes: Uint8Array): { width: number; height: number } | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const positive = (width: number, height: number) => (width > 0 && height > 0 ? { width, height } : undefined);
  if (bytes[0] === 0x89) return bytes.length >= 24 ? positive(view.getUint32(16), view.getUint32(20)) : undefined;
  if (bytes[0] !== 0xff) return undefined;
  const frame = jpegParts(bytes).find((part) => isFrame(part.marker) && part.end - part.start >= 5);
  return frame && positive(view.getUint16(frame.start + 3), view.getUint16(frame.start + 1));
};
