/** Longest side of a thumbnail, in pixels, and how hard it is pressed. */
const longest = 480;
const quality = 0.8;

export interface Thumbnail {
  readonly bytes: ArrayBuffer;
  readonly mime: string;
  /** Of the whole picture, upright. */
  readonly width: number;
  readonly height: number;
}

/**
 * A small upright copy. 'cannot' where this browser does not decode the picture, undefined where it has nothing to decode
 * with at all. The picture is decoded once, off the main thread, and let go of at once.
 */
export const thumbnail = async (photo: Blob): Promise<Thumbnail | 'cannot' | undefined> => {
  if (typeof createImageBitmap !== 'function') return undefined;
  const whole = await createImageBitmap(photo, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!whole) return 'cannot';
  try {
    const { width, height } = whole;
    const scale = Math.min(1, longest / Math.max(width, height));
    const small = await drawn(whole, Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
    return small ? { bytes: await small.arrayBuffer(), mime: small.type, width, height } : 'cannot';
  } finally {
    whole.close();
  }
};

const drawn = async (bitmap: ImageBitmap, width: number, height: number): Promise<Blob | null> => {
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
