import { asThing, type KindOfThing, type PlannedKind, plannedKinds, type Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';

/** All living things planned, by kind; a kind with none is an empty list. Within a kind in the order they were first named. */
export type Planned = { readonly [K in PlannedKind]: readonly Thing<K>[] };

const read = async (desk: Desk, within: readonly string[]): Promise<Planned> => {
  const lists = Object.fromEntries(plannedKinds.map((kind) => [kind, [] as Thing<KindOfThing>[]]));
  for (const place of within) {
    for (const current of await desk.store.within(place, plannedKinds)) {
      const thing = current.gone ? undefined : asThing(current, current.kind as PlannedKind);
      if (thing) lists[current.kind]?.push(thing);
    }
  }
  for (const list of Object.values(lists)) list.sort((a, b) => (a.thing < b.thing ? -1 : a.thing > b.thing ? 1 : 0));
  return lists as unknown as Planned;
};

/** What is planned for one work. What belongs to the collection (funds, rules, products) is not in it. */
export const plannedOf = (desk: Desk, sculpture: string): Question<Planned> =>
  ask(
    desk,
    `planned ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    () => read(desk, [sculpture]),
  );

/** What belongs to the collection: money rules, products, agreements, plans of years, funds and gifts of no one work. */
export const plannedOfCollection = (desk: Desk): Question<Planned> =>
  ask(
    desk,
    'planned collection',
    () => `${desk.collection} ${desk.store.counterOf(desk.collection)}`,
    () => read(desk, [desk.collection]),
  );

/** Everything planned, of all works and the collection. */
export const plannedAll = (desk: Desk): Question<Planned> =>
  ask(
    desk,
    'planned all',
    () => desk.store.changes(),
    async () => {
      const works = (await desk.store.ofKind('sculpture')).filter((c) => !c.gone).map((c) => c.thing);
      return read(desk, [desk.collection, ...works]);
    },
  );
