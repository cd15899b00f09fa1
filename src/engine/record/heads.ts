import type { Current } from './current';
import type { Entry } from './entry';
import { worse } from './worse';

/** A head and the length of the line of replacement it stands on. */
interface Standing {
  readonly entry: Entry;
  readonly line: number;
  /** Id of the entry that first made the state. */
  readonly state?: string;
}

/** The last twelve digits of a UUIDv7 are chance, the first twelve a clock: clocks decide nothing, so chance comes first. */
const chance = (id: string): string => id.slice(24);

/** An entry that brings back a state stands for the entry that first made it, or undoing would throw the dice again. */
const stateOf = ({ entry, state }: Standing): string => state ?? entry.restores ?? entry.id;

/**
 * Which of two versions leads until a person settles it: the living one, then the one on the longer line of replacement,
 * then the worse finding, then the id. Below 0 where `a` leads.
 */
export const leading = (a: Standing, b: Standing): number =>
  (a.entry.gone ? 1 : 0) - (b.entry.gone ? 1 : 0) ||
  b.line - a.line ||
  worse(b.entry, a.entry) ||
  inOrder(chance(stateOf(a)), chance(stateOf(b))) ||
  inOrder(stateOf(a), stateOf(b)) ||
  inOrder(chance(a.entry.id), chance(b.entry.id)) ||
  inOrder(a.entry.id, b.entry.id);

/** Order of code units: the same in every language and on every device. */
const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Length of the longest line of replacement under an entry, itself included. An entry that brings back an earlier state (undo)
 * stands where that state stood, as if the deed it takes back had not been. Without recursion, and safe on circles: a checked
 * file has none, yet a count must not hang on one.
 */
const lineOf = (start: Entry, byId: ReadonlyMap<string, Entry>, lines: Map<string, number>): number => {
  const under = (e: Entry): readonly string[] => (e.restores && byId.has(e.restores) ? [e.restores] : e.replaces);
  const path: Entry[] = [start];
  const open = new Set<string>([start.id]);
  while (path.length > 0) {
    const entry = path[path.length - 1] as Entry;
    const next = under(entry).find((id) => byId.has(id) && !lines.has(id) && !open.has(id));
    if (next !== undefined) {
      path.push(byId.get(next) as Entry);
      open.add(next);
      continue;
    }
    const longest = under(entry).reduce((most, id) => Math.max(most, lines.get(id) ?? 0), 0);
    lines.set(entry.id, entry.restores && byId.has(entry.restores) ? Math.max(1, longest) : longest + 1);
    path.pop();
  }
  return lines.get(start.id) ?? 1;
};

/** Heads with their lines, the lead first. `entries` are all of one thing; order and doubles do not matter. */
const standings = (entries: readonly Entry[]): readonly Standing[] => {
  const byId = new Map(entries.map((e) => [e.id, e]));
  const replaced = new Set<string>();
  for (const e of byId.values()) for (const id of e.replaces) if (id !== e.id) replaced.add(id);
  const free = [...byId.values()].filter((e) => !replaced.has(e.id));
  const lines = new Map<string, number>();
  return (free.length > 0 ? free : [...byId.values()])
    .map((entry) => ({
      entry,
      line: lineOf(entry, byId, lines),
      // What was erased made no state any more.
      state: entry.restores !== undefined && byId.has(entry.restores) ? entry.restores : entry.id,
    }))
    .sort(leading);
};

/**
 * The entries of one thing that no other entry replaces, the lead first: one is its present state, two are two people who spoke
 * without seeing each other. A circle of replacement (refused on reading) leaves all its entries standing, so nothing is lost.
 */
export const headsOf = (entries: readonly Entry[]): readonly Entry[] =>
  entries.length === 1 ? entries : standings(entries).map((s) => s.entry);

/** The present state of one thing from all its entries. Throws a RangeError where there is none. */
export const currentOf = (entries: readonly Entry[]): Current => {
  const [first] = entries;
  if (!first) throw new RangeError('A thing has at least one entry.');
  const all = entries.length === 1 ? [{ entry: first, line: 1 }] : standings(entries);
  const { entry: lead, line } = all[0] as Standing;
  return {
    thing: lead.thing,
    kind: lead.kind,
    within: lead.within,
    lead,
    line,
    heads: all.map((s) => s.entry.id),
    gone: lead.gone === true,
  };
};

/** The present state of everything the entries speak of, by name of thing. */
export const assemble = (entries: Iterable<Entry>): Map<string, Current> => {
  const ofThing = new Map<string, Entry[]>();
  for (const entry of entries) {
    const already = ofThing.get(entry.thing);
    if (already) already.push(entry);
    else ofThing.set(entry.thing, [entry]);
  }
  const currents = new Map<string, Current>();
  for (const [thing, own] of ofThing) currents.set(thing, currentOf(own));
  return currents;
};
