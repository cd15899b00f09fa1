import { againstClosing, heatReason, hotDayRefused } from '../../engine/heat';
import { asThing, type BodyOf, type KindOfThing, nameOf, type Reason } from '../../engine/record';
import type { Desk } from '../desk';

/** A closed day is one that can be closed: said here, so that no way of keeping it goes round it. */
export const hotDayAgainst = async (
  body: BodyOf<'hotDay'>,
  desk: Desk,
  hotDay: string,
): Promise<Reason | undefined> => {
  const refused = hotDayRefused(body);
  if (refused || !body.closed) return refused;
  const read = (await desk.store.ofKind('insertReading')).flatMap(({ gone, lead }) =>
    !gone && lead.body.hotDay === hotDay ? [String(lead.body.insert)] : [],
  );
  const near = [...new Set([...(body.inserts ?? []), ...read])];
  const cares = await bodies(
    desk,
    'insertCare',
    near.map((insert) => [insert, nameOf.insertCare(insert)]),
  );
  const afters = await bodies(
    desk,
    'insertAfter',
    near.map((insert) => [insert, nameOf.insertAfter(hotDay, insert)]),
  );
  return againstClosing({ day: body, cares, afters, read })[0];
};

const bodies = async <K extends KindOfThing>(
  desk: Desk,
  kind: K,
  names: readonly (readonly [insert: string, thing: string])[],
): Promise<ReadonlyMap<string, BodyOf<K>>> => {
  const found = await desk.store.currents(names.map(([, thing]) => thing));
  return new Map(
    names.flatMap(([insert], i) => {
      const current = found[i];
      const thing = current && !current.gone ? asThing(current, kind) : undefined;
      return thing ? [[insert, thing.body] as const] : [];
    }),
  );
};

/** Nothing is written into a day that is closed. */
export const dayOpenAgainst = async (
  { hotDay }: { readonly hotDay: string },
  desk: Desk,
): Promise<Reason | undefined> => {
  const current = await desk.store.current(hotDay);
  const closed = current && !current.gone && current.lead.body.closed;
  return closed ? heatReason('heat: day is closed') : undefined;
};
