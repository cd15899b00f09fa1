import { expect, test } from 'vitest';
import type { Entry } from '../../../src/engine/record';
import { open } from './around';
import { at, batchOf, deviceStoreBatch, entry, openWithTwo } from './batches';

const coming = (id: string, thing: string, body: Record<string, unknown>, given: Partial<Entry> = {}): Entry =>
  ({ ...entry(id, thing, body), device: 'elsewhere', n: 1, ...given }) as Entry;
const deed = (id: string) => ({ id, name: { code: 'deed: survey carried in', params: {} }, at });

test('what arrives is stored as it came, once; carried in again it adds nothing', async () => {
  const { store } = await openWithTwo(1);
  const file = [
    coming('f1', 'zone/9', { letter: 'I', of: 'a later version' }),
    coming('f2', 'zone/1', { letter: 'Q' }, { replaces: ['one-1'] }),
  ];
  const told: number[] = [];
  expect(await store.takeIn(file, deed('in'), { progress: (done) => told.push(done) })).toMatchObject({
    added: 2,
    already: 0,
  });
  expect(told.length).toBeGreaterThan(0);
  expect((await store.allEntries()).find((e) => e.id === 'f1')).toEqual(file[0]);
  expect(await store.current('zone/1')).toMatchObject({ lead: { body: { letter: 'Q' } } });
  expect(await store.takeIn(file, deed('in again'))).toMatchObject({ added: 0, already: 2 });
  expect(await store.checkCounts()).toBe(4);
  store.close();
});

test('one id with another content ends the whole import: nothing of it is stored', async () => {
  const { store } = await openWithTwo(2);
  const here = (await store.allEntries())[0] as Entry;
  const file = [coming('f1', 'zone/9', { letter: 'I' }), { ...here, body: { letter: 'altered' } }];
  await expect(store.takeIn(file, deed('in'))).rejects.toMatchObject({ reason: { code: 'id twice' } });
  expect(await store.checkCounts()).toBe(2);
  expect(await store.current('zone/9')).toBeUndefined();
  store.close();
});

test('an import taken back leaves the store as it was, also after a restart', async () => {
  const { store, around, name } = await openWithTwo(3);
  const before = [await store.allEntries(), await store.within('sculpture/s')];
  await store.takeIn(
    [coming('f1', 'zone/9', { letter: 'I' }), coming('f2', 'zone/2', { letter: 'Y' }, { replaces: ['one-2'] })],
    deed('in'),
  );
  store.close();
  const again = await open(name, around);
  await again.takeOut('in');
  expect([await again.allEntries(), await again.within('sculpture/s')]).toEqual(before);
  expect(await again.checkCounts()).toBe(2);
  again.close();
});

test('an import something here builds on is not taken back, and says so', async () => {
  const { store } = await openWithTwo(4);
  await store.takeIn([coming('f1', 'zone/9', { letter: 'I' })], deed('in'));
  await store.commit(batchOf('after', [entry('after-1', 'zone/9', { letter: 'J' }, ['f1'])]));
  await expect(store.takeOut('in')).rejects.toMatchObject({ reason: { code: 'built upon', params: { count: 1 } } });
  expect(await store.checkCounts()).toBe(4);
  store.close();
});

test('a copied tablet is found out: entries of its own name it did not make give it another name', async () => {
  const { store } = await openWithTwo(5);
  const was = store.device;
  const taken = await store.takeIn([coming('f1', 'zone/9', { letter: 'I' }, { device: was, n: 3 })], deed('in'));
  expect(taken.copiedTablet).toBe(true);
  expect(store.device).not.toBe(was);
  const [made] = await store.commit(deviceStoreBatch('after'));
  expect([made?.device, made?.n]).toEqual([store.device, 1]);
  store.close();
});

test('two versions made apart are both kept, and the thing is named as one to settle', async () => {
  const { store } = await openWithTwo(6);
  await store.commit(batchOf('mine', [entry('mine-1', 'zone/1', { letter: 'M' }, ['one-1'])]));
  await store.takeIn([coming('theirs', 'zone/1', { letter: 'T' }, { replaces: ['one-1'] })], deed('in'));
  expect((await store.unsettled()).map((c) => [c.thing, [...c.heads].sort()])).toEqual([
    ['zone/1', ['mine-1', 'theirs']],
  ]);
  store.close();
});
