import { afterEach, expect, test } from 'vitest';
import {
  addSculpture,
  type CarriedRow,
  carriedOut,
  checkStore,
  checkWhenDue,
  clearStray,
  closeRound,
  type Desk,
  deskOn,
  lastChecked,
  lastFilesOf,
  makeAnew,
  type Question,
  reopenRound,
  setDamagedAside,
  sinceCarried,
} from '../../src/actions';
import { deviceBox } from '../../src/device/box';
import { sha256 } from '../../src/device/hash';
import { database } from '../../src/device/store/database';
import { batchOf, entry } from '../device/store/batches';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const desks: Desk[] = [];
afterEach(() => {
  for (const { store } of desks.splice(0)) {
    store.close();
    deviceBox.forget(`${store.name}.carried`);
  }
});

const fresh = async (seed: number, given: Partial<Desk> = {}): Promise<Desk> => {
  const desk = await freshDesk(seed);
  desks.push(desk);
  return {
    ...desk,
    ...given,
    get collection() {
      return desk.collection;
    },
  };
};

/** What a question comes to, asked anew. */
const answer = async <T>(desk: Desk, asking: (desk: Desk) => Question<T>): Promise<T> => {
  // On a store nobody has asked yet, so that no earlier answer stands.
  const question = asking({ ...desk, store: Object.create(desk.store) as Desk['store'] });
  const leave = question.subscribe(() => undefined);
  await expect.poll(() => question.get()).not.toBeUndefined();
  const got = question.get();
  leave();
  return got as T;
};

const bag = { what: 'bag', name: 'patina-round-2026-10-15.survey.zip', entries: 10, photos: 0 } as const;

test('rounds ended since everything was last carried out are counted, and none after it left', async () => {
  const desk = await fresh(1);
  const work = await aWork(desk, { title: 'Grey heron', number: '1', areas: [1] });
  expect(await answer(desk, sinceCarried)).toMatchObject({ rounds: 0, last: null });
  const first = await aRound(desk, work, '2025-10-01', ['nothing']);
  await aRound(desk, work, '2026-10-01', ['nothing']);
  await aRound(desk, work, '2026-10-02', ['nothing'], { round: { ended: undefined } });
  expect((await answer(desk, sinceCarried)).rounds).toBe(2);

  await carriedOut(desk, bag);
  expect(await answer(desk, sinceCarried)).toMatchObject({ rounds: 0, last: { name: bag.name } });

  // Opened again and changed, it is another than the one that left.
  await done(reopenRound(desk, first));
  await done(closeRound(desk, first));
  expect((await answer(desk, sinceCarried)).rounds).toBe(1);
});

test('what was entered between reading the entries and the file leaving is not counted as carried', async () => {
  const desk = await fresh(2);
  const work = await aWork(desk, { title: 'Grey heron', number: '1', areas: [1] });
  await aRound(desk, work, '2025-10-01', ['nothing']);
  const { made } = desk.store;
  await aRound(desk, work, '2026-10-01', ['nothing']);
  await carriedOut(desk, { ...bag, made });
  expect((await answer(desk, sinceCarried)).rounds).toBe(1);
});

test('a file of one sculpture carries the rounds of that one only, and is no copy of everything', async () => {
  const desk = await fresh(3);
  const heron = await aWork(desk, { title: 'Grey heron', number: '1', areas: [1] });
  const crane = await aWork(desk, { title: 'Crane', number: '2', areas: [1] });
  await aRound(desk, heron, '2026-10-01', ['nothing']);
  await aRound(desk, crane, '2026-10-01', ['nothing']);
  await carriedOut(desk, { ...bag, sculptures: [heron.sculpture] });
  expect(await answer(desk, sinceCarried)).toMatchObject({ rounds: 1, last: null });
  expect(lastFilesOf(desk.store.name)).toEqual([]);
});

test('rounds that came from elsewhere are elsewhere: a tablet filled from a file is not told to carry it out again', async () => {
  const there = await fresh(4);
  const work = await aWork(there, { title: 'Grey heron', number: '1', areas: [1] });
  await aRound(there, work, '2026-10-01', ['nothing']);
  const here = await fresh(5);
  const deed = { id: here.newId(), name: { code: 'deed: survey carried in', params: { entries: 1 } }, at: here.now() };
  await here.store.takeIn(await there.store.allEntries(), deed);
  expect((await answer(here, sinceCarried)).rounds).toBe(0);
});

