import { sameContent } from '../device/sameContent';
import type { Batch, NewEntry } from '../device/store';
import type { BodyOf, Current, Entry, KindOfThing, Reason } from '../engine/record';
import { asTyped } from './asTyped';
import type { Desk, Outcome } from './desk';
import { inTurn } from './inTurn';
import { attempt, refuse } from './outcome';
import { refusal } from './reasonCodes';

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
): Promise<Outcome<{ readonly deed: string; readonly entries: readonly Entry[] }>> =>
  attempt(() =>
    inTurn(desk.store, async () => {
      const before = await desk.store.currents(changes.map((change) => change.thing));
      const deed = desk.newId();
      const at = desk.now();
      const entries = changes.flatMap((change, i) => entryOf(desk, deed, at, change, before[i]));
      const { notes: _, ...touched } = touches;
      if (entries.length === 0 && Object.keys(touched).length === 0) return { deed: '', entries: [] };
      const stored = await desk.store.commit({ entries, deed: { id: deed, name, at }, ...touches });
      return { deed, entries: stored };
    }),
  );

const entryOf = (desk: Desk, deed: string, at: string, change: Change, before: Current | undefined): NewEntry[] => {
  const frame = { id: desk.newId(), thing: change.thing, v: 1, at, by: desk.surveyor(), deed };
  if ('gone' in change) {
    if (!before || before.gone) return [];
    const { kind, within, lead } = before;
    return [{ ...frame, kind, within, replaces: [...before.heads], gone: true, body: lead.body }];
  }
  if ('patch' in change) {
    if (!before || before.gone) return refuse(refusal('not here', { thing: change.thing }));
    const body = asTyped({ ...before.lead.body, ...change.patch });
    if (sameContent(body, before.lead.body)) return [];
    return [{ ...frame, kind: before.kind, within: before.within, replaces: [before.lead.id], body }];
  }
  const body: Record<string, unknown> = asTyped(change.body);
  if (before && !before.gone && before.within === change.within && sameContent(body, before.lead.body)) return [];
  return [{ ...frame, kind: change.kind, within: change.within, replaces: before ? [before.lead.id] : [], body }];
};
