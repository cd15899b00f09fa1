import { expect, test } from 'vitest';
import {
  acceptImport,
  addSculpture,
  type Desk,
  deskOn,
  editSculpture,
  openSurveyFile,
  prepareSurvey,
  storageHealth,
} from '../../src/actions';
import { openFresh } from '../device/store/around';
import { answered } from '../files/answered';
import { done } from '../screens/deskwork';

const deskAt = async (seed: number, clock: { now: string }): Promise<Desk> => {
  const { store, around } = await openFresh(seed);
  return deskOn(store, {
    newId: around.newId,
    now: () => clock.now,
    today: () => clock.now.slice(0, 10),
    surveyor: () => '',
  });
};
const fileOf = async (desk: Desk): Promise<File> => {
  const { prepared } = await done(prepareSurvey(desk));
  return new File([prepared.bytes], prepared.name);
};
const open = async (desk: Desk, file: File) => {
  const opened = await openSurveyFile(desk, file);
  if (!opened.ok) throw new Error(JSON.stringify(opened));
  return opened.preview;
};
const right = '2026-10-15T10:00:00.000+00:00';
const in2030 = '2030-03-01T10:00:00.000+00:00';

test('a tablet set to 2030 does no harm and is pointed out: its later word does not win by its clock', async () => {
  const here = await deskAt(1, { now: right });
  const { sculpture } = await done(addSculpture(here, { number: '1', title: 'Heron' }));
  const there = await deskAt(2, { now: in2030 });
  await done(acceptImport(there, await open(there, await fileOf(here))));
  await done(editSculpture(there, sculpture, { note: 'said in 2030' }));
  await done(editSculpture(here, sculpture, { note: 'said first' }));
  await done(editSculpture(here, sculpture, { note: 'and thought over' }));
  const preview = await open(here, await fileOf(there));
  expect(preview.notes).toEqual([{ code: 'clocks apart', params: { count: 1, day: '2030-03-01' } }]);
  await done(acceptImport(here, preview));
  const current = await here.store.current(sculpture);
  expect(current?.heads).toHaveLength(2);
  expect(current?.lead.body.note).toBe('and thought over');
});

test('a clock set right again, or set back, is pointed out on the tablet itself; a time zone away is not', async () => {
  const clock = { now: in2030 };
  const desk = await deskAt(3, clock);
  await done(addSculpture(desk, { number: '1', title: 'Heron' }));
  clock.now = '2030-02-28T15:00:00.000-10:00';
  expect((await answered(storageHealth(desk))).notes.map((note) => note.code)).not.toContain('clock out of step');
  const again = await deskAt(4, clock);
  await done(addSculpture(again, { number: '1', title: 'Heron' }));
  clock.now = right;
  expect((await answered(storageHealth(again))).notes).toContainEqual({
    code: 'clock out of step',
    params: { day: '2030-02-28', today: '2026-10-15' },
  });
});
