import type { Desk } from '../desk';
import { isAtHand } from './folderAtHand';
import { joinedTo } from './joined';

/** One step that nobody asked for: nothing is asked of the person, and nothing done where it is not switched on. */
export const byItself = async (desk: Desk): Promise<void> => {
  if (desk.store.closed || desk.store.mode === 'reading') return;
  const joined = await joinedTo(desk);
  if (!joined || (joined.way === 'server' && globalThis.navigator?.onLine === false)) return;
  if (await isAtHand(desk, joined)) await (await import('./step')).step(desk);
};
