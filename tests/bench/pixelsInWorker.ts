import type { Page } from 'playwright-core';
import type { PhotoAsked, PhotoSaid } from '../../src/device/photo/photosWorker';
import type { PixelsAsked } from '../../src/device/pixels/asked';
import type { Tablet } from '../browser/chromium';
import { askWorker, handPhotos, pageOfWorker } from '../browser/pixelsAsked';
import type { Host } from '../browser/server';
import type { LargePhoto } from '../files/largePhoto';
import { type Line, median } from './figures';

const runs = 5;

/** A photo taken in by the built worker that does so: read, hashed, made small. */
const timeTakenIn = (page: Page, many: number): Promise<number[]> =>
  page.evaluate(async (many) => {
    const { photos = {} } = globalThis as { photos?: Record<string, ArrayBuffer> };
    const file = new Blob([photos['photo 0'] ?? ''], { type: 'image/jpeg' });
    const worker = new Worker('./photos.js', { type: 'module' });
    const took: number[] = [];
    for (let run = 0; run < many; run++) {
      const began = performance.now();
      await new Promise<void>((resolve, reject) => {
        worker.onmessage = ({ data }: MessageEvent<PhotoSaid>) =>
          'read' in data && data.read.thumb ? resolve() : reject(new Error('no thumbnail'));
        worker.onerror = (event) => reject(new Error(event.message));
        worker.postMessage({ file, options: {} } satisfies PhotoAsked);
      });
      took.push(performance.now() - began);
    }
    worker.terminate();
    return took;
  }, many);

/** What the browser takes for a photo unpacked whole, and for a thumbnail of it by the calls of device/photo/thumbnail.ts; full speed. */
const timeBrowser = (page: Page, many: number): Promise<{ unpacked: number[]; small: number[] }> =>
  page.evaluate(async (many) => {
    const { photos = {} } = globalThis as { photos?: Record<string, ArrayBuffer> };
    const file = new Blob([photos['photo 0'] ?? ''], { type: 'image/jpeg' });
    const [unpacked, small]: [number[], number[]] = [[], []];
    for (let run = 0; run < many; run++) {
      let began = performance.now();
      (await createImageBitmap(file, { imageOrientation: 'from-image' })).close();
      unpacked.push(performance.now() - began);
      began = performance.now();
      const bitmap = await createImageBitmap(file, {
        imageOrientation: 'from-image',
        resizeWidth: 480,
        resizeQuality: 'medium',
      });
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
      await (await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.8 })).arrayBuffer();
      bitmap.close();
      small.push(performance.now() - began);
    }
    return { unpacked, small };
  }, many);

/** Milliseconds a megapixel in the built worker, at full speed: a worker cannot be slowed. */
export const timePixels = async (tablet: Tablet, host: Pick<Host, 'url'>, photo: LargePhoto): Promise<Line[]> => {
  const page = await pageOfWorker(tablet, host);
  const names = Array.from({ length: runs }, (_, run) => `photo ${run}`);
  await handPhotos(page, Object.fromEntries(names.map((name) => [name, photo.jpeg])));
  const taps = { green: photo.green, sound: photo.sound };
  const asks = names.flatMap((sha256) => {
    const kept = { sha256, size: photo.size };
    const tap = { do: 'colour', photo: kept, at: [0.5, 0.5] } as const;
    const mask = { do: 'mask', photo: kept, part: photo.zone, taps, seed: 1 } as const;
    const brush = [{ as: 'sound' as const, radius: 0.02, path: [[0.5, 0.5] as [number, number]] }];
    return [tap, tap, mask, { ...mask, taps: { ...taps, brush } }];
  });
  const took = await askWorker(page, asks);
  const change: PixelsAsked = {
    do: 'change',
    ...{ part: photo.zone, matrix: [1, 0, 0, 0, 1, 0, 0, 0, 1], edge: 0.004 },
    ...{ earlierTaps: taps, laterTaps: taps },
    ...{ earlier: { sha256: 'photo 0', size: photo.size }, later: { sha256: 'photo 1', size: photo.size } },
  };
  const [changed] = await askWorker(page, [change]);
  const takenIn = await timeTakenIn(page, runs);
  const browser = await timeBrowser(page, runs);
  await page.close();
  const megapixels = (photo.size.width * photo.size.height) / 1e6;
  const every = (which: number) => median(took.filter((_, i) => i % 4 === which).map(({ ms }) => ms));
  const line = (what: string, ms: number): Line => ({ what, measured: ms / megapixels, unit: 'ms' });
  return [
    line('photo unpacked whole by the browser, a megapixel', median(browser.unpacked)),
    line('thumbnail of it, a megapixel of the photo', median(browser.small)),
    line(`photo of ${megapixels.toFixed(1)} megapixels unpacked and tapped, a megapixel`, every(0)),
    { what: '  a tap on the photo at hand', measured: every(1), unit: 'ms' },
    line('  mask of a zone on it, with its picture and dots, a megapixel', every(2)),
    { what: '  the same after a stroke of the brush', measured: every(3), unit: 'ms' },
    { what: '  what changed in a zone between two of them', measured: changed?.ms ?? Number.NaN, unit: 'ms' },
    line('  photo taken in: read, hashed, thumbnail, a megapixel', median(takenIn)),
  ];
};
