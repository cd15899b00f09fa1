import { StoreProblem } from '../../device/storeProblem';
import {
  contentStamp,
  everythingWord,
  firstStamp,
  holds,
  type Job,
  type Kept,
  type KeptSummary,
  rowOf,
  type Standing,
  type Step,
  shares,
  stampOf,
  type Words,
  type Work,
  workOut,
} from '../../device/workers';
import type { FirmNeed } from '../../engine/firmness';
import type { Advice } from '../../engine/hold';
import type { FirstPass, SculptureSummary } from '../../engine/reckoning';
import type { Trends } from '../../engine/trend';
import type { Desk } from '../desk';

/** Something being worked out beside the page, or left off by a person. */
export interface WorkingOut {
  readonly what: 'figures' | 'firmness' | 'trends';
  readonly state: 'under way' | 'left off';
  /** Works looked through, or redraws made. */
  readonly done: number;
  readonly all: number;
}

type Rows = Map<string, unknown>;

/** What is remembered of a store while the page is open. */
interface Shelf {
  readonly rows: Rows;
  /** What the figures rest on beside the heads of their work, as far as was last seen. */
  words: Words | undefined;
  /** Where everything stood when all figures were last brought up to date. */
  everything: string | undefined;
  /** Rises with each row. */
  version: number;
  loaded?: Promise<void>;
  work?: Work;
  progress: WorkingOut | null;
  /** Where everything stood when it was last tried, and when a person left off: not again before something changes. */
  triedAt?: string;
  leftOffAt?: string;
  redrawnAt?: string;
  followedAt?: string;
}

const shelves = new WeakMap<object, Shelf>();

const shelfOf = ({ store }: Desk): Shelf => {
  const known = shelves.get(store);
  if (known) return known;
  const made: Shelf = { rows: new Map(), words: undefined, everything: undefined, version: 0, progress: null };
  shelves.set(store, made);
  return made;
};

/** Rises whenever more was worked out: for the stamps of questions. */
export const figuresVersion = (desk: Desk): number => shelfOf(desk).version;

/** What the start needs: the small rows, read at once. */
const loaded = (desk: Desk): Promise<void> => {
  const shelf = shelfOf(desk);
  shelf.loaded ??= (async () => {
    const [standing, summaries] = await Promise.all([
      desk.store.meta<Standing>(rowOf.standing),
      desk.store.metas<Kept<unknown>>(rowOf.summary('')),
    ]);
    shelf.words ??= standing?.words;
    shelf.everything ??= standing?.everything;
    for (const [work, kept] of summaries)
      if (!shelf.rows.has(rowOf.summary(work))) shelf.rows.set(rowOf.summary(work), kept);
  })();
  return shelf.loaded;
};

/** A kept row that speaks of the work as it is now. `right`: also of all that was learnt from the other works. */
export interface Found<T> {
  readonly value: T;
  readonly stamp: string;
  readonly right: boolean;
}

/** Of every work, and asked for by lists: kept at hand. The rest is large, and asked for work by work. */
const isLight = (key: string): boolean => !/^(?:first|trends|advice) /.test(key);

/** A row as it lies there, whatever it speaks of. */
export const rowKept = async <T>(desk: Desk, key: string): Promise<T | undefined> => {
  const { rows } = shelfOf(desk);
  const read = rows.get(key) ?? (await desk.store.meta(key));
  // While it was read a newer one may have come.
  const kept = rows.get(key) ?? read;
  if (kept !== undefined && isLight(key)) rows.set(key, kept);
  return kept as T | undefined;
};

