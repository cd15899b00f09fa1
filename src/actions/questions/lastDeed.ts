import type { Reason } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';

/** What Undo would take back; null where nothing is left to take back. */
export interface LastDeed {
  readonly deed: string;
  /** Names the deed; a sentence in words. */
  readonly name: Reason;
  readonly at: string;
  readonly isImport: boolean;
}

export const lastDeed = (desk: Desk): Question<LastDeed | null> =>
  ask(
    desk,
    'lastDeed',
    () => desk.store.changes(),
    async () => {
      const row = await desk.store.lastDeed();
      return row ? { deed: row.deed, name: row.name, at: row.at, isImport: row.arrived === true } : null;
    },
  );
