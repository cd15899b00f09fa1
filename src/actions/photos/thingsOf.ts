import type { KindOfThing, Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from '../questions/question';
import { thingsWithin } from '../theThing';

/** Kinds a screen may ask for by themselves: they stand in no sum. */
type KindAsked = Extract<
  KindOfThing,
  | 'photo'
  | 'elevation'
  | 'outline'
  | 'runOff'
  | 'station'
  | 'sentinel'
  | 'photoFit'
  | 'measure'
  | 'reading'
  | 'agreedColour'
  | 'insertValue'
>;

/** Living things of one kind within a work, in order of their names (which is the order they were made in, where names are ids). */
export const thingsOf = <K extends KindAsked>(desk: Desk, kind: K, sculpture: string): Question<readonly Thing<K>[]> =>
  ask(
    desk,
    `${kind}s of ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => (await thingsWithin(desk, kind, sculpture)).sort((a, b) => (a.thing < b.thing ? -1 : 1)),
  );
