import type { Question } from '../../actions';

/** The question asked where there is nothing to ask: hooks may not be left out. */
export const noAnswer: Question<null> & { get(): null } = { subscribe: () => () => undefined, get: () => null };
