import type { Thing } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { thingsOfKind } from '../theThing';
import { ask } from './question';

export type OpenPersonCheck = Thing<'personCheck'>;

/** What could hurt someone, in the whole collection, oldest first. */
export const openPersonChecks = (desk: Desk): Question<readonly OpenPersonCheck[]> =>
  ask(
    desk,
    'openPersonChecks',
    () => desk.store.changes(),
    async () =>
      (await thingsOfKind(desk, 'personCheck'))
        .filter(({ body }) => !body.closed)
        .sort((a, b) => (a.body.opened < b.body.opened ? -1 : 1)),
  );
