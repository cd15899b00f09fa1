import type { Desk, Question } from '../desk';
import { type EyesKnown, eyesKnown } from '../questions/eyesKnown';
import { ask } from '../questions/question';

/** What is known of each surveyor's eye, from all zones asked again and all eye checks of the collection. */
export const eyesOf = (desk: Desk): Question<EyesKnown> =>
  ask(
    desk,
    'eyes',
    () => desk.store.changes(),
    () => eyesKnown(desk),
  );
