import sharp from 'sharp';
import { vi } from 'vitest';

/** A bitmap as the worker uses it: unpacked upright by sharp. */
class Bitmap {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
  closed = false;
  constructor(width: number, height: number, rgba: Uint8Array) {
    this.width = width;
    this.height = height;
    this.rgba = rgba;
  }
  close(): void {
    this.closed = true;
  }
}

interface Options {
  readonly imageOrientation?: string;
  readonly resizeWidth?: number;
}

class Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
  constructor(one: number | Uint8ClampedArray, width: number, height?: number) {
    this.data = typeof one === 'number' ? new Uint8ClampedArray(one * width * 4) : one;
    this.width = typeof one === 'number' ? one : width;
    this.height = height ?? (typeof one === 'number' ? width : one.length / 4 / width);
  }
}

/** What the canvases and bitmaps of a test did. */
export interface Drawn {
  readonly bitmaps: Bitmap[];
  /** How often a bitmap was drawn on a canvas. */
  drawings: number;
  /** Pixels of the largest canvas there was. */
  largest: number;
}

/**
 * Gives the test what a browser's worker has to read pixels with, as far as it is used: whole boxes, nearest pixel. `spoilt`: what a browser
 * set against being followed does to a value that is read.
 */
export const standInCanvas = (spoilt: (value: number, at: number) => number = (value) => value): Drawn => {
  const drawn: Drawn = { bitmaps: [], drawings: 0, largest: 0 };
  vi.stubGlobal('createImageBitmap', async (blob: Blob, { resizeWidth }: Options = {}) => {
    const whole = sharp(await blob.arrayBuffer()).rotate();
    const sized = resizeWidth ? sharp(await whole.png().toBuffer()).resize(resizeWidth) : whole;
    const { data, info } = await sized.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const bitmap = new Bitmap(info.width, info.height, data);
    drawn.bitmaps.push(bitmap);
    return bitmap;
  });
  vi.stubGlobal('ImageData', Picture);
  vi.stubGlobal(
    'OffscreenCanvas',
    class {
      readonly width: number;
      readonly height: number;
      readonly pixels: Uint8ClampedArray;
      constructor(width: number, height: number) {
        this.width = width;
        this.height = height;
        this.pixels = new Uint8ClampedArray(width * height * 4);
        drawn.largest = Math.max(drawn.largest, width * height);
      }
      getContext() {
        const { width, pixels } = this;
        return {
          canvas: this,
          clearRect: () => pixels.fill(0),
          drawImage: (from: Bitmap, ...box: readonly number[]) => {
            drawn.drawings += 1;
            if (from.closed) throw new Error('drawn from a bitmap that was let go');
            const [left, top, across, down, toX, toY, wide, high] = box as [
              ...[number, number, number, number],
              ...[number, number, number, number],
            ];
            for (let y = 0; y < high; y++)
              for (let x = 0; x < wide; x++) {
                const column = Math.min(from.width - 1, Math.floor(left + ((x + 0.5) * across) / wide));
                const row = Math.min(from.height - 1, Math.floor(top + ((y + 0.5) * down) / high));
                const at = 4 * (row * from.width + column);
                pixels.set(from.rgba.subarray(at, at + 4), 4 * ((toY + y) * width + toX + x));
              }
          },
          putImageData: ({ data, width: wide, height: high }: Picture, left: number, top: number) => {
            for (let y = 0; y < high; y++)
              pixels.set(data.subarray(4 * y * wide, 4 * (y + 1) * wide), 4 * ((top + y) * width + left));
          },
          getImageData: (left: number, top: number, wide: number, high: number) => {
            const data = new Uint8ClampedArray(wide * high * 4);
            for (let y = 0; y < high; y++)
              data.set(
                pixels.subarray(4 * ((top + y) * width + left), 4 * ((top + y) * width + left + wide)),
                4 * y * wide,
              );
            return new Picture(data.map(spoilt), wide, high);
          },
        };
      }
      async convertToBlob() {
        const png = await sharp(this.pixels, { raw: { width: this.width, height: this.height, channels: 4 } })
          .png()
          .toBuffer();
        return new Blob([new Uint8Array(png)], { type: 'image/png' });
      }
    },
  );
  return drawn;
};
