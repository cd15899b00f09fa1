import type { Page } from 'playwright-core';
import { w } from '../../src/words';

export interface Touch {
  readonly what: 'answer' | 'leave';
  /** From the touch to the frame that shows it, which comes after the record is durable. */
  readonly ms: number;
}

/**
 * Walks on through an open round, own eye first, and times each touch inside the page: from the touch to the frame drawn after
 * the screen changed. The screen changes only once the store's transaction is complete.
 */
export const timeTouches = (page: Page, many: number): Promise<Touch[]> =>
  page.evaluate(
    async ({ many, same, steps }) => {
      const button = (name: string) =>
        [...document.querySelectorAll('button')].find((b) => (b.getAttribute('aria-label') ?? b.textContent) === name);
      const shows = () =>
        [
          document.querySelector('h1')?.getAttribute('aria-label'),
          ...[...document.querySelectorAll('fieldset')].map((f) => f.getAttribute('aria-label')),
          document.querySelector('.read-back')?.textContent,
        ].join('|');
      const drawn = () =>
        new Promise<void>((resolve) => {
          requestAnimationFrame(() => {
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve();
            port2.postMessage(0);
          });
        });
      const changed = (before: string) =>
        new Promise<void>((resolve) => {
          if (shows() !== before) return resolve();
          const watching = new MutationObserver(() => {
            if (shows() === before) return;
            watching.disconnect();
            resolve();
          });
          watching.observe(document.body, { subtree: true, childList: true, attributes: true, characterData: true });
        });
      const timed: { what: 'answer' | 'leave'; ms: number }[] = [];
      for (let i = 0; i < many; i += 1) {
        const on =
          button(same) ?? document.querySelector('.ladder')?.querySelectorAll('button')[steps[i % steps.length]!];
        const leave = document.querySelector<HTMLButtonElement>('.next-zone');
        const control = on ?? leave;
        if (!control) break;
        const before = shows();
        const start = performance.now();
        control.click();
        await changed(before);
        await drawn();
        timed.push({ what: on ? 'answer' : 'leave', ms: performance.now() - start });
        // As a hand would: the next touch comes when the page has come to rest.
        await new Promise((resolve) => setTimeout(resolve, 60));
        if (!location.hash.includes('/zone/')) break;
      }
      return timed;
    },
    { many, same: w.round.ask.againstName.same, steps: [3, 4, 5] },
  );

/** The floor under a touch: one strict put of a row of the same size into an empty store, and a frame. */
export const timeRawPuts = (page: Page, many: number): Promise<number[]> =>
  page.evaluate(async (times) => {
    const opening = indexedDB.open('bench of raw puts', 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore('rows', { autoIncrement: true });
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error);
    });
    const id = '0192f000-0000-7000-8000-00000000de00';
    const coverage = { value: 0.1, low: 0.075, high: 0.125, method: 'ladder' };
    const row = {
      round: `round/${id}`,
      zone: `zone/${id}`,
      at: new Date().toISOString(),
      by: `surveyor/${id}`,
      touch: { do: 'cover', coverage },
    };
    const took: number[] = [];
    for (let i = 0; i < times; i += 1) {
      const start = performance.now();
      await new Promise<void>((resolve, reject) => {
        const writing = db.transaction('rows', 'readwrite', { durability: 'strict' });
        writing.oncomplete = () => resolve();
        writing.onerror = () => reject(writing.error);
        writing.objectStore('rows').put(row);
      });
      await new Promise((resolve) => requestAnimationFrame(resolve));
      took.push(performance.now() - start);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    db.close();
    indexedDB.deleteDatabase('bench of raw puts');
    return took;
  }, many);

/** To be run before the page's own code: notes when the first work of the list is there and would take a touch. */
export const noteUsable = (): void => {
  const look = () => {
    const work = document.querySelector('ol.works a');
    const box = work?.getBoundingClientRect();
    const on = box && document.elementFromPoint(box.left + box.width / 2, box.top + Math.min(box.height / 2, 40));
    if (work && on && work.contains(on)) {
      (globalThis as { usable?: number }).usable = performance.now();
      return;
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
};
