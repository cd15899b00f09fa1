import type { Reason } from '../../engine/record';
import type { Desk } from '../desk';
import { keepPhoto, type PhotoFacts } from '../keepPhoto';
import { byItsDay } from './roundOfPhoto';

export interface TakenOne {
  /** Of the file. */
  readonly name: string;
  /** Missing where it was refused; `problem` then says why. */
  readonly photo?: string;
  readonly problem?: Reason;
  readonly notes: readonly Reason[];
}

export interface TakenMany {
  readonly each: readonly TakenOne[];
  /** Files not come to: it was stopped, or the device is full. */
  readonly left: number;
}

export interface TakingMany {
  readonly heard: (progress: { readonly done: number; readonly of: number; readonly name: string }) => void;
  readonly signal?: AbortSignal;
  readonly facts?: PhotoFacts;
}

/** Nothing more can be kept after these: to go on would only say so again for each file. */
const final = ['device full', 'another tab writes', 'another tab took over', 'address not secure'];

/**
 * Keeps many files, one after the other; each stands as soon as it is kept, whatever happens to the next. A file that is
 * refused is named with its reason and does not stop the others. `heard` is told before each file and at the end.
 */
export const takeMany = async (
  desk: Desk,
  sculpture: string,
  files: readonly File[],
  { heard, signal, facts = {} }: TakingMany,
): Promise<TakenMany> => {
  const roundOf = await byItsDay(desk, sculpture);
  const each: TakenOne[] = [];
  for (const file of files) {
    if (signal?.aborted) break;
    heard({ done: each.length, of: files.length, name: file.name });
    const outcome = await keepPhoto(desk, sculpture, file, 'other', (taken) => {
      const round = taken ? roundOf(taken)?.thing : undefined;
      return { ...(round ? { round } : {}), ...facts };
    });
    if (!outcome.ok && final.includes(outcome.reason.code)) {
      each.push({ name: file.name, problem: outcome.reason, notes: [] });
      break;
    }
    each.push(
      outcome.ok
        ? { name: file.name, photo: outcome.photo, notes: outcome.notes }
        : { name: file.name, problem: outcome.reason, notes: [] },
    );
  }
  heard({ done: each.length, of: files.length, name: '' });
  return { each, left: files.length - each.length };
};
