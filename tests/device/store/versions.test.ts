import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { deskOn, roundsUnderWay, sculptureList, setPlace, undoLast } from '../../../src/actions';
import type { LookedThrough } from '../../../src/device/store';
import { database, tablesVersion } from '../../../src/device/store/database';
import { type Entry, idPart } from '../../../src/engine/record';
import { type StoredDatabase, storeAgain } from '../../files/storedDatabase';
import { freshName, open, surroundings } from './around';

const folder = join(import.meta.dirname, '../../files/versions');
const files = readdirSync(folder).filter((file) => file.endsWith('.database.json'));
const stored = (file: string): StoredDatabase => JSON.parse(readFileSync(join(folder, file), 'utf8'));
const rowsOf = <T>(from: StoredDatabase, store: string) => from.stores.find(({ name }) => name === store)!.rows as T[];

const opened = async (file: string) => {
  const from = stored(file);
  const name = freshName();
  await storeAgain(name, from);
  const around = surroundings(7);
  return { from, name, around, store: await open(name, around) };
};

const looked = async (store: Awaited<ReturnType<typeof opened>>['store']): Promise<LookedThrough | undefined> => {
  for await (const step of store.lookThrough()) if ('looked' in step) return step.looked;
  return undefined;
};

test('of every version of the tables that ever was there is a stored database', () => {
  const versions = new Set(files.map((file) => stored(file).version / 10));
  expect([...versions].sort()).toEqual(Array.from({ length: tablesVersion }, (_, i) => i + 1));
});

test.each(files)(
  '%s opens with this build: every entry as it was, every photo whole, present states as they follow',
  async (file) => {
    const { from, store, name } = await opened(file);
    expect(store.mode).toBe('writing');
    expect(store.notes).toEqual([]);
    const byId = (a: Entry, b: Entry) => (a.id < b.id ? -1 : 1);
    expect([...(await store.allEntries())].sort(byId)).toEqual(rowsOf<Entry>(from, 'entries').sort(byId));
    expect(await looked(store)).toMatchObject({ faults: [], presentWrong: 0, altered: [], orphans: [], photos: 1 });
    expect(await store.checkCounts()).toBe(rowsOf(from, 'entries').length);
    expect(await store.held()).toMatchObject({ photos: 1 });
    store.close();
    const db = database(name);
    await db.open();
    expect(db.backendDB().version).toBe(tablesVersion * 10);
    db.close();
  },
);

test.each(files)(
  '%s: the round left in the middle goes on with its touches, and its last deeds are taken back one by one',
  async (file) => {
    const { from, store, around, name } = await opened(file);
    const desk = deskOn(store, { newId: around.newId, today: () => '2026-10-16', surveyor: () => '' });
    const question = roundsUnderWay(desk);
    const leave = question.subscribe(() => undefined);
    await expect.poll(() => question.get()?.length).toBeGreaterThan(0);
    const round = question.get()!.find(({ title }) => title === 'Grey heron')!;
    leave();
    const touches = rowsOf<{ round: string }>(from, 'touches').filter((touch) => touch.round === round.round.thing);
    expect(touches.length).toBeGreaterThan(0);
    expect(await store.touchesOf(round.round.thing)).toEqual(touches);
    const all = rowsOf<Entry>(from, 'entries');
    const own = all.filter(({ device }) => device === store.device);
    // The survey of another tablet that was carried in goes, and only that.
    expect(await undoLast(desk)).toMatchObject({ ok: true });
    expect((await store.allEntries()).map(({ id }) => id).sort()).toEqual(own.map(({ id }) => id).sort());
    // Then a photo of its own: by an entry that says so.
    expect(await undoLast(desk)).toMatchObject({ ok: true });
    expect(await store.allEntries()).toHaveLength(own.length + 1);
    const sculpture = (await store.ofKind('sculpture')).find(({ lead }) => lead.body.title === 'Grey heron')!.thing;
    expect(await setPlace(desk, sculpture, 'In the yard')).toMatchObject({ ok: true });
    const headsThen = store.headsOf(sculpture);
    expect(await looked(store)).toMatchObject({ faults: [] });
    await store.rebuildCurrent();
    expect(store.headsOf(sculpture), idPart(sculpture)).toBe(headsThen);
    store.close();
    // And once more, as on the next morning.
    const again = await open(name, around);
    expect(again.notes).toEqual([]);
    const list = sculptureList(deskOn(again, { newId: around.newId }));
    const off = list.subscribe(() => undefined);
    await expect.poll(() => list.get()?.length).toBe(1);
    off();
    again.close();
  },
);