test('a clock set back a year or ahead to 2030 moves no round across the line', async () => {
  const desk = await fresh(6);
  const work = await aWork(desk, { title: 'Grey heron', number: '1', areas: [1] });
  const at = (moment: string): Desk => deskOn(desk.store, { newId: desk.newId, now: () => moment, surveyor: () => '' });
  await aRound(at('2030-01-01T10:00:00.000+00:00'), work, '2026-10-01', ['nothing']);
  await carriedOut(at('2025-10-15T10:00:00.000+00:00'), bag);
  expect((await answer(desk, sinceCarried)).rounds).toBe(0);
  await aRound(at('2024-01-01T10:00:00.000+00:00'), work, '2026-10-02', ['nothing']);
  expect((await answer(desk, sinceCarried)).rounds).toBe(1);
});

test('the last bag is known where the database is gone, and beside it a survey and a folder that had more after it', async () => {
  const desk = await fresh(7);
  await done(addSculpture(desk, { number: '1', title: 'Grey heron' }));
  await carriedOut(desk, { ...bag, what: 'survey', name: 'earlier.survey.json' });
  await carriedOut(desk, bag);
  const names = (rows: readonly CarriedRow[]) => rows.map(({ name }) => name);
  expect(names(lastFilesOf(desk.store.name))).toEqual([bag.name]);
  await carriedOut(desk, { ...bag, what: 'step', name: 'shared' });
  await carriedOut(desk, { ...bag, what: 'survey', name: 'later.survey.json' });
  await carriedOut(desk, { ...bag, what: 'step', name: 'shared' });
  await desk.store.setMeta('carried out', []);
  expect(names(lastFilesOf(desk.store.name))).toEqual(['shared', 'later.survey.json', bag.name]);
});

test('a folder written to every hour does not push the files out of what is remembered', async () => {
  const desk = await fresh(8);
  await carriedOut(desk, bag);
  for (let i = 0; i < 30; i++) await carriedOut(desk, { ...bag, what: 'step', name: 'shared' });
  expect((await answer(desk, sinceCarried)).rows.map(({ what }) => what)).toEqual(['step', 'bag']);
});

test('what lies beside the database and is no line of this app is passed over', () => {
  for (const kept of ['text', 7, [null, 3, {}, { what: 'bag' }], { what: 'bag' }]) {
    deviceBox.write('odd.carried', kept);
    expect(lastFilesOf('odd')).toEqual([]);
  }
  deviceBox.forget('odd.carried');
});

const withPhoto = async (desk: Desk, mark: number, spoken = true): Promise<string> => {
  const bytes = new Uint8Array([1, 2, 3, mark]).buffer;
  const name = await sha256(bytes);
  await desk.store.keepPhoto({ sha256: name, mime: 'image/jpeg', bytes });
  if (spoken) await desk.store.commit(batchOf(`photo-${mark}`, [entry(`photo-${mark}`, `photo/${name}`, {})]));
  return name;
};

const damage = async (desk: Desk, harm: (db: ReturnType<typeof database>) => Promise<unknown>): Promise<void> => {
  const db = database(desk.store.name);
  await db.open();
  await harm(db);
  db.close();
};

test('a photo the device damaged is found, set aside, and comes back whole from elsewhere', async () => {
  const desk = await fresh(9);
  const [sound, harmed] = [await withPhoto(desk, 1), await withPhoto(desk, 2)];
  const whole = (await desk.store.photo(harmed))!;
  expect((await done(checkStore(desk))).checked).toMatchObject({ photos: 2, altered: [], faults: [] });
  await damage(desk, (db) => db.photoBytes.put({ ...whole, bytes: new Uint8Array([1, 2, 3, 3]).buffer }));
  expect((await done(checkStore(desk))).checked.altered).toEqual([harmed]);
  expect(await answer(desk, lastChecked)).toMatchObject({ altered: [harmed], day: '2026-10-15' });
  expect(await done(setDamagedAside(desk))).toMatchObject({ photos: 1 });
  expect(await desk.store.photosHere()).toEqual([sound]);
  expect(await answer(desk, lastChecked)).toMatchObject({ altered: [] });
  await desk.store.keepPhoto(whole);
  expect((await done(checkStore(desk))).checked).toMatchObject({ photos: 2, altered: [], missing: 0 });
});