/** The row of the list, where it speaks of the work as it is now and today. */
export const summaryFound = async (desk: Desk, work: string): Promise<SummaryFound | undefined> => {
  await loaded(desk);
  const { words } = shelfOf(desk);
  // Nothing was ever worked out: no need to look for it.
  if (!words) return undefined;
  const kept = await rowKept<KeptSummary>(desk, rowOf.summary(work));
  const first = firstStamp(desk.store.headsOf(work), words.own);
  // What the other works taught may have changed meanwhile: the figures stand until they are worked out anew.
  if (!kept?.stamp.startsWith(`${first} `) || !holds(kept, kept.stamp, desk.today())) return undefined;
  const right = kept.stamp === stampOf(desk.store.headsOf(work), words);
  return { value: kept.value, stamp: kept.stamp, right, first, content: contentStamp(first, kept.content) };
};

interface SummaryFound extends Found<SculptureSummary> {
  /** The stamps its larger rows bear. */
  readonly first: string;
  readonly content: string;
}

/** A larger row that belongs to the row of the list. */
const found = async <T>(
  desk: Desk,
  work: string,
  key: string,
  bears: (summary: SummaryFound) => string,
): Promise<Found<T> | undefined> => {
  const summary = await summaryFound(desk, work);
  const kept = summary && (await rowKept<Kept<T>>(desk, key));
  if (!kept || kept.stamp !== bears(summary)) return undefined;
  return { value: kept.value, stamp: kept.stamp, right: summary.right };
};

const ofFirst = ({ first }: SummaryFound): string => first;
const ofSecond = ({ content }: SummaryFound): string => content;

export const needFound = (desk: Desk, work: string) => found<FirmNeed | null>(desk, work, rowOf.need(work), ofSecond);
export const adviceFound = (desk: Desk, work: string) =>
  found<readonly Advice[]>(desk, work, rowOf.advice(work), ofSecond);
export const firstFound = (desk: Desk, work: string) => found<FirstPass>(desk, work, rowOf.first(work), ofFirst);
export const trendsFound = (desk: Desk, work: string) => found<Trends>(desk, work, rowOf.trends(work), ofFirst);

/** True where something changed since all figures were last brought up to date. Before the first work there is nothing to work out. */
export const isBehind = async (desk: Desk): Promise<boolean> => {
  await loaded(desk);
  const { everything } = shelfOf(desk);
  const heads = desk.store.allHeads();
  if (everything === undefined && ![...heads.keys()].some((within) => within.startsWith('sculpture/'))) return false;
  return everything !== everythingWord(heads);
};

const whereAt = (desk: Desk): string => `${desk.today()} ${everythingWord(desk.store.allHeads())}`;

/** Brings all figures up to date beside the page, unless that is under way or a person left it off and nothing changed since. */
export const bringUpToDate = async (desk: Desk): Promise<void> => {
  const shelf = shelfOf(desk);
  const at = whereAt(desk);
  if (shelf.work || shelf.leftOffAt === at || shelf.triedAt === at) return;
  shelf.triedAt = at;
  const asked = { collection: desk.collection, today: desk.today() };
  const parts = shares();
  if (parts > 1 && desk.store.mode === 'writing' && (await worksBehind(desk)) >= manyWorks) {
    const firsts = Array.from({ length: parts }, (_, part): Job => ({ do: 'firsts', ...asked, part, parts }));
    await run(desk, 'figures', firsts);
  }
  if (shelf.leftOffAt !== at) await run(desk, 'figures', [{ do: 'figures', ...asked }]);
};

/** From so many works on it is worth more than one worker. */
const manyWorks = 6;

const worksBehind = async (desk: Desk): Promise<number> => {
  const works = await desk.store.ofKind('sculpture');
  const found = await Promise.all(works.map(({ thing }) => summaryFound(desk, thing)));
  return found.filter((one) => !one?.right).length;
};

/** Redraws the order of these works, unless that was tried for the same figures or a person left it off. */
export const redraw = async (
  desk: Desk,
  stamp: string,
  works: readonly (readonly [work: string, stamp: string])[],
): Promise<void> => {
  const shelf = shelfOf(desk);
  if (shelf.work || shelf.leftOffAt === whereAt(desk) || shelf.redrawnAt === stamp) return;
  shelf.redrawnAt = stamp;
  await run(desk, 'firmness', [{ do: 'firmness', stamp, works, today: desk.today() }]);
};

