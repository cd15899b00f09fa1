import { type Box, deviceBox } from '../box';
import { newId } from '../ids';
import type { Locks } from './writingLock';

/** Tells the other tabs of what was written. */
export interface Channel {
  postMessage(message: unknown): void;
  onmessage: ((event: MessageEvent) => void) | null;
  close(): void;
}

/** What the store needs of the browser beside IndexedDB; a test, and the making of the demo, hand in their own. */
export interface Surroundings {
  newId(): string;
  readonly box: Box;
  readonly locks: Locks | undefined;
  channel(name: string): Channel | undefined;
}

export const browserSurroundings = (): Surroundings => ({
  newId,
  box: deviceBox,
  locks: globalThis.navigator?.locks as Locks | undefined,
  channel: (name) => (typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name)),
});
