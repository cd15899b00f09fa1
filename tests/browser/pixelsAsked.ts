import type { Page } from 'playwright-core';
import type { PixelsAsked, Said } from '../../src/device/pixels/asked';
import type { Tablet } from './chromium';
import type { Host } from './server';

/** What the worker of the built app answered to one question. */
export interface Answered {
  readonly ms: number;
  /** How often it said how far it was. */
  readonly steps: number;
  readonly said: Said;
}

/** A page that may start the worker by its name: a picture's own, same origin and without the app's policy. */
export const pageOfWorker = async (tablet: Tablet, host: Pick<Host, 'url'>): Promise<Page> => {
  const page = await tablet.context.newPage();
  page.setDefaultTimeout(120_000);
  await page.goto(`${host.url}icon-192.png`);
  return page;
};

/** Hands photos to the page once, by name: JPEGs in base64. */
export const handPhotos = (page: Page, photos: Readonly<Record<string, Uint8Array>>): Promise<void> =>
  page.evaluate(
    async (given) => {
      const kept = globalThis as { photos?: Record<string, ArrayBuffer> };
      kept.photos ??= {};
      for (const [name, base64] of given)
        kept.photos[name] = await (await fetch(`data:image/jpeg;base64,${base64}`)).arrayBuffer();
    },
    Object.entries(photos).map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')] as const),
  );

/** Asks one worker after another question; `leaveAt`: after so many steps it is told that the question is no longer wanted. */
export const askWorker = (page: Page, asks: readonly PixelsAsked[], leaveAt?: number): Promise<Answered[]> =>
  page.evaluate(
    async ({ asks, leaveAt }) => {
      const { photos = {} } = globalThis as { photos?: Record<string, ArrayBuffer> };
      const worker = new Worker('./pixels.js', { type: 'module' });
      const answers: { ms: number; steps: number; said: Said }[] = [];
      for (const [id, ask] of asks.entries()) {
        const began = performance.now();
        let steps = 0;
        const said = await new Promise<Said>((resolve, reject) => {
          worker.onmessage = ({ data }: MessageEvent<Said>) => {
            if ('wanted' in data) {
              const bytes = photos[data.wanted]?.slice(0);
              const photo = bytes && { bytes, mime: 'image/jpeg' };
              worker.postMessage({ bring: data.wanted, photo }, bytes ? [bytes] : []);
            } else if ('done' in data) {
              steps += 1;
              if (steps === leaveAt) worker.postMessage({ leaveOff: id });
            } else resolve(data);
          };
          worker.onerror = (event) => reject(new Error(event.message));
          worker.postMessage({ id, ask });
        });
        answers.push({ ms: performance.now() - began, steps, said });
      }
      worker.terminate();
      return answers;
    },
    { asks, leaveAt },
  );
