import type { CDPSession } from 'playwright-core';

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Microseconds by the clock, and those the thread itself was at work. */
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

export interface LongestTask {
  /** Milliseconds the page's thread worked at it, slowing included: what it costs on a tablet that has nothing else to do. */
  readonly worked: number;
  /** Milliseconds by the clock, with the time the machine gave to others. */
  readonly byTheClock: number;
}

/** The longest task on the main thread of any page, during a stretch. `browser` is a session of the whole browser. */
export const longestTask = async (browser: CDPSession, stretch: () => Promise<void>): Promise<LongestTask> => {
  const events: TraceEvent[] = [];
  const collect = ({ value }: { value: unknown[] }) => void events.push(...(value as TraceEvent[]));
  browser.on('Tracing.dataCollected', collect);
  await browser.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline'], excludedCategories: ['*'] },
  });
  await stretch();
  const complete = new Promise((resolve) => browser.once('Tracing.tracingComplete', resolve));
  await browser.send('Tracing.end');
  await complete;
  browser.off('Tracing.dataCollected', collect);
  const threadOf = ({ pid, tid }: TraceEvent) => `${pid}/${tid}`;
  const pages = new Set(
    events.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain').map(threadOf),
  );
  const tasks = events.filter((event) => event.name === 'RunTask' && pages.has(threadOf(event)));
  if (tasks.length === 0) throw new Error('The browser told of no task of the page.');
  const longest = (of: 'dur' | 'tdur') => tasks.reduce((most, task) => Math.max(most, task[of] ?? 0), 0) / 1000;
  return { worked: longest('tdur'), byTheClock: longest('dur') };
};
