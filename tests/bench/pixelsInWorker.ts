import type { Page } from 'playwright-core';
import type { Tablet } from '../browser/chromium';
import { askWorker, handPhotos, pageOfWorker } from '../browser/pixelsAsked';
import type { Host } from '../browser/server';
import type { LargePhoto } from '../files/largePhoto';
import { type Line, median } from './figures';

const runs = 5;

/** A thumbnail by the same calls as when a photo is taken, in the page at full speed. */
const timeThumbnail = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const { photos = {} } = globalThis as { photos?: Record<string, ArrayBuffer> };
    const blob = new Blob([photos['photo 0'] ?? ''], { type: 'image/jpeg' });
    const began = performance.now();
    const small = await createImageBitmap(blob, {
      imageOrientation: 'from-image',
      resizeWidth: 480,
      resizeQuality: 'medium',
    });
    const canvas = new OffscreenCanvas(small.width, small.height);
    canvas.getContext('2d')?.drawImage(small, 0, 0);
    await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 });
    small.close();
    return performance.now() - began;
  });

/** Milliseconds a megapixel in the built worker, at full speed: a worker cannot be slowed. */
export const timePixels = async (tablet: Tablet, host: Pick<Host, 'url'>, photo: LargePhoto): Promise<Line[]> => {
  const page = await pageOfWorker(tablet, host);
  const names = Array.from({ length: runs }, (_, run) => `photo ${run}`);
  await handPhotos(page, Object.fromEntries(names.map((name) => [name, photo.jpeg])));
  const taps = { green: photo.green, sound: photo.sound };
  const asks = names.flatMap((sha256) => {
    const kept = { sha256, size: photo.size };
    const tap = { do: 'colour', photo: kept, at: [0.5, 0.5] } as const;
    return [tap, tap, { do: 'mask', photo: kept, part: photo.zone, taps, seed: 1 } as const];
  });
  const took = await askWorker(page, asks);
  const thumbs: number[] = [];
  for (let run = 0; run < runs; run++) thumbs.push(await timeThumbnail(page));
  await page.close();
  const megapixels = (photo.size.width * photo.size.height) / 1e6;
  const every = (which: number) => median(took.filter((_, i) => i % 3 === which).map(({ ms }) => ms));
  const line = (what: string, ms: number): Line => ({ what, measured: ms / megapixels, unit: 'ms' });
  return [
    line(`photo of ${megapixels.toFixed(1)} megapixels unpacked and tapped, a megapixel`, every(0)),
    { what: '  a tap on the photo at hand', measured: every(1), unit: 'ms' },
    line('  mask of a zone on it, with its picture and dots, a megapixel', every(2)),
    line('  thumbnail, a megapixel', median(thumbs)),
  ];
};
