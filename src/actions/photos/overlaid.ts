import type { Refused } from '../../engine/photo';
import type { Desk, Question } from '../desk';
import { attempt } from '../outcome';

/** What was told of pixels, its picture as an object URL. */
export type Overlaid<Told extends { readonly overlay: Blob }> = Omit<Told, 'overlay'> & { readonly overlay: string };

/** Milliseconds: a question left for so short a time goes on; a picture lasts so long after the last look. */
const glance = 200;
const linger = 2000;

const shelves = new WeakMap<object, Map<string, Question<unknown>>>();

/**
 * A question worked out from pixels, with a picture to lay over a photo. It is left off when nobody looks any more, and its picture is
 * given back to the browser. The same key is the same question as long as somebody looks.
 */
export const overlaid = <Told extends { readonly overlay: Blob }>(
  desk: Desk,
  key: string,
  work: (signal: AbortSignal) => Promise<Told | Refused | undefined>,
): Question<Overlaid<Told> | Refused> => {
  const shelf = shelves.get(desk.store) ?? new Map<string, Question<unknown>>();
  shelves.set(desk.store, shelf);
  const known = shelf.get(key);
  if (known) return known as Question<Overlaid<Told> | Refused>;
  const made = question(work, () => shelf.delete(key));
  shelf.set(key, made);
  return made;
};

const withAddress = <Told extends { readonly overlay: Blob }>(told: Told | Refused): Overlaid<Told> | Refused =>
  'refused' in told ? told : { ...told, overlay: URL.createObjectURL(told.overlay) };

const question = <Told extends { readonly overlay: Blob }>(
  work: (signal: AbortSignal) => Promise<Told | Refused | undefined>,
  dropped: () => void,
): Question<Overlaid<Told> | Refused> => {
  const listeners = new Set<() => void>();
  let answer: Overlaid<Told> | Refused | undefined;
  let fault: { readonly error: unknown } | undefined;
  let working: AbortController | undefined;
  let leaving: ReturnType<typeof setTimeout> | undefined;

  const start = async () => {
    const mine = new AbortController();
    working = mine;
    try {
      const outcome = await attempt(async () => ({ told: await work(mine.signal) }));
      if (mine.signal.aborted) return;
      if (!outcome.ok) answer = { refused: [outcome.reason] };
      else if (outcome.told) answer = withAddress(outcome.told);
    } catch (error) {
      fault = { error };
    }
    working = undefined;
    for (const changed of listeners) changed();
  };
  const leave = () => {
    if (listeners.size > 0) return;
    working?.abort();
    working = undefined;
    if (answer && 'overlay' in answer) URL.revokeObjectURL(answer.overlay);
    answer = undefined;
    dropped();
  };
  return {
    subscribe: (changed) => {
      listeners.add(changed);
      clearTimeout(leaving);
      fault = undefined;
      if (!answer && !working) start();
      return () => {
        listeners.delete(changed);
        if (listeners.size === 0) leaving = setTimeout(leave, working ? glance : linger);
      };
    },
    get: () => {
      if (fault) throw fault.error;
      return answer;
    },
  };
};
