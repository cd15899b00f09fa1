import type { BodyOf } from '../../engine/record';
import type { Desk, Question } from '../desk';
import { ask } from './question';

/** `name` is null until the collection was set up: the welcome screen. */
export interface CollectionState {
  readonly thing: string;
  readonly name: string | null;
  readonly invented: boolean;
}

export const collectionState = (desk: Desk): Question<CollectionState> =>
  ask(
    desk,
    'collection',
    () => `${desk.collection} ${desk.store.counterOf(desk.collection)}`,
    async () => {
      const current = await desk.store.current(desk.collection);
      const body = current && !current.gone ? (current.lead.body as BodyOf<'collection'>) : undefined;
      return { thing: desk.collection, name: body?.name ?? null, invented: body?.invented === true };
    },
  );
