import { nameOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsWithin } from '../theThing';
import { ask } from './question';

export interface SurveyorRow {
  readonly thing: string;
  readonly role: string;
  /** Missing where the name stayed at home, or was never given. */
  readonly name?: string;
}

export const surveyors = (desk: Desk): Question<readonly SurveyorRow[]> =>
  ask(
    desk,
    'surveyors',
    () => `${desk.collection} ${desk.store.counterOf(desk.collection)}`,
    async () => {
      const people = await thingsWithin(desk, 'surveyor', desk.collection);
      const named = await thingsWithin(desk, 'name', desk.collection);
      const names = new Map(named.map((n) => [n.thing, n.body.name]));
      return people.map(({ thing, body }) => {
        const name = names.get(nameOf.personName(thing));
        return { thing, role: body.role, ...(name === undefined ? {} : { name }) };
      });
    },
  );
