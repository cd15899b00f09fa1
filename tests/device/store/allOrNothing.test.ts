import { afterEach, expect, test, vi } from 'vitest';
import { open } from './around';
import { deviceStoreBatch, openWithTwo } from './batches';

afterEach(() => vi.restoreAllMocks());

/** Makes the n-th write of any table fail as a broken disk would. Gives how many writes were asked for. */
const failAt = (n: number): { readonly asked: () => number } => {
  let asked = 0;
  for (const method of ['add', 'put', 'delete'] as const) {
    const real = IDBObjectStore.prototype[method] as (this: IDBObjectStore, ...all: unknown[]) => IDBRequest;
    vi.spyOn(IDBObjectStore.prototype, method as 'put').mockImplementation(function (
      this: IDBObjectStore,
      ...all: unknown[]
    ) {
      asked += 1;
      if (asked === n) throw new DOMException('the disk is broken', 'UnknownError');
      return real.apply(this, all) as IDBRequest<IDBValidKey>;
    });
  }
  return { asked: () => asked };
};

test('whichever write of a deed fails, nothing of the deed is stored, and the counts and present states stay right', async () => {
  let n = 1;
  for (; n < 60; n++) {
    const { store, around, name } = await openWithTwo(n);
    const before = await store.allEntries();
    const { asked } = failAt(n);
    const outcome = await store.commit(deviceStoreBatch('three')).then(
      () => 'stored',
      () => 'refused',
    );
    vi.restoreAllMocks();
    store.close();
    const again = await open(name, around);
    expect(await again.checkCounts(), `write ${n}`).toBe(outcome === 'stored' ? before.length + 2 : before.length);
    if (outcome === 'refused') expect(await again.allEntries()).toEqual(before);
    again.close();
    if (asked() < n) break;
  }
  expect(n, 'a deed is more than one write, and the loop reached past the last').toBeGreaterThan(4);
  expect(n).toBeLessThan(60);
});

test('present states worked out anew from the entries are the ones that were kept', async () => {
  const { store } = await openWithTwo(3);
  await store.commit(deviceStoreBatch('three'));
  const kept = await store.within('sculpture/s');
  await store.rebuildCurrent();
  expect(await store.within('sculpture/s')).toEqual(kept);
  expect(await store.checkCounts()).toBe(4);
  store.close();
});
