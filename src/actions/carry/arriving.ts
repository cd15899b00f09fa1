import { nameOf } from '../../engine/record';
import { journalStart } from '../arrivingJournal';
import type { Desk } from '../desk';
import { refusal } from '../reasonCodes';

export interface Arriving {
  readonly journal: string;
  /** SHA-256 of photos whose bytes were not here before. */
  readonly photos: readonly string[];
}

/** Bytes of an import that did not come to its end go, those something here speaks of excepted. */
export const dropArriving = async (desk: Desk, { journal, photos }: Arriving): Promise<void> => {
  const spokenOf = await desk.store.currents(photos.map(nameOf.photo));
  for (const [i, sha256] of photos.entries()) if (!spokenOf[i]) await desk.store.dropStray(sha256);
  const none = { id: journal, name: refusal('carrying in left off', {}), at: desk.now() };
  await desk.store.takeIn([], none, { ends: { journal, photos: [] } });
};

/** At the start: imports that were cut off in the middle leave nothing behind. */
export const sweepArrivals = async (desk: Desk): Promise<void> => {
  if (desk.store.mode !== 'writing') return;
  for (const [deed, photos] of await desk.store.metas<readonly string[]>(journalStart))
    await dropArriving(desk, { journal: journalStart + deed, photos });
};
