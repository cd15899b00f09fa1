import { jpegFrame } from './jpegParts';

export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

/** Width and height in pixels by the file's own header, as they lie in it before it is turned upright. */
export const sizeOf = (bytes: Uint8Array): PixelSize | undefined => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const said = (width: number, height: number) => (width > 0 && height > 0 ? { width, height } : undefined);
  if (bytes[0] === 0x89) return bytes.length >= 24 ? said(view.getUint32(16), view.getUint32(20)) : undefined;
  if (bytes[0] === 0x52) return bytes.length >= 30 ? webpSize(view) : undefined;
  const frame = bytes[0] === 0xff ? jpegFrame(bytes) : undefined;
  return frame === undefined ? undefined : said(view.getUint16(frame + 3), view.getUint16(frame + 1));
};

/** RFC 9649, 2.5 to 2.7: lossy, lossless and extended files each say it in another way. */
const webpSize = (view: DataView): PixelSize | undefined => {
  const kind = view.getUint32(12);
  if (kind === 0x56503820)
    return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  if (kind === 0x5650384c) {
    const packed = view.getUint32(21, true);
    return { width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 };
  }
  const long = (at: number) => view.getUint16(at, true) + (view.getUint8(at + 2) << 16) + 1;
  return kind === 0x56503858 ? { width: long(24), height: long(27) } : undefined;
};

/** The size of the picture once it is turned upright: orientations 5 to 8 lie on their side (Exif 2.32, 4.6.4). */
export const upright = ({ width, height }: PixelSize, orientation: number | undefined): PixelSize =>
  orientation !== undefined && orientation >= 5 ? { width: height, height: width } : { width, height };
