import type { Size } from '../../engine/photo';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { type Box, sizeWithin } from './box';
import { pixelNumbers } from './pixelNumbers';

/** A photo unpacked and upright, as long as it is held. It takes four bytes a pixel: hold one at a time, and close it. */
export interface Picture {
  /** Pixels it can be read at: those of the photo, or fewer where it has more than are worked. */
  readonly size: Size;
  /** Of the photo as it was kept. */
  readonly whole: Size;
  /** Pixels of a box of the picture, shown at `size`: red, green, blue, opacity, row by row. The next reading may write over them. */
  read(box: Box, size: Size): Uint8ClampedArray<ArrayBuffer>;
  close(): void;
}

/** Unpacks a photo. `known`: its upright size, where it is known, so that a very large one is never held whole. Rejects with a StoreProblem. */
export const pictureOf = async (bytes: ArrayBuffer, mime: string, known: Size | undefined): Promise<Picture> => {
  if (typeof createImageBitmap !== 'function' || typeof OffscreenCanvas !== 'function')
    throw new StoreProblem(deviceReason('pixels not at hand', {}));
  const fitting = known && sizeWithin(known, pixelNumbers.most);
  const bitmap = await createImageBitmap(new Blob([bytes], { type: mime }), {
    imageOrientation: 'from-image',
    // One side only: the other follows, whichever the browser does first, turning or making small.
    ...(fitting && fitting.width < known.width ? { resizeWidth: fitting.width, resizeQuality: 'medium' } : {}),
  }).catch(() => {
    throw new StoreProblem(deviceReason('picture not opened', {}));
  });
  const held: Size = { width: bitmap.width, height: bitmap.height };
  const read = reader(bitmap);
  return { size: sizeWithin(held, pixelNumbers.most), whole: known ?? held, read, close: () => bitmap.close() };
};

/** One canvas for all readings, as large as the largest of them: a browser counts each canvas against what it gives a page. */
const reader = (bitmap: ImageBitmap): Picture['read'] => {
  let drawn: OffscreenCanvasRenderingContext2D | undefined;
  return ({ left, top, width, height }, size) => {
    if (!drawn || drawn.canvas.width < width || drawn.canvas.height < height) drawn = canvasOf(width, height);
    const [across, down] = [bitmap.width / size.width, bitmap.height / size.height];
    const whole = across === 1 && down === 1;
    drawn.imageSmoothingEnabled = !whole;
    drawn.imageSmoothingQuality = 'medium';
    drawn.clearRect(0, 0, width, height);
    drawn.drawImage(bitmap, left * across, top * down, width * across, height * down, 0, 0, width, height);
    return drawn.getImageData(0, 0, width, height).data;
  };
};

const canvasOf = (width: number, height: number): OffscreenCanvasRenderingContext2D => {
  const drawn = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (!drawn) throw new StoreProblem(deviceReason('pixels not at hand', {}));
  return drawn;
};

/** A picture of our own making as a PNG. */
export const pngOf = async ({ width, height }: Size, box: Box, rgba: Uint32Array<ArrayBuffer>): Promise<Blob> => {
  const drawn = canvasOf(width, height);
  const pixels = new ImageData(new Uint8ClampedArray(rgba.buffer), box.width, box.height);
  drawn.putImageData(pixels, box.left, box.top);
  return drawn.canvas.convertToBlob({ type: 'image/png' });
};

/** Values a canvas must give back as they were put: dark, bright, and each channel by itself. */
const probe = [0, 1, 17, 18, 90, 128, 143, 200, 254, 255];

/**
 * Some browsers, set to leave no trace, change what is read from a canvas a little, or give back noise. A class could then not be told
 * the same way twice: throws a StoreProblem where that is so.
 */
export const mustReadTrue = (): void => {
  const drawn = canvasOf(probe.length, 8);
  const put = new ImageData(probe.length, 8);
  put.data.forEach((_, i) => {
    put.data[i] = i % 4 === 3 ? 255 : (probe[(i * 7) % probe.length] as number);
  });
  drawn.putImageData(put, 0, 0);
  const back = drawn.getImageData(0, 0, probe.length, 8).data;
  if (back.some((value, i) => value !== put.data[i])) throw new StoreProblem(deviceReason('pixels altered', {}));
};
