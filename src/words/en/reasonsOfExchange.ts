import type { Params } from './sentence';

/** What is wrong in a survey file, where, and what to do. */
export const reasonsOfExchange = {} satisfies Readonly<Record<string, (s: Params) => string>>;
