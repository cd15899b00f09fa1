import { type PixelSize, upright } from './sizeOf';

/** Longest side of a thumbnail, in pixels, and how hard it is pressed. */
const longest = 480;
const quality = 0.8;

/** Pictures of more pixels are kept and not opened: at four bytes a pixel they take more than a tablet gives to a page. */
const mostPixels = 64e6;

export interface Thumbnail {
  readonly bytes: ArrayBuffer;
  readonly mime: string;
  /** Of the whole picture, upright. */
  readonly width: number;
  readonly height: number;
}

/**
 * A small upright copy. 'cannot' where this browser does not decode the picture, undefined where it has nothing to decode
 * with at all. The browser makes it small while it decodes, and the whole is never drawn on a canvas; only where the file
 * does not say its size (HEIC, AVIF) is it decoded whole first. `lying` is the size before the picture is turned upright.
 */
export const thumbnail = async (
  photo: Blob,
  lying: PixelSize | undefined,
  orientation: number | undefined,
): Promise<Thumbnail | 'cannot' | undefined> => {
  if (typeof createImageBitmap !== 'function') return undefined;
  if (lying && lying.width * lying.height > mostPixels) return 'cannot';
  const size = lying && upright(lying, orientation);
  const small = size && fitted(size);
  const bitmap = await createImageBitmap(photo, {
    imageOrientation: 'from-image',
    // One side only: the other follows, whichever the browser does first, turning or making small.
    ...(small && small.width < size.width ? { resizeWidth: small.width, resizeQuality: 'medium' } : {}),
  }).catch(() => undefined);
  if (!bitmap) return 'cannot';
  try {
    const whole = size ?? { width: bitmap.width, height: bitmap.height };
    const drawnSize = fitted({ width: bitmap.width, height: bitmap.height });
    const pressed = await drawn(bitmap, drawnSize);
    return pressed ? { bytes: await pressed.arrayBuffer(), mime: pressed.type, ...whole } : 'cannot';
  } finally {
    bitmap.close();
  }
};

const fitted = ({ width, height }: PixelSize): PixelSize => {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
};

const drawn = async (bitmap: ImageBitmap, { width, height }: PixelSize): Promise<Blob | null> => {
  if (typeof OffscreenCanvas === 'function') {
    const canvas = new OffscreenCanvas(width, height);
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0, width, height);
    return canvas.convertToBlob({ type: 'image/jpeg', quality });
  }
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, width, height);
  return new Promise((done) => canvas.toBlob(done, 'image/jpeg', quality));
};
