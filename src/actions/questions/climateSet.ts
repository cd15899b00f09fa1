import { type BodyOf, nameOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';

/** The air of the place as a person entered it, or null. */
export const climateSet = (desk: Desk): Question<BodyOf<'climate'> | null> =>
  ask(
    desk,
    'climate',
    () => desk.store.counterOf(desk.collection),
    async () => {
      const current = await desk.store.current(nameOf.climate(desk.collection));
      return current && !current.gone ? (current.lead.body as BodyOf<'climate'>) : null;
    },
  );
