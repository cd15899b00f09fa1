import type { KindOfThing, Thing } from '../../engine/record';
import type { Desk } from '../desk';
import { theThing } from '../theThing';

/** The living thing of that name and kind, or undefined where there is none: not being there is no refusal here. */
export const asThingOfKind = async <K extends KindOfThing>(
  desk: Desk,
  kind: K,
  thing: string,
): Promise<Thing<K> | undefined> => {
  const current = await desk.store.current(thing);
  return current && !current.gone && current.kind === kind ? theThing(desk, kind, thing) : undefined;
};
