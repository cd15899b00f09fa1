import type { FirstPass, SculptureSummary, SecondPass } from '../../engine/reckoning';
import type { Desk } from '../desk';
import { Refused } from '../outcome';
import { readRecord, recordStamp } from './records';

/** Rises when the way summaries are worked out changes, so that none made the old way is shown. */
const way = 2;

/** What one work comes to, by itself and beside the others. */
export interface Figures {
  readonly first: FirstPass;
  readonly second: SecondPass;
}

interface Kept<T> {
  readonly stamp: string;
  readonly value: T;
}

/** How many works are done, of how many. */
export interface Progress {
  readonly done: number;
  readonly all: number;
}

interface Shelf {
  readonly summaries: Map<string, Kept<SculptureSummary>>;
  readonly figures: Map<string, Kept<Figures>>;
  progress: Progress | null;
  stopped: boolean;
  loaded?: Promise<void>;
  working?: Promise<void>;
}

const shelves = new WeakMap<object, Shelf>();

const shelfOf = (desk: Desk): Shelf => {
  const shelf = shelves.get(desk.store) ?? { summaries: new Map(), figures: new Map(), progress: null, stopped: false };
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

export const keptFigures = async (desk: Desk, sculpture: string): Promise<Figures | undefined> => {
  const shelf = shelfOf(desk);
  const kept = shelf.figures.get(sculpture) ?? (await desk.store.meta<Kept<Figures>>(`figures ${sculpture}`));
  if (kept) shelf.figures.set(sculpture, kept);
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
    shelf.stopped = false;
    for (const [done, sculpture] of sculptures.entries()) {
      if (shelf.stopped) break;
      shelf.progress = { done, all: sculptures.length };
      if ((await keptSummary(desk, sculpture)) && (await keptFigures(desk, sculpture))) continue;
      await workOutOne(desk, sculpture);
      told();
      await breathe();
    }
    shelf.progress = null;
    told();
  });
  shelf.working = mine.catch(() => undefined);
  return mine;
};

export const progressOf = (desk: Desk): Progress | null => shelfOf(desk).progress;

export const stopWork = (desk: Desk): void => {
  shelfOf(desk).stopped = true;
};

const workOutOne = async (desk: Desk, sculpture: string): Promise<void> => {
  const shelf = shelfOf(desk);
  const stamp = stampOf(desk, sculpture);
  try {
    // Scoring is no part of the start: it comes when a figure no longer holds.
    const { firstPass, secondPass } = await import('../../engine/reckoning');
    const today = desk.today();
    const first = firstPass(await readRecord(desk, sculpture), today);
    const second = secondPass(first, today);
    shelf.summaries.set(sculpture, { stamp, value: second.summary });
    shelf.figures.set(sculpture, { stamp, value: { first, second } });
    await desk.store.keepWorkedOut([
      [`summary ${sculpture}`, { stamp, value: second.summary }],
      [`figures ${sculpture}`, { stamp, value: { first, second } }],
    ]);
  } catch (error) {
    // The work was removed while its turn came: the list is asked again by that very change.
    if (!(error instanceof Refused)) throw error;
  }
};
