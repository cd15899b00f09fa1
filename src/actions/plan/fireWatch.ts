import { afterTick, type WatchCount } from '../../engine/heat';
import type { Desk, Question } from '../desk';
import { countWatch } from './hotDay';
import { tickHere } from './momentHere';

/** Shown anew each second; noted on the device each tenth. Milliseconds. */
const shownEvery = 1000;
const notedEvery = 10_000;

const shelves = new WeakMap<object, Map<string, Question<WatchCount | null>>>();

/**
 * How far the watch is that began with this end of the work, while someone looks at it. Null where it cannot be noted. It
 * is a reminder: a tablet that sleeps counts nothing and calls nobody.
 */
export const fireWatch = (desk: Desk, hotDay: string, workEnded: string): Question<WatchCount | null> => {
  const shelf = shelves.get(desk.store) ?? new Map<string, Question<WatchCount | null>>();
  shelves.set(desk.store, shelf);
  const key = `${hotDay} ${workEnded}`;
  const known = shelf.get(key);
  if (known) return known;
  const made = counted(desk, hotDay, workEnded);
  shelf.set(key, made);
  return made;
};

const counted = (desk: Desk, hotDay: string, workEnded: string): Question<WatchCount | null> => {
  const listeners = new Set<() => void>();
  let noted: WatchCount | undefined;
  let shown: WatchCount | null | undefined;
  let timer: ReturnType<typeof setInterval> | undefined;
  let noting = false;
  let tried = Number.NEGATIVE_INFINITY;
  const show = (count: WatchCount | null) => {
    shown = count;
    for (const changed of listeners) changed();
  };
  const note = async () => {
    noting = true;
    tried = tickHere(desk).steady;
    try {
      noted = await countWatch(desk, hotDay, workEnded);
      show(noted);
    } catch {
      // What was counted since is in the next tick that can be noted.
      if (!noted) show(null);
    }
    noting = false;
  };
  const tick = () => {
    if (noting) return;
    const now = tickHere(desk);
    if (now.steady - tried >= notedEvery) void note();
    else if (noted) show(afterTick(noted, now));
  };
  return {
    subscribe: (changed) => {
      listeners.add(changed);
      timer ??= setInterval(tick, shownEvery);
      if (listeners.size === 1) void note();
      return () => {
        listeners.delete(changed);
        if (listeners.size > 0) return;
        clearInterval(timer);
        timer = undefined;
      };
    },
    get: () => shown,
  };
};
