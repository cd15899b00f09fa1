import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Store } from '../../src/device/store';
import { unite, writeSurvey } from '../../src/engine/exchange';
import { assemble, type Entry } from '../../src/engine/record';
import { openFresh } from '../device/store/around';
import { collection } from '../files/entries';
import { seeded } from '../files/seeded';
import { clocks, livedThrough, steps } from './histories';
import { enough, lawRuns, runs } from './runs';

const bytes = (entries: readonly Entry[]): string => new TextDecoder().decode(writeSurvey(collection, entries));
const joined = (a: readonly Entry[], b: readonly Entry[]): readonly Entry[] => {
  const united = unite(a, b);
  if (!united.ok) throw new Error(JSON.stringify(united.problems));
  return united.entries;
};
const takeIn = (store: Store, entries: readonly Entry[], n: number) =>
  store.takeIn(entries, { id: `in ${n}`, name: { code: 'in', params: {} }, at: '2026-05-12T10:00:00.000+01:00' });

/** A real store costs more than a list: a fortieth of the trials the other laws have. */
const trials = Math.ceil(lawRuns / 40);

it(
  'real stores that take in each other’s files, old ones among them, in any order, hold the union and their counts are right',
  async () => {
    let names = 0;
    await fc.assert(
      fc.asyncProperty(steps, clocks, fc.integer(), async (all, time, order) => {
        const { tablets, files } = livedThrough(all, time);
        const met = [...tablets, ...files].reduce(joined, []);
        const draw = seeded(order);
        const ends: unknown[] = [];
        for (const own of tablets) {
          const { store } = await openFresh(++names);
          const coming = [...tablets, ...files]
            .map((file) => ({ file, key: draw.next() }))
            .sort((a, b) => a.key - b.key);
          await takeIn(store, own, 0);
          for (const [i, { file }] of coming.entries()) await takeIn(store, file, i + 1);
          const entries = await store.allEntries();
          expect(bytes(entries)).toBe(bytes(met));
          expect(await store.checkCounts()).toBe(met.length);
          for (const [thing, current] of assemble(met)) expect(await store.current(thing)).toMatchObject(current);
          ends.push([...store.allHeads()].sort());
          store.close();
        }
        expect(ends[0]).toEqual(ends[1]);
        expect(ends[1]).toEqual(ends[2]);
      }),
      { ...runs, numRuns: trials },
    );
  },
  enough,
);
