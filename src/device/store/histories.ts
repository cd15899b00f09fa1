import type { Entry } from '../../engine/record';
import type { Tables } from './database';

/** Above this many things, reading all entries at once is quicker than asking for each (measured: tests/bench). */
const manyThings = 500;

/** Inside a transaction: all entries of these things, by thing. Things without entries are not in it. */
export const historiesOf = async (t: Tables, things: ReadonlySet<string>): Promise<Map<string, Entry[]>> => {
  const found =
    things.size > manyThings
      ? (await t.entries.toArray()).filter((entry) => things.has(entry.thing))
      : (await Promise.all([...things].map((thing) => t.entries.where('thing').equals(thing).toArray()))).flat();
  const histories = new Map<string, Entry[]>();
  for (const entry of found) {
    const history = histories.get(entry.thing);
    if (history) history.push(entry);
    else histories.set(entry.thing, [entry]);
  }
  return histories;
};
