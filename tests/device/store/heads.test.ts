import Dexie from 'dexie';
import { expect, test } from 'vitest';
import { database } from '../../../src/device/store/database';
import type { Entry } from '../../../src/engine/record';
import { seeded } from '../../files/seeded';
import { open, openFresh } from './around';
import { at, batchOf, entry, openWithTwo } from './batches';

const from = (e: ReturnType<typeof entry>, within = 'sculpture/s'): Entry =>
  ({ ...e, within, device: 'elsewhere', n: 1 }) as Entry;
const arriving = (id: string) => ({ id, name: { code: 'in', params: {} }, at });

/** A store into which these entries are carried in one go. */
const carriedAtOnce = async (entries: readonly Entry[]) => {
  const { store } = await openFresh(99);
  await store.takeIn(entries, arriving('all'));
  return store;
};

test('two tablets with the same entries name the same heads, whatever the order in which they came to them', async () => {
  const draw = seeded(5);
  for (let run = 0; run < 12; run++) {
    const { store } = await openFresh(run);
    const made: Entry[] = [];
    for (let i = 0; i < 25; i++) {
      const thing = `zone/${draw.below(4)}`;
      const within = draw.below(6) === 0 ? 'sculpture/t' : 'sculpture/s';
      const of = made.filter((e) => e.thing === thing);
      const replaces = of.length > 0 && draw.below(4) > 0 ? [draw.pick(of).id] : [];
      const next = { ...entry(`${run}-${i}`, thing, { i }, replaces), within };
      if (draw.below(3) === 0) {
        await store.takeIn([from(next, within)], arriving(`in ${i}`));
        made.push(from(next, within));
      } else made.push(...(await store.commit(batchOf(`deed ${i}`, [next]))));
    }
    const other = await carriedAtOnce([...made].reverse());
    for (const within of ['sculpture/s', 'sculpture/t'])
      expect(store.headsOf(within), `run ${run}, ${within}`).toBe(other.headsOf(within));
    await store.rebuildCurrent();
    expect(store.headsOf('sculpture/s')).toBe(other.headsOf('sculpture/s'));
    store.close();
    other.close();
  }
});

test('every change within a work gives its heads another name, and leaves that of other works alone', async () => {
  const { store } = await openWithTwo(1);
  const seen = [store.headsOf('sculpture/s')];
  await store.commit(batchOf('a', [entry('a1', 'zone/1', {}, ['one-1'])]));
  seen.push(store.headsOf('sculpture/s'));
  await store.commit(batchOf('b', [{ ...entry('b1', 'zone/1', {}, ['a1']), gone: true }]));
  seen.push(store.headsOf('sculpture/s'));
  await store.takeIn([from(entry('f1', 'zone/2', {}))], arriving('second version'));
  seen.push(store.headsOf('sculpture/s'));
  expect(new Set(seen).size).toBe(seen.length);
  const before = store.headsOf('sculpture/s');
  await store.commit(batchOf('c', [{ ...entry('c1', 'zone/8', {}), within: 'sculpture/t' }]));
  expect(store.headsOf('sculpture/s')).toBe(before);
  store.close();
});

test('a touch, which is no entry, changes no heads', async () => {
  const { store } = await openWithTwo(2);
  const before = store.headsOf('sculpture/s');
  await store.touch({ round: 'round/r', zone: 'zone/1', at, by: '', touch: { do: 'nothing' } });
  expect(store.headsOf('sculpture/s')).toBe(before);
  store.close();
});

test('an import taken back leaves the heads the name they had, also after a restart', async () => {
  const { store, around, name } = await openWithTwo(3);
  const before = store.headsOf('sculpture/s');
  await store.takeIn(
    [from(entry('f1', 'zone/9', {})), from(entry('f2', 'zone/2', {}, ['one-2'])), from(entry('f3', 'zone/1', {}))],
    arriving('in'),
  );
  const between = store.headsOf('sculpture/s');
  store.close();
  const again = await open(name, around);
  expect(again.headsOf('sculpture/s')).toBe(between);
  await again.takeOut('in');
  expect([before === between, again.headsOf('sculpture/s')]).toEqual([false, before]);
  again.close();
});

test('an older entry that makes another head lead is heard, though the heads are the same two', async () => {
  const one = from(entry('z1', 'zone/7', { by: 'one' }, ['z0']));
  const other = from(entry('a1', 'zone/7', { by: 'other' }));
  const { store } = await openFresh(6);
  await store.takeIn([one, other], arriving('two'));
  const before = [store.headsOf('sculpture/s'), (await store.current('zone/7'))?.lead.id];
  await store.takeIn([from(entry('z0', 'zone/7', { by: 'older' }))], arriving('older'));
  const after = [store.headsOf('sculpture/s'), (await store.current('zone/7'))?.lead.id];
  expect([before[1], after[1]], 'the lead changed').toEqual(['a1', 'z1']);
  expect(after[0]).not.toBe(before[0]);
  store.close();
});

test('a database that counted without heads finds them at the first change, and holds them right', async () => {
  const { store, around, name } = await openWithTwo(4);
  store.close();
  const db = database(name);
  await db.open();
  await db.meta.put({ key: 'counter sculpture/s', value: 7 });
  db.close();
  const again = await open(name, around);
  expect(again.counterOf('sculpture/s')).toBe(7);
  await again.commit(batchOf('two', [entry('two-1', 'zone/3', {})]));
  const whole = await carriedAtOnce(await again.allEntries());
  expect([again.counterOf('sculpture/s'), again.headsOf('sculpture/s')]).toEqual([8, whole.headsOf('sculpture/s')]);
  again.close();
  whole.close();
  await Dexie.delete(name);
});

test('what is planned names no new heads, so that no figure is worked out anew, until it has two versions', async () => {
  const { store } = await openWithTwo(1);
  const before = store.headsOf('sculpture/s');
  const counted = store.counterOf('sculpture/s');
  await store.commit(batchOf('a', [entry('a1', 'bid/1', {})]));
  await store.commit(batchOf('b', [entry('b1', 'bid/1', { who: 'x' }, ['a1'])]));
  expect(store.headsOf('sculpture/s')).toBe(before);
  expect(store.counterOf('sculpture/s')).toBeGreaterThan(counted);
  await store.takeIn([from(entry('f1', 'bid/1', {}))], arriving('second version'));
  const two = store.headsOf('sculpture/s');
  expect(two).not.toBe(before);
  await store.rebuildCurrent();
  expect(store.headsOf('sculpture/s')).toBe(two);
  store.close();
});
