import type { Reason } from '../../engine/record';
import type { BagFaulty, BagWhole } from './checkedBag';
import type { NotOpened, OpenAsked, SurveyOpened } from './opened';
import type { BagWritten, WriteAsked } from './written';

/** What the worker is asked, and what it tells: by the name of the question. */
export interface BagAsks {
  write: { readonly asked: WriteAsked; readonly told: BagWritten };
  check: { readonly asked: { readonly file: Blob }; readonly told: BagWhole | BagFaulty };
  open: { readonly asked: OpenAsked; readonly told: SurveyOpened | NotOpened };
}

/** How far it is: bytes done of all there are, in one of the stages of the work. */
export interface BagStep {
  readonly stage: 'writing' | 'reading back' | 'reading';
  readonly done: number;
  readonly all: number;
}

export interface BagWay {
  heard?(step: BagStep): void;
  /** Rows of an answer that is too long to be handed over at once without the page standing still. */
  part?(rows: readonly unknown[]): void;
  /** Left off: nothing stays behind, and undefined is told. */
  readonly signal?: AbortSignal | undefined;
}

/** Answers one question in the worker. Throws LeftOff, or whatever the signal threw, once `signal` is aborted. */
export type BagAnswer<Q extends keyof BagAsks> = (
  asked: BagAsks[Q]['asked'],
  way: { heard(step: BagStep): void; part?(rows: readonly unknown[]): void; readonly signal: AbortSignal },
) => Promise<BagAsks[Q]['told']>;

/** What one worker answers. */
export type BagAnswers = { readonly [Q in keyof BagAsks]?: BagAnswer<Q> };

/** From the page to its worker: the one question, and later that it is no longer wanted. */
export type BagPost =
  | { readonly question: keyof BagAsks; readonly asked: BagAsks[keyof BagAsks]['asked'] }
  | { readonly leaveOff: true };

/** From the worker to the page. */
export type BagSaid =
  | { readonly step: BagStep }
  | { readonly part: readonly unknown[] }
  | { readonly told: BagAsks[keyof BagAsks]['told'] }
  | { readonly leftOff: true }
  | { readonly problem: Reason }
  | { readonly failed: string };
