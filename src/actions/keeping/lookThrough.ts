import { sha256 } from '../../device/hash';
import type { LookedThrough } from '../../device/store';
import { lookedKey, workOut } from '../../device/workers';
import { daysBetween, nameOf } from '../../engine/record';
import { journalStart } from '../arrivingJournal';
import type { Desk, Outcome, Question } from '../desk';
import { inTurn } from '../inTurn';
import { attempt, refuse } from '../outcome';
import { ask } from '../questions/question';
import { refusal } from '../reasonCodes';
import { rememberedAnew, rememberedVersion } from '../remembered';

/** What looking through everything came to, and on which day. */
export interface Checked extends LookedThrough {
  /** YYYY-MM-DD. */
  readonly day: string;
}

export interface Checking {
  /** Parts of one whole. */
  heard?(done: number, all: number): void;
  readonly signal?: AbortSignal;
}

/**
 * Counts and sums up every entry, holds every present state against its entries and hashes every photo anew, beside the page, while work
 * goes on. Changes nothing; what it came to is kept on this device.
 */
export const checkStore = (
  desk: Desk,
  { heard, signal }: Checking = {},
): Promise<Outcome<{ readonly checked: Checked }>> =>
  attempt(async () => {
    let looked: LookedThrough | undefined;
    const work = workOut(desk.store, { do: 'look through' }, async (step) => {
      if ('all' in step) heard?.(step.done, step.all);
      else if ('rows' in step) looked = step.rows.find(([key]) => key === lookedKey)?.[1] as LookedThrough | undefined;
    });
    const leave = () => work.leaveOff();
    signal?.addEventListener('abort', leave);
    if (signal?.aborted) leave();
    await work.ended.finally(() => signal?.removeEventListener('abort', leave));
    if (!looked || signal?.aborted) return refuse(refusal('checking left off', {}));
    const checked: Checked = { ...looked, day: desk.today() };
    await desk.store.keepWorkedOut([[lookedKey, checked]]);
    rememberedAnew(desk);
    return { checked };
  });

/** What the last look through came to; null where there was none. */
export const lastChecked = (desk: Desk): Question<Checked | null> =>
  ask(
    desk,
    'last checked',
    () => rememberedVersion(desk),
    async () => (await desk.store.meta<Checked>(lookedKey)) ?? null,
  );

/** Days after which everything is looked through by itself. Common practice for stored pictures, no source; our own. */
const daysUntilNext = 30;

/**
 * Looks through everything where that was last done a month ago or longer. To be called when nothing else is to be done. Says nothing
 * where it was left off or refused: it is tried again the next time.
 */
export const checkWhenDue = async (desk: Desk, checking: Checking = {}): Promise<void> => {
  const { store } = desk;
  if (desk.invented || store.mode === 'reading' || (await store.held()).entries === 0) return;
  const last = await store.meta<Checked>(lookedKey);
  // Either way: a clock that was ahead would else put it off for years.
  if (last && Math.abs(daysBetween(last.day, desk.today())) < daysUntilNext) return;
  await checkStore(desk, checking);
};

/** Present states and counts made anew from the entries, which alone are the record; then everything is looked through again. */
export const makeAnew = (desk: Desk, checking: Checking = {}): Promise<Outcome<{ readonly checked: Checked }>> =>
  attempt(async () => {
    await inTurn(desk.store, () => desk.store.rebuildCurrent());
    return {};
  }).then((made) => (made.ok ? checkStore(desk, checking) : made));

/**
 * Takes off this device the bytes of photos it has damaged: what is said of them stays, and a bag that holds them brings them back. One
 * that is whole by now stays.
 */
export const setDamagedAside = (desk: Desk): Promise<Outcome<Cleared>> =>
  dropThese(desk, 'altered', async (name) => {
    const kept = await desk.store.photo(name);
    return kept !== undefined && !(kept.bytes instanceof ArrayBuffer && (await sha256(kept.bytes)) === name);
  });

/** Takes away bytes nothing speaks of, unless by now something does, or an import under way is about to. */
export const clearStray = (desk: Desk): Promise<Outcome<Cleared>> =>
  dropThese(desk, 'orphans', async (name) => {
    const coming = await desk.store.metas<readonly string[]>(journalStart);
    if (coming.some(([, names]) => names.includes(name))) return false;
    return (await desk.store.entriesOf(nameOf.photo(name))).length === 0;
  });

export interface Cleared {
  readonly photos: number;
}

/** Each is looked at again, for since then one may have been taken anew, or spoken of. */
const dropThese = (
  desk: Desk,
  which: 'altered' | 'orphans',
  still: (name: string) => Promise<boolean>,
): Promise<Outcome<Cleared>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const last = (await desk.store.meta<Checked>(lookedKey)) ?? refuse(refusal('nothing changed', {}));
      let photos = 0;
      for (const name of last[which]) {
        if (!(await still(name))) continue;
        await desk.store.dropPhoto(name);
        photos++;
      }
      await desk.store.setMeta(lookedKey, { ...last, [which]: [] });
      rememberedAnew(desk);
      return { photos };
    }),
  );
