import { expect, test } from 'vitest';
import {
  acceptImport,
  addElevation,
  addInsert,
  addInterpretation,
  addSurveyor,
  closePersonCheck,
  commitChanges,
  type Desk,
  deskOn,
  editInsert,
  editSculpture,
  editSurveyor,
  keepPhoto,
  openPersonCheck,
  openSurveyFile,
  prepareSurvey,
  recordTreatment,
  setAccess,
  setClass,
  setPlace,
  setScale,
  settle,
  setUpCollection,
  splitZone,
  undoLast,
} from '../../src/actions';
import { readSurvey } from '../../src/engine/exchange';
import { jpeg } from '../device/photo/camera';
import { openFresh } from '../device/store/around';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const deed = { code: 'deed: zones ordered', params: {} };

test('text is normalised when it is typed: two ways to write an accent are one, and half a character is none', async () => {
  const desk = await freshDesk(1);
  const { sculpture } = await aWork(desk, { title: 'Ete\u0301', number: '1', areas: [1] });
  expect((await desk.store.current(sculpture))?.lead.body.title).toBe('Et\u00e9');
  await done(editSculpture(desk, sculpture, { note: `a\ud800b` }));
  expect((await desk.store.current(sculpture))?.lead.body.note).toBe('a\ufffdb');
  desk.store.close();
});

test('what changes nothing stores nothing and leaves Undo where it was', async () => {
  const desk = await freshDesk(2);
  const { sculpture } = await aWork(desk, { title: 'T', number: '1', areas: [1] });
  const before = await desk.store.allEntries();
  const last = await desk.store.lastDeed();
  await done(editSculpture(desk, sculpture, { title: ' T ' }));
  expect(await desk.store.allEntries()).toEqual(before);
  expect(await desk.store.lastDeed()).toEqual(last);
  desk.store.close();
});

test('a deed that speaks twice of one thing makes one entry of it, not two versions', async () => {
  const desk = await freshDesk(3);
  const { sculpture } = await aWork(desk, { title: 'T', number: '1', areas: [1] });
  const { entries } = await done(
    commitChanges(desk, deed, [
      { thing: sculpture, patch: { title: 'U' } },
      { thing: sculpture, patch: { note: 'n' } },
    ]),
  );
  expect(entries).toHaveLength(1);
  expect(await desk.store.current(sculpture)).toMatchObject({
    heads: { length: 1 },
    lead: { body: { title: 'U', note: 'n' } },
  });
  desk.store.close();
});

test('two taps in haste make one line of versions, never two versions side by side', async () => {
  const desk = await freshDesk(4);
  const { sculpture } = await aWork(desk, { title: 'T', number: '1', areas: [1] });
  await Promise.all(['a', 'b', 'c'].map((title) => done(editSculpture(desk, sculpture, { title }))));
  expect((await desk.store.current(sculpture))?.heads).toHaveLength(1);
  desk.store.close();
});

test('a surveyor of another collection, set on this device, does not sign what is entered here', async () => {
  const { store, around } = await openFresh(5);
  let at = 'surveyor/of-the-demo';
  const desk = deskOn(store, { newId: around.newId, surveyor: () => at });
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const by = async (role: string) => {
    await done(editSurveyor(desk, surveyor, { role }));
    return (await store.current(surveyor))?.lead.by;
  };
  expect(await by('Helper')).toBe('');
  at = surveyor;
  expect(await by('Warden')).toBe(surveyor);
  store.close();
});

test('settling taken back, and again, leaves the two versions there were, the same one leading', async () => {
  for (let seed = 10; seed < 30; seed++) {
    const here = await freshDesk(seed);
    const there = await freshDesk(seed + 100);
    const { sculpture } = await aWork(here, { title: 'T', number: '1', areas: [1] });
    const carry = async (from: Desk, to: Desk) => {
      const { prepared } = await done(prepareSurvey(from));
      const opened = await openSurveyFile(to, new File([prepared.bytes], prepared.name));
      if (!opened.ok) throw new Error(opened.reason.code);
      await done(acceptImport(to, opened.preview));
    };
    await carry(here, there);
    await done(editSculpture(here, sculpture, { title: 'as here' }));
    await done(editSculpture(there, sculpture, { title: 'as there' }));
    await carry(there, here);
    const before = await here.store.current(sculpture);
    expect(before?.heads).toHaveLength(2);
    for (const time of [1, 2, 3]) {
      const heads = (await here.store.current(sculpture))?.heads ?? [];
      await done(settle(here, sculpture, { version: heads[1] ?? '' }));
      await done(undoLast(here));
      const after = await here.store.current(sculpture);
      expect(after?.heads).toHaveLength(2);
      expect(after?.lead.body, `seed ${seed}, time ${time}`).toEqual(before?.lead.body);
      expect([after?.lead.by, after?.lead.at]).toEqual([before?.lead.by, before?.lead.at]);
    }
    here.store.close();
    there.store.close();
  }
});

test('whatever the deeds write, a survey file with it is read without a fault', async () => {
  const desk = await freshDesk(6);
  await done(setUpCollection(desk, { name: 'Garden', role: 'Steward', personName: 'N. N.' }));
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2, 4] });
  const { sculpture, zones } = work;
  const round = await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing', { notLooked: 'wet' }]);
  await done(setPlace(desk, sculpture, 'by the water'));
  await done(setAccess(desk, sculpture, 'key at the gate'));
  const { insert } = await done(addInsert(desk, sculpture, { material: 'glass', count: 2, removable: 'yes' }));
  await done(editInsert(desk, insert, {}, { minor: 12000, currency: 'EUR' }));
  await done(addElevation(desk, sculpture, 'west', new Blob([jpeg({})])));
  await done(keepPhoto(desk, sculpture, new Blob([jpeg({ xmp: 'another' })]), 'zone'));
  await done(setScale(desk, { hazards: { 'green-spots': 0.5 }, actionLevel: 70 }));
  await done(setClass(desk, round, zones[0] ?? '', { urgency: 2, setBy: 'N. N.' }));
  const { personCheck } = await done(openPersonCheck(desk, sculpture, { what: 'loose', zone: zones[1] ?? '' }));
  await done(closePersonCheck(desk, personCheck, { by: 'N. N.', note: 'tied down' }));
  await done(recordTreatment(desk, sculpture, { zones: [], type: 'wax', date: 'before 2021', coats: 2 }));
  await done(
    addInterpretation(desk, sculpture, { statement: 'salt from the road', by: 'N. N.', about: zones[0] ?? '' }),
  );
  await done(
    splitZone(desk, zones[2] ?? '', [
      { name: 'a', share: 0.3 },
      { name: 'b', share: 0.7 },
    ]),
  );
  for (let i = 0; i < 4; i++) await done(undoLast(desk));
  const { prepared } = await done(prepareSurvey(desk));
  expect(readSurvey(prepared.bytes)).toMatchObject({ ok: true, keptAtHome: [], unknown: [] });
  desk.store.close();
});
