import type { Entry } from './entry';

/** What erasures have taken out of a survey for good. */
export interface Erased {
  /** Ids of the entries named. */
  readonly entries: ReadonlySet<string>;
  /** SHA-256 of photos, with the erasure that names each. */
  readonly hashes: ReadonlyMap<string, Entry>;
  /** Name things, with the erasure that names each. */
  readonly names: ReadonlyMap<string, Entry>;
}

const texts = (value: unknown): string[] =>
  Array.isArray(value) ? value.filter((each): each is string => typeof each === 'string') : [];

export const isErasure = (entry: Entry): boolean => entry.kind === 'erasure';

/** Of two erasures that name one thing, the same one is quoted everywhere. */
const put = (into: Map<string, Entry>, key: string, erasure: Entry): void => {
  const other = into.get(key);
  if (!other || erasure.id < other.id) into.set(key, erasure);
};

/** What the erasures among these entries take out. Read by shape, so that an erasure of a later version is heeded too. */
export const erasedBy = (entries: Iterable<Entry>): Erased => {
  const ids = new Set<string>();
  const hashes = new Map<string, Entry>();
  const names = new Map<string, Entry>();
  for (const entry of entries) {
    if (!isErasure(entry)) continue;
    for (const id of texts(entry.body.entries)) ids.add(id);
    for (const hash of texts(entry.body.hashes)) put(hashes, hash, entry);
    for (const name of texts(entry.body.names)) if (name.startsWith('name/')) put(names, name, entry);
  }
  return { entries: ids, hashes, names };
};

const photo = 'photo/';

/** The erasure that forbids anything to be said of this thing: of an erased photo, or a person's erased name. */
export const erasureOf = (erased: Erased, thing: string): Entry | undefined =>
  erased.names.get(thing) ?? (thing.startsWith(photo) ? erased.hashes.get(thing.slice(photo.length)) : undefined);

/**
 * True for an entry that is named, or that speaks of an erased photo or name, whoever made it and when: a correction made elsewhere in
 * the meantime does not bring back what was erased. An erasure itself is never erased, or the order of joining would matter.
 */
export const isErased = (erased: Erased, entry: Entry): boolean =>
  !isErasure(entry) && (erased.entries.has(entry.id) || erasureOf(erased, entry.thing) !== undefined);

/** The entries that stand when the erasures among them are heeded; the same list where there are none. */
export const withoutErased = (entries: readonly Entry[], erased: Erased = erasedBy(entries)): readonly Entry[] =>
  erased.entries.size + erased.hashes.size + erased.names.size === 0
    ? entries
    : entries.filter((entry) => !isErased(erased, entry));
