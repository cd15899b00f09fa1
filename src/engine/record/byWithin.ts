import type { Current } from './current';

/** Present things by the sculpture, or the collection, they belong to. */
export const byWithin = (currents: Iterable<Current>): Map<string, Current[]> => {
  const groups = new Map<string, Current[]>();
  for (const current of currents) {
    const own = groups.get(current.within);
    if (own) own.push(current);
    else groups.set(current.within, [current]);
  }
  return groups;
};
