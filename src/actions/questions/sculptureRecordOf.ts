import type { SculptureRecord } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';
import { recordOf } from './records';

/** All living things of one sculpture, the same reference until something it rests on changes; null where it is not here. */
export const sculptureRecordOf = (desk: Desk, sculpture: string): Question<SculptureRecord | null> =>
  ask(
    desk,
    `record ${sculpture}`,
    () => desk.store.changes(),
    async () => ((await desk.store.current(sculpture))?.gone === false ? recordOf(desk, sculpture) : null),
  );
