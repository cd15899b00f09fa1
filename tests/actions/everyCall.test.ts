import { afterEach, expect, test, vi } from 'vitest';
import * as actions from '../../src/actions';
import { deskOn } from '../../src/actions';
import { sweepArrivals } from '../../src/actions/carry';
import type { Store } from '../../src/device/store';
import { failAt } from '../device/store/failAt';
import { besideTheStore, everyDeed, onlyAsk } from './everyDeed';
import { livedIn } from './livedIn';

afterEach(() => vi.restoreAllMocks());

test('every action of the app is in one of the three lists, and in one only', () => {
  const functions = Object.entries(actions).flatMap(([name, what]) => (typeof what === 'function' ? [name] : []));
  const listed = [...new Set(Object.keys(everyDeed).map((name) => name.split(',')[0])), ...onlyAsk, ...besideTheStore];
  expect(listed.sort()).toEqual(functions.sort());
});

/** All that a person entered, and what is at hand of it. */
const lying = async (store: Store) => {
  const rounds = await store.ofKind('round');
  const touches = await Promise.all(rounds.map(({ thing }) => store.touchesOf(thing)));
  const entries = await store.allEntries();
  return {
    entries: entries.sort((a, b) => (a.id < b.id ? -1 : 1)),
    touches: touches.flat(),
    last: await store.lastDeed(),
    bytes: (await store.photosHere()).sort(),
  };
};
type Lying = Awaited<ReturnType<typeof lying>>;

type Came = 'done' | { readonly refused: string };

const came = async (run: Promise<unknown>): Promise<Came> => {
  const outcome = await run.catch((error: { reason?: { code: string } }) => {
    // A problem of the store is told; anything else is a fault of ours, and goes on.
    if (!error.reason) throw error;
    return { ok: false, reason: error.reason };
  });
  const told = (outcome ?? {}) as { ok?: boolean; reason?: { code: string } };
  return told.ok === false ? { refused: told.reason?.code ?? '' } : 'done';
};

/** Without what a deed may leave behind by its nature when a later step of it failed. */
const toCompare = (lies: Lying, deed: { keepsBytes?: true }): Partial<Lying> =>
  deed.keepsBytes ? { ...lies, bytes: [] } : lies;

const most = 600;

test.each(Object.keys(everyDeed))(
  '%s: whichever call to the database fails, it is told, and all of it or nothing is there',
  async (name) => {
    const deed = everyDeed[name]!;
    let lived = await livedIn(1);
    let given = (await deed.before(lived)) as never;
    let was = await lying(lived.store);
    let n = 0;
    let made = 0;
    /** Calls whose failing was no failing of the deed, and the entries there after it. */
    const borne: [call: number, entries: number][] = [];
    do {
      n += 1;
      const counted = failAt(n);
      const told = await came(deed.run(lived, given)).finally(() => {
        made = counted();
        vi.restoreAllMocks();
      });
      if (made < n) {
        expect(told, 'it is done once nothing fails').toBe('done');
        break;
      }
      if (told !== 'done') expect(told.refused, `call ${n}`).toBe('store failed');
      if (told === 'done' || deed.inSteps) {
        const after = await lying(lived.store);
        if (told === 'done') borne.push([n, after.entries.length]);
        else
          for (const { id } of was.entries)
            expect(
              after.entries.some((entry) => entry.id === id),
              `call ${n}`,
            ).toBe(true);
        const again = await lived.again();
        expect(await again.checkCounts()).toBe(after.entries.length);
        // What an import that was cut off left behind goes at the next start.
        await sweepArrivals(deskOn(again));
        expect(await again.metas('arriving ')).toEqual([]);
        const things = await again.currents((await again.photosHere()).map((name) => `photo/${name}`));
        if (name.endsWith('of a bag')) expect(things, `call ${n}`).not.toContain(undefined);
        again.close();
        lived = await livedIn(n + 1);
        given = (await deed.before(lived)) as never;
        was = await lying(lived.store);
      } else expect(toCompare(await lying(lived.store), deed), `call ${n}`).toEqual(toCompare(was, deed));
    } while (n < most);
    expect(n, 'more than one call was tried').toBeGreaterThan(1);
    expect(n).toBeLessThan(most);
    const after = await lying(lived.store);
    const again = await lived.again();
    expect(await lying(again)).toEqual(after);
    for (const [call, entries] of borne) expect(entries, `call ${call}`).toBe(after.entries.length);
    expect(await again.checkCounts()).toBe(after.entries.length);
    again.close();
    if (process.env.CALLS) {
      const said = borne.length > 0 ? `, borne: ${borne.map(([call]) => call)}` : '';
      process.stdout.write(`${name}: ${n - 1} calls${said}\n`);
    }
  },
);
