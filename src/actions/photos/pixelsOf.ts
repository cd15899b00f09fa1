import { type KeptPhoto, workPixels } from '../../device/pixels';
import { deviceReason } from '../../device/reasonCodes';
import type { Desk, Known } from '../desk';
import { refuse } from '../outcome';
import { theThing } from '../theThing';

interface UnderWay {
  /** How much of the question at work is done, 0 to 1. */
  readonly done: number;
}

const progress = new WeakMap<object, { known: Known<UnderWay | null>; tell(done: UnderWay | null): void }>();

const progressOf = (desk: Desk) => {
  const there = progress.get(desk.store);
  if (there) return there;
  const listeners = new Set<() => void>();
  let now: UnderWay | null = null;
  const made = {
    known: {
      subscribe: (changed: () => void) => {
        listeners.add(changed);
        return () => void listeners.delete(changed);
      },
      get: () => now,
    },
    tell: (done: UnderWay | null) => {
      now = done;
      for (const changed of listeners) changed();
    },
  };
  progress.set(desk.store, made);
  return made;
};

/** How far the work on pixels is; null while nothing is worked. */
export const pixelsUnderWay = (desk: Desk): Known<UnderWay | null> => progressOf(desk).known;

/** Asks for pixels of photos this desk keeps, and tells how far it is. Undefined where it was left off. */
export const askPixels = async <A extends Parameters<typeof workPixels>[0]>(
  desk: Desk,
  ask: A,
  signal?: AbortSignal,
) => {
  const { tell } = progressOf(desk);
  tell({ done: 0 });
  try {
    return await workPixels(ask, {
      bring: (sha256) => desk.store.photo(sha256),
      heard: (done) => tell({ done }),
      ...(signal ? { signal } : {}),
    });
  } finally {
    tell(null);
  }
};

/** A photo of the record as its pixels are asked for; one known to be no whole picture is not opened. */
export const keptPhotoOf = async (desk: Desk, photo: string): Promise<KeptPhoto> => {
  const { sha256, width, height, flaw } = (await theThing(desk, 'photo', photo)).body;
  if (flaw) return refuse(deviceReason(flaw === 'cut short' ? 'picture cut, not worked' : 'picture not opened', {}));
  return { sha256, size: width && height ? { width, height } : undefined };
};
