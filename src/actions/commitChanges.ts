import type { Batch, DeedRow, NewEntry } from '../device/store';
import { type BodyOf, type Current, type Entry, type KindOfThing, type Reason, sameContent } from '../engine/record';
import { asTyped } from './asTyped';
import type { Desk, Outcome } from './desk';
import { inTurn } from './inTurn';
import { attempt, refuse } from './outcome';
import { refusal } from './reasonCodes';
import { whoIsAtWork } from './whoIsAtWork';

/** A thing said anew with its whole body. */
export type Said = {
  [K in KindOfThing]: { readonly thing: string; readonly kind: K; readonly within: string; readonly body: BodyOf<K> };
}[KindOfThing];

/** Some fields of a thing that is here said anew; `undefined` empties a field. */
export interface Patched {
  readonly thing: string;
  readonly patch: Readonly<Record<string, unknown>>;
}

/** A thing taken away, all its versions with it. */
export interface TakenAway {
  readonly thing: string;
  readonly gone: true;
}

export type Change = Said | Patched | TakenAway;

export type TouchChanges = Pick<Batch, 'settlesTouches' | 'reopensTouches' | 'dropsTouches' | 'notes'>;

export interface Committed {
  /** '' where nothing changed and nothing was stored. */
  readonly deed: string;
  readonly entries: readonly Entry[];
  /** How Undo knows it; missing where nothing was stored. */
  readonly undo?: DeedRow;
}

/**
 * The one way entries are made: in one strict transaction, one entry per thing that really changes. A new entry replaces
 * the leading version only; a thing taken away is taken away in all its versions. A deed that changes nothing stores
 * nothing and is ok with `deed: ''`.
 */
export const commitChanges = (
  desk: Desk,
  name: Reason,
  changes: readonly Change[],
  touches: TouchChanges = {},
): Promise<Outcome<Committed>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const byThing = new Map<string, Change[]>();
      for (const change of changes) byThing.set(change.thing, [...(byThing.get(change.thing) ?? []), change]);
      const before = await desk.store.currents([...byThing.keys()]);
      const frame = { v: 1, at: desk.now(), by: await whoIsAtWork(desk), deed: desk.newId() };
      const entries = [...byThing].flatMap(([thing, own], i) =>
        entryOf({ ...frame, id: desk.newId(), thing }, own, before[i]),
      );
      const { notes: _, ...touched } = touches;
      if (entries.length === 0 && Object.keys(touched).length === 0) return { deed: '', entries: [] };
      const { deed, at } = frame;
      const stored = await desk.store.commit({ entries, deed: { id: deed, name, at }, ...touches });
      return { deed, entries: stored, undo: { deed, name, at } };
    }),
  );

type Frame = Pick<NewEntry, 'id' | 'thing' | 'v' | 'at' | 'by' | 'deed'>;

/** What a deed says of one thing, however often it speaks of it, as one entry, or none where that changes nothing. */
const entryOf = (frame: Frame, changes: readonly Change[], before: Current | undefined): NewEntry[] => {
  const was = before && !before.gone ? before : undefined;
  const last = changes.reduce<State | undefined>(stateAfter, was && { ...was, body: was.lead.body });
  if (!last) return was ? [{ ...frame, ...said(was, was.lead.body), replaces: [...was.heads], gone: true }] : [];
  if (was && was.within === last.within && sameContent(was.lead.body, last.body)) return [];
  return [{ ...frame, ...said(last, last.body), replaces: before ? [before.lead.id] : [] }];
};

interface State {
  readonly kind: string;
  readonly within: string;
  readonly body: Record<string, unknown>;
}

const said = ({ kind, within }: Omit<State, 'body'>, body: State['body']) => ({ kind, within, body });

/** A thing after one more change; undefined where it is not there. */
const stateAfter = (state: State | undefined, change: Change): State | undefined => {
  if ('gone' in change) return undefined;
  if (!('patch' in change)) return said(change, asTyped<Record<string, unknown>>(change.body));
  if (!state) return refuse(refusal('not here', { thing: change.thing }));
  return said(state, asTyped({ ...state.body, ...change.patch }));
};