test('a photo found damaged and whole again by now is not set aside', async () => {
  const desk = await fresh(10);
  const harmed = await withPhoto(desk, 1);
  const whole = (await desk.store.photo(harmed))!;
  await damage(desk, (db) => db.photoBytes.put({ ...whole, bytes: new Uint8Array([9]).buffer }));
  await done(checkStore(desk));
  await damage(desk, (db) => db.photoBytes.put(whole));
  expect(await done(setDamagedAside(desk))).toMatchObject({ photos: 0 });
  expect(await desk.store.photosHere()).toEqual([harmed]);
});

test('bytes nothing speaks of are cleared, but not those a deed has spoken of since', async () => {
  const desk = await fresh(11);
  const [kept, stray, late] = [
    await withPhoto(desk, 1),
    await withPhoto(desk, 2, false),
    await withPhoto(desk, 3, false),
  ];
  expect([...(await done(checkStore(desk))).checked.orphans].sort()).toEqual([stray, late].sort());
  await desk.store.commit(batchOf('late', [entry('late', `photo/${late}`, {})]));
  expect(await done(clearStray(desk))).toMatchObject({ photos: 1 });
  expect([...(await desk.store.photosHere())].sort()).toEqual([kept, late].sort());
});

test('photos an import has brought, and whose entries are still to come, are not cleared away under it', async () => {
  const desk = await fresh(16);
  const coming = await withPhoto(desk, 1, false);
  await desk.store.setMeta('arriving some-deed', [coming]);
  await done(checkStore(desk));
  expect(await done(clearStray(desk))).toMatchObject({ photos: 0 });
  expect(await desk.store.photosHere()).toEqual([coming]);
});

test('present states that do not follow from the entries are made anew, and all is well again', async () => {
  const desk = await fresh(12);
  await aWork(desk, { title: 'Grey heron', number: '1', areas: [1, 2] });
  await damage(desk, async (db) => {
    const row = (await db.current.toArray())[0]!;
    await db.current.put({ ...row, gone: true });
  });
  expect((await done(checkStore(desk))).checked.faults).toMatchObject([{ code: 'present state differs' }]);
  expect((await done(makeAnew(desk))).checked).toMatchObject({ entries: 3, presentWrong: 0, faults: [] });
});

test('a check left off says so and keeps nothing of what it saw', async () => {
  const desk = await fresh(13);
  for (let i = 0; i < 5; i++) await withPhoto(desk, i);
  const leave = new AbortController();
  let steps = 0;
  const outcome = await checkStore(desk, {
    signal: leave.signal,
    heard: () => {
      if (++steps === 3) leave.abort();
    },
  });
  expect(outcome).toMatchObject({ ok: false, reason: { code: 'checking left off' } });
  expect(await answer(desk, lastChecked)).toBeNull();
});

test('everything is looked through by itself once a month, whichever way the clock was wrong', async () => {
  let today = '2026-10-15';
  const plain = await fresh(14);
  const desk: Desk = deskOn(plain.store, {
    newId: plain.newId,
    now: plain.now,
    today: () => today,
    surveyor: () => '',
  });
  const day = async () => (await answer(desk, lastChecked))?.day;
  await checkWhenDue(desk);
  expect(await day(), 'nothing was entered yet').toBeUndefined();
  await done(addSculpture(desk, { number: '1', title: 'Grey heron' }));
  for (const [now, then] of [
    ['2026-10-15', '2026-10-15'],
    ['2026-11-13', '2026-10-15'],
    ['2026-11-14', '2026-11-14'],
    ['2030-01-01', '2030-01-01'],
    ['2026-11-20', '2026-11-20'],
  ] as const) {
    today = now;
    await checkWhenDue(desk);
    expect(await day()).toBe(then);
  }
});
