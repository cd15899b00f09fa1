import type { KindOfThing, Thing } from '../../engine/record';
import type { Lists } from '../../engine/watch';
import type { Desk } from '../desk';
import { thingsOfKind } from '../theThing';

/** Living works, by thing name. */
export const livingWorks = async (desk: Desk): Promise<readonly Thing<'sculpture'>[]> =>
  thingsOfKind(desk, 'sculpture');

/** Living things of some kinds, those of works that were taken away left out. */
export const plannedHere = async <K extends KindOfThing>(
  desk: Desk,
  kinds: readonly K[],
  works: ReadonlySet<string>,
): Promise<Lists<K>> => {
  const lists = await Promise.all(
    kinds.map(async (kind) => {
      const things = await thingsOfKind(desk, kind);
      const here = things.filter(({ body }) => {
        const { sculpture } = body as { readonly sculpture?: unknown };
        return typeof sculpture !== 'string' || works.has(sculpture);
      });
      return [kind, here] as const;
    }),
  );
  return Object.fromEntries(lists) as unknown as Lists<K>;
};
