import { type BodyOf, nameOf, type Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsWithin } from '../theThing';
import { ask } from './question';

/** What stands apart from the record of a work so that it can stay at home. */
export interface AroundTheWork {
  /** '' where not said. */
  readonly place: string;
  readonly access: string;
  /** Value by insert thing name. */
  readonly insertValues: ReadonlyMap<string, BodyOf<'insertValue'>>;
  readonly photos: readonly Thing<'photo'>[];
}

export const aroundTheWork = (desk: Desk, sculpture: string): Question<AroundTheWork> =>
  ask(
    desk,
    `around ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => {
      const [place, access] = await desk.store.currents([nameOf.place(sculpture), nameOf.access(sculpture)]);
      const values = await thingsWithin(desk, 'insertValue', sculpture);
      const said = (c: typeof place): string => (c && !c.gone ? String(c.lead.body.text ?? '') : '');
      return {
        place: said(place),
        access: said(access),
        insertValues: new Map(values.map(({ body }) => [body.insert, body])),
        photos: await thingsWithin(desk, 'photo', sculpture),
      };
    },
  );
