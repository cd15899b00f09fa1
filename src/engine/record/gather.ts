import { asThing } from './asThing';
import type { KindOfThing } from './bodies';
import type { Current, Thing } from './current';
import { isKnown } from './kindsOfThing';
import { merged, roundsCountedAs } from './mergedRounds';
import type { CollectionOwn, SculptureRecord } from './sculptureRecord';

const byName = (a: { readonly thing: string }, b: { readonly thing: string }): number =>
  a.thing < b.thing ? -1 : a.thing > b.thing ? 1 : 0;
const byDate = (a: Thing<'round'>, b: Thing<'round'>): number =>
  a.body.date < b.body.date ? -1 : a.body.date > b.body.date ? 1 : byName(a, b);

/**
 * The record of one sculpture from the present state of everything within it. What the collection set for itself and knows of its surveyors comes along.
 * Undefined where the sculpture itself is not there or was taken away.
 */
export const gather = (
  currents: Iterable<Current>,
  { scale = null, holdRules = null, eyes = {} }: Partial<CollectionOwn> = {},
): SculptureRecord | undefined => {
  const all = [...currents];
  const everyRound = all.flatMap((c) => asThing(c, 'round') ?? []);
  const countedAs = roundsCountedAs(everyRound);
  const living = merged(all, countedAs).filter((c) => !c.gone);
  const sculpture = living.flatMap((c) => asThing(c, 'sculpture') ?? []).sort(byName)[0];
  if (!sculpture) return undefined;

  const things: { [K in KindOfThing]?: Thing<K>[] } = {};
  for (const current of living) {
    const kind = current.kind as KindOfThing;
    const thing = asThing(current, kind);
    if (!thing) continue;
    const list = (things[kind] ?? []) as Thing<KindOfThing>[];
    list.push(thing);
    (things as Record<string, Thing<KindOfThing>[]>)[kind] = list;
  }
  const of = <K extends KindOfThing>(kind: K): Thing<K>[] => ((things[kind] ?? []) as Thing<K>[]).sort(byName);

  const rounds = of('round')
    .filter((r) => !countedAs.has(r.thing))
    .sort(byDate);
  const zones = of('zone').sort((a, b) => a.body.order - b.body.order || byName(a, b));
  const ashore = new Set([...rounds, ...zones].map((t) => t.thing));
  const adrift: string[] = [];
  const held = <T extends { readonly thing: string }>(list: readonly T[], on: (t: T) => readonly string[]): T[] =>
    list.filter((t) => {
      const stands = on(t).every((name) => ashore.has(name));
      if (!stands) adrift.push(t.thing);
      return stands;
    });
  const roundAndZone = (t: { readonly body: { readonly round: string; readonly zone: string } }) => [
    t.body.round,
    t.body.zone,
  ];

  return {
    sculpture,
    scale,
    holdRules,
    eyes,
    zones,
    rounds,
    visits: held(of('visit'), roundAndZone),
    findings: held(of('finding'), roundAndZone),
    reratings: held(of('rerating'), roundAndZone),
    classSets: held(of('classSet'), (t) => [t.body.round]),
    personChecks: of('personCheck'),
    looks: held(of('look'), (t) => [t.body.zone]),
    treatments: of('treatment'),
    inserts: of('insert'),
    unknown: living
      .filter((c) => !isKnown(c.lead))
      .map(({ thing, kind }) => ({ thing, kind }))
      .sort(byName),
    unsettled: living
      .filter((c) => c.heads.length > 1)
      .map((c) => c.thing)
      .sort(),
    adrift: adrift.sort(),
  };
};
