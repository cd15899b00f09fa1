import type { Page } from 'playwright-core';
import { w } from '../../src/words';
import { tabletUpright } from '../browser/app';
import type { Tablet } from '../browser/chromium';
import type { Host } from '../browser/server';
import type { Line } from './figures';
import { slow, slowdown } from './slowed';

const redrawn = (page: Page) => page.getByText(/The order was drawn 1,000 times anew/);

/** Notes how long the longest task of the page was while figures came in. */
const noteTasks = (): void => {
  const found = globalThis as { longest?: number };
  found.longest = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) found.longest = Math.max(found.longest ?? 0, duration);
  }).observe({ type: 'longtask' });
};

/**
 * Figures worked out from nothing after an import, then kept. A worker cannot be slowed: its time at full speed is told times the
 * slowdown, its waits for the disk with it. What the page does is slowed as it is.
 */
export const timeFigures = async (tablet: Tablet, host: Pick<Host, 'url'>): Promise<Line[]> => {
  const page = await tablet.context.newPage();
  page.setDefaultTimeout(300_000);
  await page.setViewportSize(tabletUpright);
  await page.addInitScript(noteTasks);
  const spans: { readonly start: number; end: number }[] = [];
  page.on('worker', (worker) => {
    const span = { start: performance.now(), end: Number.NaN };
    spans.push(span);
    worker.on('close', () => {
      span.end = performance.now();
    });
  });
  await page.goto(`${host.url}#/next-steps`);
  await redrawn(page).waitFor();
  const longest = await page.evaluate(() => (globalThis as { longest?: number }).longest ?? Number.NaN);
  const drawing = spans.at(-1);
  const figures = spans.slice(0, -1);
  const from = Math.min(...figures.map(({ start }) => start));
  const cold = Math.max(...figures.map(({ end }) => end)) - from;
  const workers = Math.max(1, figures.length - 1);

  await slow(page);
  const reopened = async (hash: string, shown: ReturnType<typeof redrawn>): Promise<number> => {
    await page.goto(`${host.url}#/settings`);
    await page.getByRole('heading', { level: 1, name: w.settings.title }).waitFor();
    await page.waitForTimeout(1000);
    const began = performance.now();
    await page.goto(host.url + hash);
    await shown.waitFor();
    return performance.now() - began;
  };
  const steps = await reopened('#/next-steps', redrawn(page));
  await page.goto(`${host.url}#/`);
  const work = await page.locator('ol.works a').first().getAttribute('href');
  const thenAndNow = `${work}/then-and-now`;
  const compared = page.getByRole('heading', { name: w.thenAndNow.headline });
  await page.goto(host.url + thenAndNow);
  await compared.waitFor();
  const then = await reopened(thenAndNow, compared);
  await page.close();
  return [
    {
      what: `figures from nothing, ${workers} workers, full speed times ${slowdown}`,
      measured: cold * slowdown,
      most: 15_000,
      unit: 'ms',
    },
    {
      what: `order redrawn 1,000 times, full speed times ${slowdown}`,
      measured: drawing ? (drawing.end - drawing.start) * slowdown : Number.NaN,
      most: 5000,
      unit: 'ms',
    },
    { what: `longest task of the page meanwhile, times ${slowdown}`, measured: longest * slowdown, unit: 'ms' },
    { what: 'Next steps reopened', measured: steps, most: 1000, unit: 'ms' },
    { what: 'Then & now reopened', measured: then, most: 1000, unit: 'ms' },
  ];
};