/** Works out the series of one work, unless that was tried since anything changed. */
export const follow = async (desk: Desk, sculpture: string): Promise<void> => {
  const shelf = shelfOf(desk);
  const at = `${sculpture} ${whereAt(desk)}`;
  if (shelf.work || shelf.followedAt === at) return;
  shelf.followedAt = at;
  await run(desk, 'trends', [{ do: 'trends', collection: desk.collection, sculpture, today: desk.today() }]);
};

/** One piece of work at a time; a second one asked for meanwhile comes when the questions are asked again. */
const run = async (desk: Desk, what: WorkingOut['what'], jobs: readonly Job[]): Promise<void> => {
  const shelf = shelfOf(desk);
  if (shelf.work || desk.store.closed) return;
  shelf.progress = { what, state: 'under way', done: 0, all: 0 };
  const far = jobs.map(() => ({ done: 0, all: 0 }));
  const works = jobs.map((job, i) =>
    workOut(desk.store, job, async (step) => {
      if (!('all' in step)) return hear(desk, shelf, step);
      far[i] = step;
      progressed(desk, shelf, far);
    }),
  );
  const leaveOffAll = () => {
    for (const one of works) one.leaveOff();
  };
  const work: Work = {
    ended: Promise.all(works.map(({ ended }) => ended)).then(() => undefined),
    leaveOff: leaveOffAll,
  };
  shelf.work = work;
  desk.store.tell();
  try {
    await work.ended;
  } catch (error) {
    // What the store refuses here it refuses again, and then aloud, when someone asks.
    leaveOffAll();
    if (!(error instanceof StoreProblem)) throw error;
  } finally {
    delete shelf.work;
    if (shelf.progress?.state === 'under way') shelf.progress = null;
    shelf.version++;
    desk.store.tell();
  }
};

/** The questions are asked again at the end: in the middle they would read the same rows over and over beside the work. */
const hear = async (desk: Desk, shelf: Shelf, step: Exclude<Step, Far>): Promise<void> => {
  if ('words' in step) shelf.words = step.words;
  else {
    for (const [key, row] of step.rows) {
      if (key === rowOf.standing) shelf.everything = (row as Standing).everything;
      // What the disk keeps is read from there when it is asked for.
      else if (isLight(key) || desk.store.mode === 'reading') shelf.rows.set(key, row);
    }
    await desk.store.keepWorkedOut(step.rows);
  }
};

type Far = { readonly done: number; readonly all: number };

const progressed = (desk: Desk, shelf: Shelf, far: readonly Far[]): void => {
  // What was told before the work was left off may come after.
  if (shelf.progress?.state !== 'under way') return;
  const sum = (of: (one: Far) => number): number => far.reduce((total, one) => total + of(one), 0);
  shelf.progress = { ...shelf.progress, done: sum(({ done }) => done), all: sum(({ all }) => all) };
  desk.store.tell();
};

export const progressOf = (desk: Desk): WorkingOut | null => shelfOf(desk).progress;

/** Leaves off what is under way; it stays so until something changes or a person asks for it again. */
export const leaveOff = (desk: Desk): void => {
  const shelf = shelfOf(desk);
  if (!shelf.work || !shelf.progress) return;
  shelf.leftOffAt = whereAt(desk);
  shelf.progress = { ...shelf.progress, state: 'left off' };
  shelf.work.leaveOff();
  desk.store.tell();
};

export const goOn = (desk: Desk): void => {
  const shelf = shelfOf(desk);
  delete shelf.leftOffAt;
  delete shelf.triedAt;
  delete shelf.redrawnAt;
  shelf.progress = null;
  shelf.version++;
  desk.store.tell();
};
