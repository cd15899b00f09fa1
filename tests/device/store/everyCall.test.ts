import { afterEach, expect, test, vi } from 'vitest';
import type { Store } from '../../../src/device/store';
import type { Entry } from '../../../src/engine/record';
import { open } from './around';
import { at, batchOf, entry, openWithTwo } from './batches';
import { failAt } from './failAt';

afterEach(() => vi.restoreAllMocks());

const touch = (zone: string) => ({ round: 'round/r', zone, at, by: '', touch: { do: 'nothing' } });
const elsewhere = (id: string, thing: string, replaces: string[] = []): Entry =>
  ({ ...entry(id, thing, { letter: id }, replaces), device: 'elsewhere', n: 1 }) as Entry;
const coming = [elsewhere('f1', 'zone/1', ['one-1']), elsewhere('f2', 'zone/7'), elsewhere('f3', 'zone/2')];
const arriving = { id: 'in', name: { code: 'in', params: {} }, at };

const photo = { sha256: 'a'.repeat(64), mime: 'image/jpeg', bytes: new Uint8Array([1, 2, 3]).buffer };
const erasure = entry('e-1', 'erasure/e', {
  entries: ['two-1', 'one-2'],
  hashes: [photo.sha256],
  reason: 'Asked for',
  date: '2026-05-20',
});

interface Deed {
  before?(store: Store): Promise<unknown>;
  run(store: Store): Promise<unknown>;
}

const deeds: Readonly<Record<string, Deed>> = {
  'leaving a zone': {
    before: async (store) => [await store.touch(touch('zone/1')), await store.touch(touch('zone/1'))],
    run: (store) =>
      store.commit({
        ...batchOf('two', [entry('two-1', 'zone/1', { letter: 'Z' }, ['one-1']), entry('two-2', 'zone/3', {})]),
        settlesTouches: [1, 2],
      }),
  },
  'taking a deed back': {
    before: async (store) => {
      await store.touch(touch('zone/1'));
      await store.commit({ ...batchOf('two', [entry('two-1', 'zone/3', {})]), settlesTouches: [1] });
    },
    run: (store) => {
      const back = batchOf('back', [{ ...entry('back-1', 'zone/3', {}, ['two-1']), gone: true }]);
      return store.commit({ ...back, deed: { ...back.deed, undoes: 'two' }, reopensTouches: [1] });
    },
  },
  'carrying a survey in': { run: (store) => store.takeIn(coming, arriving) },
  'taking an import out': { before: (store) => store.takeIn(coming, arriving), run: (store) => store.takeOut('in') },
  erasing: {
    before: async (store) => {
      await store.keepPhoto(photo);
      await store.touch(touch('zone/1'));
      await store.commit({ ...batchOf('two', [entry('two-1', 'zone/3', { note: 'Ann' })]), settlesTouches: [1] });
    },
    run: (store) =>
      store.commit({
        ...batchOf('erased', [erasure, entry('again-1', 'zone/1', { letter: 'Q' }, ['one-1'])]),
        instead: { words: ['Ann'], put: 'Steward' },
      }),
  },
  'carrying an erasure in': {
    before: async (store) => {
      await store.keepPhoto(photo);
      await store.commit(batchOf('two', [entry('two-1', 'zone/3', {})]));
    },
    run: (store) => store.takeIn([...coming, { ...elsewhere('f9', 'erasure/e'), body: erasure.body }], arriving),
  },
  'making present states anew': { run: (store) => store.rebuildCurrent() },
};

/** All that lies in the store, as far as a deed may change it. */
const lying = async (store: Store) => ({
  entries: await store.allEntries(),
  present: await store.within('sculpture/s'),
  touches: await store.touchesOf('round/r'),
  last: await store.lastDeed(),
  bytes: await store.photosHere(),
  held: await store.held(),
});

test.each(Object.keys(deeds))(
  '%s: whichever call to the database fails, all of it is there or nothing of it',
  async (which) => {
    const { before, run } = deeds[which] as Deed;
    let n = 1;
    let made = 0;
    do {
      const { store, around, name } = await openWithTwo(n);
      await before?.(store);
      const was = await lying(store);
      const counted = failAt(n);
      const outcome = await run(store).then(
        () => 'stored',
        (error: { reason?: { code: string } }) => error.reason?.code,
      );
      made = counted();
      vi.restoreAllMocks();
      expect(outcome, `call ${n}`).toBe(made < n ? 'stored' : 'store failed');
      store.close();
      const again = await open(name, around);
      if (outcome !== 'stored') expect(await lying(again), `call ${n}`).toEqual(was);
      expect(await again.checkCounts()).toBe((await again.allEntries()).length);
      again.close();
      n += 1;
    } while (made >= n - 1);
    expect(n, 'more than one call was tried').toBeGreaterThan(4);
  },
);
