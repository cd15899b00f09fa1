import { stateOfAll, stateOfThings } from '../../device/stateOfThings';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { live } from './live';

/** The word that names the state of the whole record, as papers of it name it. All of it is read: for what is printed only. */
export const recordState = (desk: Desk): Question<string> =>
  live(desk, 'state of the record', async () => {
    const works = (await thingsOfKind(desk, 'sculpture')).map(({ thing }) => thing);
    const states = await Promise.all(
      [desk.collection, ...works].map(async (within) => stateOfThings(await desk.store.within(within))),
    );
    return { value: stateOfAll(states) };
  });
