import type { Reason } from '../engine/record';
import type { Desk, Outcome } from './desk';

/** What opening the record on this device came to. */
export type Opening =
  | { readonly state: 'open'; readonly desk: Desk }
  /** The browser removed the data; opening the last survey file after starting afresh brings it back. */
  | { readonly state: 'removed'; readonly reason: Reason; startAfresh(): Promise<Opening> }
  | { readonly state: 'problem'; readonly reason: Reason };

export declare const openDesk: (which?: 'own' | 'demo') => Promise<Opening>;
export declare const openDemo: (progress?: (done: number, all: number) => void) => Promise<Opening>;
export declare const leaveDemo: (desk: Desk) => void;
export declare const removeDemo: (desk?: Desk) => Promise<Outcome>;
