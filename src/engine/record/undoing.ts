import type { Entry } from './entry';
import { headsOf } from './heads';

/** An entry before the device that keeps it has given it its own name and counter. */
export type EntryToBe = Omit<Entry, 'device' | 'n'>;

export interface Undoing {
  /** The deed that takes the other back. */
  readonly deed: string;
  /** Who takes it back, and when: said only of what the deed had created; a state brought back keeps its own author and time. */
  readonly by: string;
  readonly at: string;
  /** UUIDv7. */
  newId(): string;
}

/**
 * Heads of a thing that show what the deed made: its own last entries, or those that have brought them back since (a later deed
 * that was itself undone). Where somebody has gone on from them, the deed's last entries: then there are two versions.
 */
const shownBy = (deedEntries: readonly Entry[], all: readonly Entry[]): readonly Entry[] => {
  const made = new Set(deedEntries.map((e) => e.id));
  const shown = headsOf(all).filter((e) => made.has(e.id) || (e.restores !== undefined && made.has(e.restores)));
  return shown.length > 0 ? shown : headsOf(deedEntries);
};

/**
 * The entries that take back one deed: for what it changed, the state before, with its author and date; for what it created,
 * `gone`. A deed that settled two versions comes back as two; what the deed changed stays where the state before was erased since.
 * `entriesOf` gives all entries of a thing, the deed's own among them.
 * Deeds are taken back one after the other, the latest first.
 */
export const undoingEntries = (
  deedEntries: readonly Entry[],
  entriesOf: (thing: string) => readonly Entry[],
  undo: Undoing,
): EntryToBe[] => {
  const things = new Map<string, Entry[]>();
  for (const entry of deedEntries) {
    const own = things.get(entry.thing);
    if (own) own.push(entry);
    else things.set(entry.thing, [entry]);
  }
  return [...things].flatMap(([thing, own]): EntryToBe[] => {
    const all = entriesOf(thing);
    const inDeed = new Set(own.map((e) => e.id));
    const replaced = new Set(own.flatMap((e) => e.replaces));
    const before = all.filter((e) => replaced.has(e.id) && !inDeed.has(e.id));
    const shown = shownBy(own, all);
    const same = { thing, deed: undo.deed, replaces: shown.map((e) => e.id) };
    const changed = [...replaced].some((id) => !inDeed.has(id));
    if (before.length === 0 && changed) return [];
    if (before.length === 0) {
      const { kind, within, v, body } = shown[0] as Entry;
      return [{ ...same, id: undo.newId(), kind, within, v, at: undo.at, by: undo.by, gone: true, body }];
    }
    return before.map(({ id, restores, kind, within, v, at, by, gone, body }) => ({
      ...same,
      id: undo.newId(),
      kind,
      within,
      v,
      at,
      by,
      // Named is the entry that first made the state, so that undoing over and over stays one step deep; one erased makes none.
      restores: restores !== undefined && all.some((entry) => entry.id === restores) ? restores : id,
      ...(gone ? { gone } : {}),
      body,
    }));
  });
};
