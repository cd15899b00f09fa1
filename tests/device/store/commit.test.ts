import { expect, test } from 'vitest';
import { open, openFresh } from './around';
import { batchOf as batch, deviceStoreBatch, entry, openWithTwo } from './batches';

test('what was committed is there after the store is opened again, with this device and a rising counter', async () => {
  const { store, around, name } = await openFresh();
  await store.commit(batch('one', [entry('a', 'zone/1', { letter: 'A' }), entry('b', 'zone/2', { letter: 'B' })]));
  await store.commit(batch('two', [entry('c', 'zone/1', { letter: 'C' }, ['a'])]));
  store.close();
  const again = await open(name, around);
  expect(await again.current('zone/1')).toMatchObject({ gone: false, heads: ['c'], lead: { body: { letter: 'C' } } });
  expect((await again.allEntries()).map((e) => [e.id, e.device, e.n])).toEqual([
    ['a', again.device, 1],
    ['b', again.device, 2],
    ['c', again.device, 3],
  ]);
  expect(await again.within('sculpture/s', ['zone'])).toHaveLength(2);
  expect(await again.lastDeed()).toMatchObject({ deed: 'two' });
  expect(await again.checkCounts()).toBe(3);
  expect(again.counterOf('sculpture/s')).toBe(2);
  again.close();
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
