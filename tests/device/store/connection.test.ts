import { afterEach, expect, test, vi } from 'vitest';
import { open, openFresh } from './around';
import { at, batchOf, deviceStoreBatch, entry, openWithTwo } from './batches';

afterEach(() => vi.restoreAllMocks());

/** The browser clears a database without asking those who have it open. */
const clearedByBrowser = (name: string) =>
  (indexedDB as unknown as { _databases: Map<string, unknown> })._databases.delete(name);

/** As on a tablet after sleep: the connection is there and takes no more transactions. Dexie warns, and tries by itself. */
const losing = () => {
  let left = 0;
  const real = IDBDatabase.prototype.transaction;
  vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (this: IDBDatabase, ...all) {
    if (left > 0) {
      left -= 1;
      throw new DOMException('The database connection is closing.', 'InvalidStateError');
    }
    return real.apply(this, all);
  });
  return {
    next: (times: number) => {
      left = times;
    },
  };
};

test.each([1, 2, 3])(
  'a connection lost in sleep, found dead %i times, is opened anew and the deed done without a word',
  async (times) => {
    const lose = losing();
    const { store } = await openWithTwo(1);
    lose.next(times);
    await store.commit(deviceStoreBatch('three'));
    expect(await store.checkCounts()).toBe(4);
    store.close();
  },
);

test('a connection lost for good is told, with the deed that was not stored', async () => {
  const lose = losing();
  const { store } = await openWithTwo(2);
  lose.next(Number.POSITIVE_INFINITY);
  await expect(store.commit(deviceStoreBatch('three'))).rejects.toMatchObject({
    reason: { code: 'connection lost', params: { deed: 'three' } },
  });
  lose.next(0);
  expect(await store.allEntries()).toHaveLength(2);
  store.close();
});

test('a connection lost over a database the browser cleared does not write one touch into the empty one', async () => {
  const lose = losing();
  const { store, name } = await openWithTwo(7);
  clearedByBrowser(name);
  lose.next(1);
  const row = { round: 'round/r', zone: 'zone/1', at, by: '', touch: { do: 'nothing' } };
  await expect(store.touch(row)).rejects.toMatchObject({ reason: { code: 'data removed', params: { count: 2 } } });
  expect([store.mode, store.canTakeOver]).toEqual(['reading', false]);
  await expect(store.touch(row)).rejects.toMatchObject({ reason: { code: 'data removed' } });
  store.close();
});

test('a full tablet names the deed, keeps what was there, and takes the next small deed', async () => {
  const { store } = await openWithTwo(3);
  vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });
  await expect(store.commit(deviceStoreBatch('three'))).rejects.toMatchObject({
    reason: { code: 'device full', params: { deed: 'three' } },
  });
  vi.restoreAllMocks();
  expect(await store.checkCounts()).toBe(2);
  await store.commit(deviceStoreBatch('four'));
  expect(await store.checkCounts()).toBe(4);
  store.close();
});

test('a key called __proto__ in a body is stored as a key and changes no other object', async () => {
  const { store } = await openFresh(4);
  const body = JSON.parse('{"letter":"A","__proto__":{"polluted":true},"constructor":1}');
  await store.commit(batchOf('one', [entry('x', 'zone/1', body)]));
  const back = (await store.current('zone/1'))?.lead.body ?? {};
  expect(Object.keys(back).sort()).toEqual(['__proto__', 'constructor', 'letter']);
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  expect(Object.getPrototypeOf(back)).toBe(Object.prototype);
  store.close();
});

test('a present state that does not follow from the entries is found by the check, and made anew from them', async () => {
  const { store, around, name } = await openWithTwo(5);
  store.close();
  const again = await open(name, around);
  const broken = await new Promise<IDBDatabase>((done, refused) => {
    const asked = indexedDB.open(name);
    asked.onsuccess = () => done(asked.result);
    asked.onerror = () => refused(asked.error);
  });
  const tx = broken.transaction('current', 'readwrite');
  tx.objectStore('current').delete('zone/1');
  await new Promise((done) => {
    tx.oncomplete = done;
  });
  broken.close();
  await expect(again.checkCounts()).rejects.toMatchObject({ reason: { code: 'present state differs' } });
  await again.rebuildCurrent();
  expect(await again.checkCounts()).toBe(2);
  again.close();
});

test('a store that is still read beside the page is removed once that lets go, without a warning', async () => {
  const { store } = await openFresh();
  const { name } = store;
  const opened = indexedDB.open(name);
  const reading = await new Promise<IDBDatabase>((done) => {
    opened.onsuccess = () => done(opened.result);
  });
  reading.onversionchange = () => setTimeout(() => reading.close(), 50);
  await store.destroy();
  expect((await indexedDB.databases()).map((each) => each.name)).not.toContain(name);
});
