import type { Page } from 'playwright-core';

/** One touch as the browser itself timed it: Event Timing API (W3C), all events of one interactionId taken together. */
export interface Interaction {
  /** From the touch to the next frame drawn after all its handlers, in ms; the browser rounds to 8. */
  readonly ms: number;
  /** Of this: before the first handler, in the handlers. The rest went into drawing. */
  readonly waited: number;
  readonly handled: number;
  /** What was touched. */
  readonly on: string;
}

/** To be run before the page's own code: keeps what the browser tells of each touch. */
export const noteInteractions = (): void => {
  interface Timed extends PerformanceEntry {
    readonly interactionId: number;
    readonly processingStart: number;
    readonly processingEnd: number;
    readonly target: Element | null;
  }
  const kept = new Map<number, { ms: number; waited: number; handled: number; on: string }>();
  Object.assign(globalThis, { interactions: kept });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as unknown as Timed[]) {
      if (!entry.interactionId) continue;
      const before = kept.get(entry.interactionId);
      if (before && before.ms >= entry.duration) continue;
      const button = entry.target?.closest('button, a, label');
      kept.set(entry.interactionId, {
        ms: entry.duration,
        waited: entry.processingStart - entry.startTime,
        handled: entry.processingEnd - entry.processingStart,
        on: before?.on || (button?.getAttribute('aria-label') ?? button?.textContent ?? entry.target?.tagName ?? ''),
      });
    }
  }).observe({ type: 'event', durationThreshold: 16, buffered: true } as PerformanceObserverInit);
};

/** Touches faster than 16 ms are not told of by the browser. */
export const interactionsOf = (page: Page): Promise<Interaction[]> =>
  page.evaluate(() => [...(globalThis as unknown as { interactions: Map<number, Interaction> }).interactions.values()]);

/** Interaction to Next Paint: the worst touch, one of every 50 left out, as web.dev defines it (from memory). */
export const inpOf = (touches: readonly Interaction[], made: number): Interaction | undefined =>
  [...touches].sort((a, b) => b.ms - a.ms)[Math.floor(made / 50)];
