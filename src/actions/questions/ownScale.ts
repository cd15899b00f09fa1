import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';
import { scaleSet } from './records';

/** The weights the collection set for itself, or null where the project's own hold. */
export const ownScale = (desk: Desk): Question<BodyOf<'scale'> | null> =>
  ask(
    desk,
    'own scale',
    () => desk.store.counterOf(desk.collection),
    () => scaleSet(desk),
  );
