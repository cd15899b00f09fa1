import { asThing, type BodyOf, nameOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';

/** When green counts as back and how much chance is too much, as the collection set it, or null where the project's numbers hold. */
export const ownHoldRules = (desk: Desk): Question<BodyOf<'holdRules'> | null> =>
  ask(
    desk,
    'own hold rules',
    () => desk.store.counterOf(desk.collection),
    async () => asThing(await desk.store.current(nameOf.holdRules(desk.collection)), 'holdRules')?.body ?? null,
  );
