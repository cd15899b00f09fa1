import { expect, test } from 'vitest';
import type { PhotoBytes, Store } from '../../../src/device/store';
import type { Entry } from '../../../src/engine/record';
import { open } from './around';
import { at, batchOf, deviceStoreBatch, entry, openWithTwo } from './batches';

const hash = 'a'.repeat(64);
const photo: PhotoBytes = { sha256: hash, mime: 'image/jpeg', bytes: new Uint8Array([1, 2, 3, 4]).buffer };

const erasure = (id: string, gone: { entries?: string[]; hashes?: string[]; names?: string[] }) => ({
  ...entry(id, `erasure/${id}`, {
    of: 'name',
    entries: [],
    hashes: [],
    reason: 'Asked for',
    date: '2026-05-20',
    ...gone,
  }),
  within: 'collection/c',
});
const coming = (e: ReturnType<typeof entry>, n = 1): Entry => ({ ...e, device: 'elsewhere', n }) as Entry;
const deed = (id: string) => ({ id, name: { code: 'deed: survey carried in', params: {} }, at });
const marked = (around: { box: { read(key: string): unknown } }, name: string) =>
  (around.box.read(`${name}.marker`) as { entries: number }).entries;
const code = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => 'done',
    (error: { reason?: { code: string } }) => error.reason?.code ?? String(error),
  );
const withPhoto = async (store: Store) => {
  await store.keepPhoto(photo);
  await store.keepThumb({ ...photo, bytes: new Uint8Array(2).buffer });
  await store.commit(batchOf('photographed', [entry('p-1', `photo/${hash}`, { sha256: hash, note: 'Passer-by' })]));
};

test('what an erasure names is gone from the store, counted off everywhere, and stays gone after a restart', async () => {
  const { store, around, name } = await openWithTwo(1);
  const heads = store.headsOf('sculpture/s');
  await store.commit(batchOf('erased', [erasure('e-1', { entries: ['one-2'] })]));
  const check = async (at: Store) => {
    expect((await at.allEntries()).map((e) => e.id).sort()).toEqual(['e-1', 'one-1']);
    expect(await at.current('zone/2')).toBeUndefined();
    expect(await at.checkCounts()).toBe(2);
    expect(at.headsOf('sculpture/s')).not.toBe(heads);
  };
  await check(store);
  expect(marked(around, name)).toBe(2);
  store.close();
  const again = await open(name, around);
  await check(again);
  expect(again.notes).toEqual([]);
  again.close();
});

test('a photo erased takes its bytes, its thumbnail and the work begun on it along, and is refused later', async () => {
  const { store } = await openWithTwo(2);
  await withPhoto(store);
  await store.setMeta(`measuring photo/${hash} zone/1`, { begun: true });
  await store.commit(batchOf('erased', [erasure('e-1', { hashes: [hash] })]));
  expect([await store.photosHere(), await store.photo(hash), await store.thumb(hash)]).toEqual([
    [],
    undefined,
    undefined,
  ]);
  expect(await store.held()).toMatchObject({ photos: 0 });
  expect(await store.metas('measuring')).toEqual([]);
  expect(await store.current(`photo/${hash}`)).toBeUndefined();
  expect(await code(store.keepPhoto(photo))).toBe('photo erased');
  expect(await code(store.keepThumb(photo))).toBe('photo erased');
  expect(await code(store.commit(batchOf('again', [entry('p-2', `photo/${hash}`, { sha256: hash })])))).toBe(
    'photo erased',
  );
  expect((await store.erased()).hashes.has(hash)).toBe(true);
  expect(await store.checkCounts()).toBe(3);
  store.close();
});

test('an older file does not bring back what was erased here, and says how much of it was refused', async () => {
  const { store } = await openWithTwo(3);
  const old = await store.allEntries();
  await store.commit(batchOf('erased', [erasure('e-1', { entries: ['one-2'], hashes: [hash], names: ['name/x'] })]));
  const before = await store.allEntries();
  const file = [
    ...old,
    coming(entry('p-9', `photo/${hash}`, { sha256: hash })),
    coming(entry('n-9', 'name/x', { name: 'Ann' })),
  ];
  expect(await store.takeIn(file, deed('old'))).toMatchObject({
    added: 0,
    already: 1,
    refused: 3,
    erased: 0,
    copiedTablet: false,
  });
  expect(await store.allEntries()).toEqual(before);
  expect(await store.checkCounts()).toBe(2);
  store.close();
});

