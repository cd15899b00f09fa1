import { type Entry, erasedBy, isErased, isErasure, type Reason, sameEntry } from '../record';
import { because, quoted } from './reasonCodes';

interface Placed {
  readonly entry: Entry;
  readonly index: number;
}

/** Entries left over when those that stand on nothing are taken away, again and again: circles, and what rests on them. */
const inCircles = (placed: ReadonlyMap<string, Placed>, under: (e: Entry) => readonly string[]): Placed[] => {
  const waits = new Map<string, number>();
  const above = new Map<string, string[]>();
  const free: string[] = [];
  for (const [id, { entry }] of placed) {
    const below = under(entry).filter((other) => placed.has(other));
    waits.set(id, below.length);
    if (below.length === 0) free.push(id);
    for (const other of below) above.set(other, [...(above.get(other) ?? []), id]);
  }
  for (let id = free.pop(); id !== undefined; id = free.pop()) {
    waits.delete(id);
    for (const next of above.get(id) ?? []) {
      const left = (waits.get(next) ?? 0) - 1;
      waits.set(next, left);
      if (left === 0) free.push(next);
    }
  }
  return [...waits.keys()].flatMap((id) => placed.get(id) ?? []);
};

/**
 * Judges entries among each other: one id with two contents, and replacement that points nowhere, at itself, at another thing or
 * round in a circle. The same entry twice is no problem, nor is what stood on an entry that an erasure in the file names; an erasure
 * itself stands for good.
 */
export const judgeReplacements = (entries: readonly Entry[]): Reason[] => {
  const placed = new Map<string, Placed>();
  const problems: Reason[] = [];
  const place = ({ entry, index }: Placed, field: string) => ({
    where: `entries[${index}].${field}`,
    entry: index + 1,
    kind: entry.kind,
  });
  for (const [index, entry] of entries.entries()) {
    const already = placed.get(entry.id);
    if (!already) placed.set(entry.id, { entry, index });
    else if (!sameEntry(already.entry, entry)) {
      problems.push(because('one id, two contents', { ...place({ entry, index }, 'id'), id: entry.id }));
    }
  }
  const erased = erasedBy(entries);
  const under = (e: Entry): readonly string[] => (e.restores === undefined ? e.replaces : [...e.replaces, e.restores]);
  for (const each of placed.values()) {
    const { entry } = each;
    if (isErasure(entry) && (entry.gone || under(entry).length > 0)) {
      problems.push(because('erasure changed', place(each, entry.gone ? 'gone' : 'replaces')));
      continue;
    }
    for (const id of under(entry)) {
      const at = place(each, id === entry.restores ? 'restores' : 'replaces');
      const other = placed.get(id)?.entry;
      if (id === entry.id) problems.push(because('replaces itself', at));
      else if (!other) {
        if (erased.entries.has(id) || isErased(erased, entry)) continue;
        problems.push(because('replaces what is not in the file', { ...at, found: id }));
      } else if (other.thing !== entry.thing) {
        problems.push(because('replaces across things', { ...at, found: quoted(other.thing) }));
      }
    }
  }
  if (problems.length > 0) return problems;
  const [circle] = inCircles(placed, under);
  return circle ? [because('replaces in a circle', place(circle, 'replaces'))] : [];
};
