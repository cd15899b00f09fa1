import type { NewEntry } from '../../device/store';
import { type Entry, headsOf } from '../../engine/record';

interface Frame {
  readonly deed: string;
  newId(): string;
}

/**
 * The entries that keep a thing standing when some of its entries are erased: each head that goes is said again, otherwise, with its
 * author and its time; and what only the erased had replaced is replaced anew, so that no earlier state rises again. `all` are all
 * entries of one thing.
 */
export const restated = (
  all: readonly Entry[],
  erased: ReadonlySet<string>,
  otherwise: (body: Entry['body']) => Entry['body'],
  { deed, newId }: Frame,
): NewEntry[] => {
  const standing = all.filter((entry) => !erased.has(entry.id));
  if (standing.length === all.length) return [];
  const heads = headsOf(all);
  const headIds = new Set(heads.map((head) => head.id));
  const replaced = new Set(standing.flatMap((entry) => entry.replaces));
  const orphans = standing.map((entry) => entry.id).filter((id) => !headIds.has(id) && !replaced.has(id));
  const going = heads.filter((head) => erased.has(head.id));
  const anew = going.length > 0 ? going : orphans.length > 0 ? heads.slice(0, 1) : [];
  return anew.map(({ id, restores, thing, kind, within, v, at, by, gone, body }, i) => ({
    id: newId(),
    thing,
    kind,
    within,
    v,
    at,
    by,
    deed,
    replaces: [id, ...(i === 0 ? orphans : [])],
    // The state is the same where nothing had to be put otherwise.
    ...(erased.has(id) ? {} : { restores: restores ?? id }),
    ...(gone ? { gone } : {}),
    body: otherwise(body),
  }));
};
