import Dexie from 'dexie';
import { expect, test, vi } from 'vitest';
import { openStore } from '../../../src/device/store';
import { freshName, open, surroundings } from './around';
import { batchOf, deviceStoreBatch, entry, openWithTwo } from './batches';

const collection = () => 'collection/c';

test('what is written is written with strict durability', async () => {
  const asked: (string | undefined)[] = [];
  const real = IDBDatabase.prototype.transaction;
  const spy = vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(function (
    this: IDBDatabase,
    tables,
    mode,
    options,
  ) {
    if (mode === 'readwrite') asked.push((options as IDBTransactionOptions | undefined)?.durability);
    return real.call(this, tables, mode, options);
  });
  const { store } = await openWithTwo(1);
  await store.touch({ round: 'round/r', zone: 'zone/1', at: 't', by: '', touch: { do: 'close' } });
  store.close();
  spy.mockRestore();
  expect(asked.length).toBeGreaterThan(1);
  expect(new Set(asked)).toEqual(new Set(['strict']));
});

test('a database made by a newer build is read and never written', async () => {
  const { store, around, name } = await openWithTwo(2);
  store.close();
  const newer = await new Promise<IDBDatabase>((opened, refused) => {
    const asked = indexedDB.open(name, 990);
    asked.onsuccess = () => opened(asked.result);
    asked.onerror = () => refused(asked.error);
  });
  newer.close();
  const old = await open(name, around);
  expect(old.mode).toBe('reading');
  expect(old.why?.code).toBe('newer database');
  expect(old.canTakeOver).toBe(false);
  await expect(old.commit(deviceStoreBatch('three'))).rejects.toMatchObject({ reason: { code: 'newer database' } });
  expect(await old.allEntries()).toHaveLength(2);
  old.close();
});

test('a tablet whose data the browser removed is told from a new one, and can start afresh', async () => {
  const { store, around, name } = await openWithTwo(3);
  store.close();
  await Dexie.delete(name);
  const opening = await openStore(name, collection, around);
  expect(opening).toMatchObject({ state: 'removed', reason: { code: 'data removed', params: { count: 2 } } });
  if (opening.state !== 'removed') return;
  const afresh = await opening.startAfresh();
  expect(afresh.state).toBe('open');
  if (afresh.state === 'open') {
    expect(await afresh.store.allEntries()).toEqual([]);
    afresh.store.close();
  }
});

const elsewhere = (id: string, thing: string) => ({ ...entry(id, thing, { letter: id }), device: 'elsewhere', n: 1 });
const arriving = { id: 'in', name: { code: 'in', params: {} }, at: '2026-05-20T10:00:00.000+00:00' };

test('an import taken back, and a kill before the browser wrote the marker to the disk: no loss is cried', async () => {
  const { store, around, name } = await openWithTwo(31);
  await store.takeIn([elsewhere('f1', 'zone/7'), elsewhere('f2', 'zone/8')] as never, arriving);
  const onDisk = around.box.read(`${name}.marker`);
  await store.takeOut('in');
  around.box.write(`${name}.marker`, onDisk);
  store.close();
  const again = await open(name, around);
  expect(again.notes).toEqual([]);
  expect(await again.allEntries()).toHaveLength(2);
  again.close();
});

test('the one import there was taken back, and the same kill: the tablet is empty, and not told to be robbed', async () => {
  const around = surroundings(32);
  const name = freshName();
  const store = await open(name, around);
  await store.takeIn([elsewhere('f1', 'zone/7')] as never, arriving);
  const onDisk = around.box.read(`${name}.marker`);
  await store.takeOut('in');
  around.box.write(`${name}.marker`, onDisk);
  store.close();
  const again = await open(name, around);
  expect(again.notes).toEqual([]);
  again.close();
});

test('something erased, and the same kill: no loss is cried; entries that went without a word are missed still', async () => {
  const { store, around, name } = await openWithTwo(33);
  const onDisk = around.box.read(`${name}.marker`);
  const [one] = await store.allEntries();
  const body = { entries: [one?.id], hashes: [], reason: 'Asked for', date: '2026-05-20' };
  await store.commit(batchOf('erased', [entry('e-1', 'erasure/e', body)]));
  around.box.write(`${name}.marker`, onDisk);
  store.close();
  const again = await open(name, around);
  expect(again.notes).toEqual([]);
  again.close();
  around.box.write(`${name}.marker`, { ...(onDisk as object), entries: 9 });
  const robbed = await open(name, around);
  expect(robbed.notes).toMatchObject([{ code: 'entries missing' }]);
  robbed.close();
});

test('data removed while the app is open is noticed at the next deed: it is refused, not written into an empty database', async () => {
  const { store, name } = await openWithTwo(4);
  await Dexie.delete(name);
  await expect(store.commit(deviceStoreBatch('three'))).rejects.toMatchObject({ name: 'StoreProblem' });
  expect(store.mode).toBe('reading');
  store.close();
  expect((await Dexie.getDatabaseNames()).includes(name) ? await countIn(name) : 0).toBe(0);
});

const countIn = async (name: string): Promise<number> => {
  const db = await new Dexie(name).open();
  const count = db.tables.some((t) => t.name === 'entries') ? await db.table('entries').count() : 0;
  db.close();
  return count;
};

test('a database that is new has no marker to miss, and a second store of another name is another store', async () => {
  const around = surroundings(5);
  const one = await open(freshName(), around);
  const two = await open(freshName(), around);
  await one.commit(batchOf('one', [entry('x', 'zone/1', { letter: 'A' })]));
  expect(await two.allEntries()).toEqual([]);
  expect(one.device).not.toBe(two.device);
  one.close();
  two.close();
});
