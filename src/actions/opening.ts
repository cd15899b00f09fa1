import { sweepReady } from '../device/bag';
import { now, today } from '../device/clock';
import { newId } from '../device/ids';
import { openStore, type Store, type StoreOpening } from '../device/store';
import { StoreProblem } from '../device/storeProblem';
import { sweepTrial } from '../device/trialWrite';
import { nameOf, type Reason } from '../engine/record';
import { sweepArrivals } from './carry';
import type { Desk } from './desk';
import { type CarriedRow, lastFilesOf } from './keeping';
import { settings } from './settings';

/** What opening the record on this device came to. */
export type Opening =
  | { readonly state: 'open'; readonly desk: Desk }
  /** The browser removed the data; opening what was carried out last, after starting afresh, brings it back. */
  | {
      readonly state: 'removed';
      readonly reason: Reason;
      readonly lastFiles: readonly CarriedRow[];
      startAfresh(): Promise<Opening>;
    }
  | { readonly state: 'problem'; readonly reason: Reason };

export const databaseNames = { own: 'patina-round', demo: 'patina-round-demo' } as const;

/** Opens the person's own record. Nothing of it is read yet. */
export const openDesk = (): Promise<Opening> => opened(databaseNames.own, false);

/** In the invented garden it is always this day: what is due there would else be overdue for ever. */
export const dayOfGarden = '2026-10-15';

export const opened = async (name: string, invented: boolean): Promise<Opening> => {
  const asOpening = async (opening: StoreOpening): Promise<Opening> => {
    if (opening.state === 'removed')
      return {
        ...opening,
        lastFiles: lastFilesOf(name),
        startAfresh: () => safely(async () => asOpening(await opening.startAfresh())),
      };
    const desk = deskOn(opening.store, invented ? { invented, today: () => dayOfGarden } : { invented });
    // What an import left behind that was cut off is not waited for to work; swept at the next start if not at this one.
    await sweepArrivals(desk).catch(() => undefined);
    void sweepReady().catch(() => undefined);
    void sweepTrial().catch(() => undefined);
    return { state: 'open', desk };
  };
  return safely(async () => asOpening(await openStore(name, () => nameOf.collection(newId()))));
};

const safely = async (open: () => Promise<Opening>): Promise<Opening> => {
  try {
    return await open();
  } catch (error) {
    if (error instanceof StoreProblem) return { state: 'problem', reason: error.reason };
    throw error;
  }
};

/** A desk on an open store, with this device's clock and ids unless others are handed in. */
export const deskOn = (store: Store, given: Partial<Omit<Desk, 'store' | 'collection'>> = {}): Desk => ({
  invented: false,
  now,
  today,
  newId,
  surveyor: () => settings.get().surveyor,
  ...given,
  store,
  get collection() {
    return store.collection;
  },
});
