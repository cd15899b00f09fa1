import { asThing } from './asThing';
import type { Current } from './current';
import type { Entry } from './entry';
import { inRoot, nameInRoot, roundsCountedAs, together } from './mergedRounds';

/** One thing recorded under two names, because it was recorded in two rounds that were later said to be one. */
export interface Double {
  /** Its name in the round both count as. Nothing need be stored under it yet. */
  readonly thing: string;
  /** How it stands in the record of the sculpture: all heads, the lead first. */
  readonly current: Current;
  /** The living things it was recorded as, under their own names, each with its own heads. */
  readonly recordedAs: readonly Current[];
  /** Heads of what lies under the name now, taken away or not; none where nothing does. */
  readonly underName: readonly string[];
}

/** Doubles among everything within one sculpture: no single thing of them has two heads, yet each has to be settled. */
export const doublesIn = (currents: Iterable<Current>): readonly Double[] => {
  const all = [...currents];
  const countedAs = roundsCountedAs(all.flatMap((c) => asThing(c, 'round') ?? []));
  if (countedAs.size === 0) return [];
  const byThing = new Map(all.map((c) => [c.thing, c]));
  const groups = new Map<string, Current[]>();
  for (const current of all) {
    if (current.gone) continue;
    const name = nameInRoot(current.thing, countedAs);
    groups.set(name, [...(groups.get(name) ?? []), current]);
  }
  return [...groups]
    .filter(([, recordedAs]) => recordedAs.length > 1)
    .map(([thing, recordedAs]) => ({
      thing,
      current: recordedAs.map((c) => inRoot(c, countedAs)).reduce(together),
      recordedAs,
      underName: byThing.get(thing)?.heads ?? [],
    }))
    .sort((a, b) => (a.thing < b.thing ? -1 : 1));
};

/** What a deed has to write, before it is given its id, its author and its time. */
export interface Written {
  readonly thing: string;
  readonly kind: string;
  readonly within: string;
  readonly v: number;
  readonly replaces: string[];
  readonly gone?: true;
  readonly body: Entry['body'];
}

/**
 * What settles a double: the body that holds, under the name in the round both count as, and everything it was recorded as
 * elsewhere taken away. Each entry replaces all heads of its own thing, never those of another.
 */
export const settlingDouble = (double: Double, body: Entry['body']): readonly Written[] => {
  const { thing, current, recordedAs, underName } = double;
  const { kind, within } = current;
  const { v } = current.lead;
  const round = current.lead.body.round;
  return [
    { thing, kind, within, v, replaces: [...underName], body: { ...body, round } },
    ...recordedAs
      .filter((c) => c.thing !== thing)
      .map((c) => ({
        thing: c.thing,
        kind,
        within,
        v: c.lead.v,
        replaces: [...c.heads],
        gone: true as const,
        body: c.lead.body,
      })),
  ];
};
