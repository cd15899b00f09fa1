import { afterEach, expect, test } from 'vitest';
import { sha256 } from '../../../src/device/hash';
import type { LookedThrough, Store } from '../../../src/device/store';
import { database } from '../../../src/device/store/database';
import { batchOf, entry, openWithTwo } from './batches';

let open: Store[] = [];
afterEach(() => {
  for (const store of open) store.close();
  open = [];
});

const looked = async (store: Store): Promise<LookedThrough> => {
  let came: LookedThrough | undefined;
  let far = 0;
  for await (const step of store.lookThrough()) {
    if ('looked' in step) came = step.looked;
    else {
      expect(step.done).toBeGreaterThanOrEqual(far);
      expect(step.done).toBeLessThanOrEqual(step.all);
      far = step.done;
    }
  }
  return came as LookedThrough;
};

/** A store of two zones and one photo that is spoken of. */
const withPhoto = async (seed: number) => {
  const opened = await openWithTwo(seed);
  open.push(opened.store);
  const bytes = new Uint8Array([1, 2, 3, seed]).buffer;
  const name = await sha256(bytes);
  await opened.store.keepPhoto({ sha256: name, mime: 'image/jpeg', bytes });
  await opened.store.commit(batchOf('two', [entry('photo-1', `photo/${name}`, {})]));
  return { ...opened, name };
};

/** As a device would damage it: past the store, which would not. */
const damaged = async (store: Store, damage: (db: ReturnType<typeof database>) => Promise<unknown>): Promise<void> => {
  const db = database(store.name);
  await db.open();
  await damage(db);
  db.close();
};

const sound = { entries: 3, photos: 1, presentWrong: 0, altered: [], orphans: [], missing: 0, faults: [] };

test('a sound store is looked through and found sound', async () => {
  const { store } = await withPhoto(1);
  expect(await looked(store)).toEqual(sound);
});

test('an entry the device lost, one it altered and one without a present state are each found and said', async () => {
  const lost = await withPhoto(2);
  await damaged(lost.store, (db) => db.entries.delete('one-1'));
  const found = await looked(lost.store);
  expect(found.faults.map(({ code }) => code)).toEqual(['counts differ', 'present state differs']);
  expect(found.faults[0]?.params).toEqual({ count: 2, expected: 3 });

  const altered = await withPhoto(3);
  await damaged(altered.store, async (db) => {
    const row = await db.entries.get('one-2');
    await db.entries.put({ ...row!, body: { letter: 'Q' } });
  });
  expect((await looked(altered.store)).faults).toEqual([{ code: 'present state differs', params: { things: 1 } }]);

  const unspoken = await withPhoto(4);
  await damaged(unspoken.store, (db) => db.current.delete('zone/1'));
  expect(await looked(unspoken.store)).toMatchObject({ presentWrong: 1, entries: 3 });
  await unspoken.store.rebuildCurrent();
  expect(await looked(unspoken.store)).toEqual(sound);
});

test('an entry put in the place of another is found by the sum of the ids, though the number is right', async () => {
  const { store } = await withPhoto(5);
  await damaged(store, async (db) => {
    const row = await db.entries.get('one-2');
    await db.entries.delete('one-2');
    await db.entries.put({ ...row!, id: 'one-3' });
  });
  const { faults, entries } = await looked(store);
  expect(entries).toBe(3);
  expect(faults.map(({ code }) => code)).toContain('counts differ');
});

test('a photo whose bytes were altered or came back as nothing is named, and set aside leaves room for a whole one', async () => {
  const { store, name } = await withPhoto(6);
  const whole = (await store.photo(name))!;
  const before = await store.held();
  for (const bytes of [new Uint8Array([9]).buffer, null as never]) {
    await damaged(store, (db) => db.photoBytes.put({ ...whole, bytes }));
    expect(await looked(store)).toMatchObject({ altered: [name], photos: 1, missing: 0 });
  }
  await store.dropPhoto(name);
  expect(await looked(store)).toEqual({ ...sound, photos: 0, missing: 1 });
  await store.keepPhoto(whole);
  expect(await looked(store)).toEqual(sound);
  expect((await store.held()).photos).toBe(before.photos);
});

test('bytes nothing speaks of are told from a photo that was removed, which Undo may bring back', async () => {
  const { store, name } = await withPhoto(7);
  const bytes = new Uint8Array([7, 7]).buffer;
  const stray = await sha256(bytes);
  await store.keepPhoto({ sha256: stray, mime: 'image/jpeg', bytes });
  await store.commit(
    batchOf('three', [{ ...entry('photo-2', `photo/${name}`, {}, ['photo-1']), gone: true as const }]),
  );
  expect(await looked(store)).toMatchObject({ photos: 2, orphans: [stray], missing: 0 });
});

test('a photo taken off the device is noted in the same transaction, its thumbnail stays, and its bytes are no longer counted', async () => {
  const { store, name } = await withPhoto(8);
  await store.keepThumb({ sha256: name, mime: 'image/jpeg', bytes: new Uint8Array(10).buffer });
  const { bytes } = await store.held();
  await store.dropPhoto(name, { key: `away ${name}`, value: { name: 'last.survey.zip' } });
  expect(await store.photosHere()).toEqual([]);
  expect(await store.thumb(name)).toBeDefined();
  expect(await store.meta(`away ${name}`)).toEqual({ name: 'last.survey.zip' });
  expect((await store.held()).bytes).toBe(bytes - 4);
});

test('what is entered while it is looked through makes no false alarm', async () => {
  const { store } = await withPhoto(9);
  let made = 0;
  let came: LookedThrough | undefined;
  for await (const step of store.lookThrough()) {
    if ('looked' in step) came = step.looked;
    else if (made < 2)
      await store.commit(batchOf(`meanwhile-${++made}`, [entry(`more-${made}`, `zone/1${made}`, { letter: 'M' })]));
  }
  expect(came?.faults).toEqual([]);
  expect(made).toBe(2);
});
