import { assemble, sameContent } from '../../engine/record';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import { currentRow, type Tables } from './database';
import { putSelf, renewCounters, type Self, selfIn } from './self';
import { noTally, withEntries } from './tally';
import type { Written } from './writing';

/** Inside a transaction: every entry counted and summed, every present state held against its entries. Gives the number of entries. */
export const checkAll = async (t: Tables): Promise<number> => {
  const self = (await selfIn(t)) as Self;
  const entries = await t.entries.toArray();
  const found = withEntries(
    noTally,
    entries.map((entry) => entry.id),
  );
  const expected = self.tally;
  if (!sameContent(found, expected))
    throw new StoreProblem(deviceReason('counts differ', { count: found.entries, expected: expected.entries }));
  const rows = new Map((await t.current.toArray()).map((row) => [row.thing, row]));
  const wrong = [...assemble(entries).values()].filter(
    (current) => !sameContent(rows.get(current.thing), currentRow(current)),
  );
  if (wrong.length > 0 || rows.size !== new Set(entries.map((entry) => entry.thing)).size)
    throw new StoreProblem(deviceReason('present state differs', { things: Math.max(1, wrong.length) }));
  return found.entries;
};

/** Inside a transaction: present states and counts made anew from the entries, which alone are the record. */
export const rebuildAll = async (t: Tables): Promise<Written> => {
  const before = (await selfIn(t)) as Self;
  const entries = await t.entries.toArray();
  await t.current.clear();
  const currents = [...assemble(entries).values()].map(currentRow);
  await t.current.bulkPut(currents);
  const self = {
    ...before,
    tally: withEntries(
      noTally,
      entries.map((entry) => entry.id),
    ),
  };
  await putSelf(t, self);
  return { self, counters: await renewCounters(t, currents) };
};
