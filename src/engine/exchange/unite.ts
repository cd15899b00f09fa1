import { type Entry, type Reason, sameEntry, withoutErased } from '../record';
import { because } from './reasonCodes';

export type United =
  | { readonly ok: true; readonly entries: readonly Entry[] }
  | { readonly ok: false; readonly problems: readonly Reason[] };

/**
 * The union of two surveys' entries, sorted by id, less those an erasure in either names: commutative, associative, idempotent, and
 * nothing but the erased is ever lost. Refused only where one id stands for two contents, which no honest device writes. Whose
 * collections these are is the caller's to ask.
 */
export const unite = (a: readonly Entry[], b: readonly Entry[]): United => {
  const byId = new Map<string, Entry>();
  const problems: Reason[] = [];
  for (const entry of withoutErased([...a, ...b])) {
    const already = byId.get(entry.id);
    if (!already) byId.set(entry.id, entry);
    else if (!sameEntry(already, entry)) {
      problems.push(because('one id, two contents', { where: '', entry: 0, kind: entry.kind, id: entry.id }));
    }
  }
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, entries: [...byId.values()].sort((x, y) => (x.id < y.id ? -1 : x.id > y.id ? 1 : 0)) };
};
