import type { Entry } from './entry';

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
 * The entries that take back one deed: for what it changed, the state before, with its author and date; for what it created,
 * `gone`. A deed that settled two versions comes back as two. `entriesOf` gives all entries of a thing, or at least those the deed
 * replaced.
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
    const inDeed = new Set(own.map((e) => e.id));
    const replaced = new Set(own.flatMap((e) => e.replaces));
    const replaces = own.filter((e) => !replaced.has(e.id)).map((e) => e.id);
    const before = entriesOf(thing).filter((e) => replaced.has(e.id) && !inDeed.has(e.id));
    const last = own.find((e) => e.id === replaces.at(-1)) ?? (own.at(-1) as Entry);
    const same = { thing, within: last.within, deed: undo.deed, replaces };
    if (before.length === 0) {
      const { kind, v, body } = last;
      return [{ ...same, id: undo.newId(), kind, v, at: undo.at, by: undo.by, gone: true, body }];
    }
    return before.map(({ id, kind, within, v, at, by, gone, body }) => ({
      ...same,
      id: undo.newId(),
      kind,
      within,
      v,
      at,
      by,
      restores: id,
      ...(gone ? { gone } : {}),
      body,
    }));
  });
};
