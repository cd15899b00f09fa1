import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsWithin } from '../theThing';
import { ask } from './question';

/** Sides of a work, in order. */
export const elevationsOf = (desk: Desk, sculpture: string): Question<readonly Thing<'elevation'>[]> =>
  ask(
    desk,
    `elevations ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => (await thingsWithin(desk, 'elevation', sculpture)).sort((a, b) => a.body.order - b.body.order),
  );

/** Thoughts about a work, never mixed with findings. In the order they were written down. */
export const interpretationsOf = (desk: Desk, sculpture: string): Question<readonly Thing<'interpretation'>[]> =>
  ask(
    desk,
    `interpretations ${sculpture}`,
    () => desk.store.counterOf(sculpture),
    async () => (await thingsWithin(desk, 'interpretation', sculpture)).sort((a, b) => (a.thing < b.thing ? -1 : 1)),
  );