test('an erasure that arrives deletes what it names here; the import says so and cannot be taken back', async () => {
  const { store, around, name } = await openWithTwo(4);
  await withPhoto(store);
  const erased = coming(erasure('e-9', { entries: ['one-2'], hashes: [hash] }) as never);
  const taken = await store.takeIn([erased, coming(entry('z-9', 'zone/9', { letter: 'I' }), 2)], deed('in'));
  expect(taken).toMatchObject({ added: 2, erased: 2 });
  expect(marked(around, name)).toBe(3);
  expect([await store.current('zone/2'), await store.photo(hash)]).toEqual([undefined, undefined]);
  expect(await store.checkCounts()).toBe(3);
  expect(await code(store.takeOut('in'))).toBe('erasing stands');
  expect((await store.lastDeed())?.deed).toBe('one');
  store.close();
});

test('an import with erasures that met nothing here is taken back whole, also after something of it was erased', async () => {
  const { store } = await openWithTwo(5);
  const before = await store.allEntries();
  await store.takeIn([coming(erasure('e-9', { entries: ['elsewhere-1'] }) as never)], deed('in'));
  await store.takeOut('in');
  expect(await store.allEntries()).toEqual(before);
  await store.takeIn([coming(entry('z-8', 'zone/8', {})), coming(entry('z-9', 'zone/9', {}), 2)], deed('more'));
  await store.commit(batchOf('erased', [erasure('e-1', { entries: ['z-8'] })]));
  await store.takeOut('more');
  expect((await store.allEntries()).map((e) => e.id).sort()).toEqual(['e-1', 'one-1', 'one-2']);
  expect(await store.checkCounts()).toBe(3);
  store.close();
});

test('where only the later entry is erased, the one before it stands again', async () => {
  const { store } = await openWithTwo(6);
  await store.commit(deviceStoreBatch('two'));
  await store.commit(batchOf('erased', [erasure('e-1', { entries: ['two-2'] })]));
  expect(await store.current('zone/1')).toMatchObject({ lead: { id: 'one-1' }, heads: ['one-1'] });
  expect(await store.checkCounts()).toBe(4);
  store.close();
});

test('a deed of which nothing is left is not offered for undoing, nor the erasing itself; the deed before them is', async () => {
  const { store } = await openWithTwo(7);
  await store.touch({ round: 'round/r', zone: 'zone/9', at, by: '', touch: { note: 'Ann' } });
  await store.commit({ ...batchOf('named', [entry('n-1', 'name/x', { name: 'Ann' })]), settlesTouches: [1] });
  await store.commit(batchOf('erased', [erasure('e-1', { names: ['name/x'] })]));
  expect((await store.lastDeed())?.deed).toBe('one');
  expect(await store.touchesOf('round/r')).toEqual([]);
  store.close();
});

test('words that go from the entries go from touches, names of deeds and notes of this tablet too, and only whole', async () => {
  const { store } = await openWithTwo(8);
  await store.touch({
    round: 'round/r',
    zone: 'zone/9',
    at,
    by: '',
    touch: { kind: 'ann', note: 'ANN  Smith saw Annual' },
  });
  await store.commit({
    ...batchOf('said', [entry('s-1', 'zone/9', {})]),
    deed: { id: 'said', name: { code: 'deed: class set', params: { by: 'Ann Smith' } }, at },
    notes: { key: 'place', value: { note: 'for Ann Smith', kind: 'ann smith' } },
  });
  await store.commit({
    ...batchOf('erased', [erasure('e-1', {})]),
    instead: { words: ['Ann Smith'], put: 'Steward' },
  });
  expect((await store.touchesOf('round/r'))[0]?.touch).toEqual({ kind: 'ann', note: 'Steward saw Annual' });
  expect((await store.lastDeed())?.name.params.by).toBe('Steward');
  expect(await store.meta('place')).toEqual({ note: 'for Steward', kind: 'ann smith' });
  expect(await store.checkCounts()).toBe(4);
  store.close();
});

test.each([
  ['taken away', { gone: true as const, replaces: ['e-1'] }],
  ['said anew', { replaces: ['e-1'] }],
  ['undone', { restores: 'e-1' }],
])('an erasure cannot be %s, and nothing of such a deed is stored', async (_, over) => {
  const { store } = await openWithTwo(9);
  await store.commit(batchOf('erased', [erasure('e-1', { entries: ['one-2'] })]));
  const again = { ...erasure('e-2', {}), thing: 'erasure/e-1', ...over };
  expect(await code(store.commit(batchOf('back', [again, entry('b-1', 'zone/7', {})])))).toBe('erasing stands');
  expect(await store.checkCounts()).toBe(2);
  store.close();
});

test('an entry with minus nought, or with a field that holds nothing, is the same as one without: a file writes both alike', async () => {
  const { store } = await openWithTwo(10);
  await store.takeIn([coming(entry('f1', 'zone/9', { order: -0, note: undefined }))], deed('in'));
  const other = coming(entry('f1', 'zone/9', { order: 0 }));
  expect(await store.takeIn([other], deed('again'))).toMatchObject({ added: 0, already: 1 });
  store.close();
});
