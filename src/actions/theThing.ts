import type { BodyOf, Current, KindOfThing, Thing } from '../engine/record';
import type { Desk } from './desk';
import { refuse } from './outcome';
import { refusal } from './reasonCodes';

const asThing = <K extends KindOfThing>(current: Current): Thing<K> => ({
  thing: current.thing,
  body: current.lead.body as unknown as BodyOf<K>,
  lead: current.lead,
  heads: current.heads,
});

/** The living thing of that name, or the refusal that it is not here. */
export const theThing = async <K extends KindOfThing>(desk: Desk, kind: K, thing: string): Promise<Thing<K>> => {
  const current = await desk.store.current(thing);
  if (!current || current.gone || current.kind !== kind) return refuse(refusal('not here', { thing }));
  return asThing<K>(current);
};

/** The living things of a kind within a sculpture or the collection. */
export const thingsWithin = async <K extends KindOfThing>(desk: Desk, kind: K, within: string): Promise<Thing<K>[]> =>
  (await desk.store.within(within, [kind])).filter((current) => !current.gone).map((current) => asThing<K>(current));

/** The living things of a kind in the whole collection. */
export const thingsOfKind = async <K extends KindOfThing>(desk: Desk, kind: K): Promise<Thing<K>[]> =>
  (await desk.store.ofKind(kind)).filter((current) => !current.gone).map((current) => asThing<K>(current));
