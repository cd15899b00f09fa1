import { isSecureAddress } from '../device/address';
import { askToPersist, isPersisted } from '../device/persistence';
import { looksPrivate } from '../device/privateWindow';
import type { Reason } from '../engine/record';
import { clockWent } from './clocks';
import type { Desk, Question } from './desk';
import { ask } from './questions/question';
import { rememberedVersion } from './remembered';

/** How safely the record lies on this device. Our own count: what the browser says of its space is no gauge. */
export interface StorageHealth {
  /** 'not known' where the browser does not say. */
  readonly persisted: 'yes' | 'no' | 'not known';
  readonly entries: number;
  readonly photos: number;
  /** Bytes of photos and thumbnails, and an estimate of the entries from their number. */
  readonly bytes: number;
  readonly secure: boolean;
  /** The browser gave away that it forgets everything when this window is closed. */
  readonly forgets: boolean;
  /** What a person should know: insecure address, a clock out of step, entries missing, a copied tablet. */
  readonly notes: readonly Reason[];
}

export const storageHealth = (desk: Desk): Question<StorageHealth> =>
  ask(
    desk,
    'storageHealth',
    () => `${desk.store.changes()} ${rememberedVersion(desk)} ${asked}`,
    async () => {
      const [persisted, held, forgets] = await Promise.all([isPersisted(), desk.store.held(), looksPrivate()]);
      const secure = isSecureAddress();
      const clock = desk.invented ? [] : clockWent(await desk.store.lastDeed(), desk.now());
      const insecure = secure ? [] : [{ code: 'address not secure', params: {} }];
      return { persisted, ...held, secure, forgets, notes: [...insecure, ...clock, ...desk.store.notes] };
    },
  );

let asked = 0;

/** Asks the browser to keep the data. To be called from a tap, after the first real save. */
export const askPersistence = async (desk: Desk): Promise<StorageHealth['persisted']> => {
  const answer = await askToPersist();
  asked++;
  desk.store.tell();
  return answer;
};
