import type { Desk } from '../desk';
import { Refused } from '../outcome';
import { readRecord, recordStamp } from './records';
import type { LatestNeed, SculptureSummary } from './summary';

/** Rises when the way summaries are worked out changes, so that none made the old way is shown. */
const way = 1;

interface Kept<T> {
  readonly stamp: string;
  readonly value: T;
}

interface Shelf {
  readonly summaries: Map<string, Kept<SculptureSummary>>;
  readonly needs: Map<string, Kept<LatestNeed | null>>;
  loaded?: Promise<void>;
  working?: Promise<void>;
}

const shelves = new WeakMap<object, Shelf>();

const shelfOf = (desk: Desk): Shelf => {
  const shelf = shelves.get(desk.store) ?? { summaries: new Map(), needs: new Map() };
  shelves.set(desk.store, shelf);
  return shelf;
};

const stampOf = (desk: Desk, sculpture: string): string => `${way} ${recordStamp(desk, sculpture)}`;

/** What was worked out before, also before a restart, and still holds; undefined for the rest. */
export const keptSummary = async (desk: Desk, sculpture: string): Promise<SculptureSummary | undefined> => {
  const shelf = shelfOf(desk);
  shelf.loaded ??= desk.store.metas<Kept<SculptureSummary>>('summary ').then((rows) => {
    for (const [key, kept] of rows) if (!shelf.summaries.has(key)) shelf.summaries.set(key, kept);
  });
  await shelf.loaded;
  const kept = shelf.summaries.get(sculpture);
  return kept?.stamp === stampOf(desk, sculpture) ? kept.value : undefined;
};

export const keptNeed = async (desk: Desk, sculpture: string): Promise<LatestNeed | null | undefined> => {
  const shelf = shelfOf(desk);
  const kept = shelf.needs.get(sculpture) ?? (await desk.store.meta<Kept<LatestNeed | null>>(`need ${sculpture}`));
  if (kept) shelf.needs.set(sculpture, kept);
  return kept?.stamp === stampOf(desk, sculpture) ? kept.value : undefined;
};

/** Lets the screen draw and the finger be heard before the next sculpture. */
const breathe = (): Promise<void> => new Promise((go) => setTimeout(go));

/**
 * Works out the summaries that no longer hold, one sculpture at a time, telling after each. A second call while one runs
 * waits for it and goes on from there.
 */
export const workOut = async (desk: Desk, sculptures: readonly string[], told: () => void): Promise<void> => {
  const shelf = shelfOf(desk);
  const before = shelf.working ?? Promise.resolve();
  const mine = before.then(async () => {
    for (const sculpture of sculptures) {
      if ((await keptSummary(desk, sculpture)) && (await keptNeed(desk, sculpture)) !== undefined) continue;
      await workOutOne(desk, sculpture);
      told();
      await breathe();
    }
  });
  shelf.working = mine.catch(() => undefined);
  return mine;
};

const workOutOne = async (desk: Desk, sculpture: string): Promise<void> => {
  const shelf = shelfOf(desk);
  const stamp = stampOf(desk, sculpture);
  try {
    // Scoring is no part of the start: it comes when a figure no longer holds.
    const { summarise } = await import('./summary');
    const { summary, need } = summarise(await readRecord(desk, sculpture));
    shelf.summaries.set(sculpture, { stamp, value: summary });
    shelf.needs.set(sculpture, { stamp, value: need });
    await desk.store.keepWorkedOut([
      [`summary ${sculpture}`, { stamp, value: summary }],
      [`need ${sculpture}`, { stamp, value: need }],
    ]);
  } catch (error) {
    // The work was removed while its turn came: the list is asked again by that very change.
    if (!(error instanceof Refused)) throw error;
  }
};
