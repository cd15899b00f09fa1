import { afterEach, expect, test, vi } from 'vitest';
import {
  collectionState,
  type Desk,
  deskOn,
  editSculpture,
  needList,
  paperSource,
  type Question,
  recordState,
  removeSculpture,
  roundScore,
  sculptureList,
  sculptureRecordOf,
  setScale,
  surveyors,
  thenAndNowOf,
} from '../../src/actions';
import type { Store } from '../../src/device/store';
import { open, openFresh } from '../device/store/around';
import { aRound, aWork, done } from '../screens/deskwork';

afterEach(() => vi.restoreAllMocks());

const on = (store: Store, newId: () => string): Desk =>
  deskOn(store, { newId, now: () => '2026-10-15T10:00:00.000+00:00', today: () => '2026-10-15', surveyor: () => '' });

const filled = async (seed: number) => {
  const { store, around, name } = await openFresh(seed);
  const desk = on(store, around.newId);
  const one = await aWork(desk, { title: 'One', number: '1', areas: [1, 2] });
  const two = await aWork(desk, { title: 'Two', number: '2', areas: [1] });
  const rounds = [
    await aRound(desk, one, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing']),
    await aRound(desk, one, '2026-05-12', [{ 'green-spots': 0.3 }, 'nothing']),
  ];
  return { desk, store, around, name, one, two, rounds };
};

/** Looks at a question as a screen does. `told` counts how often the screen would have to draw again. */
const watched = <T>(question: Question<T>) => {
  let told = 0;
  question.subscribe(() => {
    told += 1;
  });
  return { told: () => told };
};

const answered = async <T>(question: Question<T>, is: (value: T) => boolean = () => true): Promise<T> => {
  await expect.poll(() => question.get() !== undefined && is(question.get() as T)).toBe(true);
  return question.get() as T;
};

test('the same question is the same reference, and its answer too until something within the work changes', async () => {
  const { desk, store, one, two } = await filled(1);
  const question = sculptureRecordOf(desk, one.sculpture);
  expect(sculptureRecordOf(desk, one.sculpture)).toBe(question);
  const seen = watched(question);
  const record = await answered(question);
  const told = seen.told();
  await done(editSculpture(desk, two.sculpture, { title: 'Another name' }));
  await done(editSculpture(desk, two.sculpture, { title: 'And another' }));
  expect(question.get()).toBe(record);
  expect(seen.told(), 'a change in another work draws nothing here').toBe(told);
  await done(editSculpture(desk, one.sculpture, { title: 'New' }));
  const changed = await answered(question, (r) => r !== record);
  expect(changed?.sculpture.body.title).toBe('New');
  store.close();
});

test('a work taken away answers null, not the last that was known of it', async () => {
  const { desk, store, one } = await filled(2);
  const question = sculptureRecordOf(desk, one.sculpture);
  watched(question);
  await answered(question);
  await done(removeSculpture(desk, one.sculpture));
  expect(await answered(question, (r) => r === null)).toBeNull();
  store.close();
});

test('the list is there at once and fills in; after a restart nothing is worked out again, and no history is read', async () => {
  const { desk, store, around, name, one } = await filled(3);
  const list = sculptureList(desk);
  watched(list);
  const rows = await answered(list, (all) => all.every((row) => row.summary !== undefined));
  expect(rows.map((row) => [row.body.number, row.summary?.round?.date, row.summary?.zones])).toEqual([
    ['1', '2026-05-12', 2],
    ['2', undefined, 1],
  ]);
  store.close();

  const again = await open(name, around);
  const standing = vi.spyOn(again, 'standing');
  const all = vi.spyOn(again, 'allEntries');
  const restarted = on(again, around.newId);
  const cold = sculptureList(restarted);
  watched(cold);
  expect(await answered(cold)).toEqual(rows);
  expect([standing.mock.calls.length, all.mock.calls.length]).toEqual([0, 0]);

  await done(editSculpture(restarted, one.sculpture, { title: 'New' }));
  await answered(cold, (now) => now[0]?.body.title === 'New' && now[0].summary !== undefined);
  expect(standing.mock.calls.map(([sculpture]) => sculpture)).toEqual([one.sculpture]);
  again.close();
});

test('another scale makes every figure anew, under its own name', async () => {
  const { desk, store } = await filled(4);
  const list = sculptureList(desk);
  watched(list);
  const before = await answered(list, (all) => all.every((row) => row.summary !== undefined));
  await done(setScale(desk, { hazards: { 'green-spots': 1 }, actionLevel: 75 }));
  const after = await answered(
    list,
    (all) => all[0]?.summary?.scale !== before[0]?.summary?.scale && all[0]?.summary !== undefined,
  );
  expect(after[0]?.summary?.index?.value).toBeLessThan(before[0]?.summary?.index?.value ?? 0);
  store.close();
});

test('the need list ranks the works that have a round and names those that have none', async () => {
  const { desk, store, one, two } = await filled(5);
  const need = needList(desk);
  watched(need);
  const { order, noRound } = await answered(need, (n) => n.workingOut === 0);
  expect(order.sculptures.map((rank) => rank.sculpture)).toEqual([one.sculpture]);
  expect(noRound).toEqual([two.sculpture]);
  store.close();
});

test('the score of a round and two rounds compared keep their reference while another work changes', async () => {
  const { desk, store, two, rounds } = await filled(6);
  const [earlier = '', later = ''] = rounds;
  const questions = [roundScore(desk, later), thenAndNowOf(desk, earlier, later)] as readonly Question<unknown>[];
  const seen = questions.map(watched);
  const first = await Promise.all(questions.map((q) => answered(q)));
  expect(first.every((answer) => answer !== null)).toBe(true);
  const told = seen.map((s) => s.told());
  const title = sculptureRecordOf(desk, two.sculpture);
  watched(title);
  await done(editSculpture(desk, two.sculpture, { title: 'Other' }));
  await answered(title, (r) => r?.sculpture.body.title === 'Other');
  expect(questions.map((q, i) => q.get() === first[i])).toEqual([true, true]);
  expect(seen.map((s) => s.told())).toEqual(told);
  store.close();
});

test('a fault of the store is thrown to the screen, and asking again after it asks the store again', async () => {
  const { desk, store } = await filled(7);
  const fault = new Error('gone');
  const broken = vi.spyOn(store, 'within').mockRejectedValue(fault);
  const question = surveyors(desk);
  const stop = question.subscribe(() => undefined);
  await expect
    .poll(() => {
      try {
        return question.get();
      } catch (error) {
        return error;
      }
    })
    .toBe(fault);
  stop();
  broken.mockRestore();
  watched(question);
  expect(await answered(question)).toEqual([]);
  store.close();
});

test('a collection not set up yet has no name', async () => {
  const { store, around } = await openFresh(8);
  const state = collectionState(on(store, around.newId));
  watched(state);
  expect(await answered(state)).toMatchObject({ name: null, invented: false });
  store.close();
});

test('a list that is handed out names the record as its papers do, and another once a zone was looked at', async () => {
  const { desk, store, one } = await filled(41);
  const asked = recordState(desk);
  watched(asked);
  const papers = paperSource(desk);
  watched(papers);
  const before = await answered(asked);
  expect((await answered(papers))?.source.state).toBe(before);
  await aRound(desk, one, '2026-09-01', ['nothing', 'nothing']);
  const after = await answered(asked, (state) => state !== before);
  expect((await answered(papers, (now) => now?.source.state === after))?.source.state).toBe(after);
  store.close();
});
