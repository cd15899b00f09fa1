import type { SculptureRecord } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';
import { recordOf, recordStamp } from './records';

/** All living things of one sculpture, the same reference until something within it changes; null where it is not here. */
export const sculptureRecordOf = (desk: Desk, sculpture: string): Question<SculptureRecord | null> =>
  ask(
    desk,
    `record ${sculpture}`,
    () => recordStamp(desk, sculpture),
    async () => ((await desk.store.current(sculpture))?.gone === false ? recordOf(desk, sculpture) : null),
  );
