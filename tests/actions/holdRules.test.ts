import { expect, test } from 'vitest';
import { collectionInsights, lastDeed, ownHoldRules, recordTreatment, setHoldRules, undoLast } from '../../src/actions';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

test('the level and the chance a collection sets are kept, versioned and undone', async () => {
  const desk = await freshDesk(41);
  const question = ownHoldRules(desk);
  question.subscribe(() => undefined);
  await expect.poll(() => question.get()).toBeNull();
  expect(await done(setHoldRules(desk, { returnLevel: 0.01, chance: 0.1 }))).toMatchObject({ version: 1 });
  await expect.poll(() => question.get()).toMatchObject({ version: 1, returnLevel: 0.01, chance: 0.1 });
  expect(await done(setHoldRules(desk, { returnLevel: 0.01, chance: 0.1 }))).toMatchObject({ version: 1 });
  expect(await done(setHoldRules(desk, { returnLevel: 0.02, chance: 0.1 }))).toMatchObject({ version: 2 });
  const deed = lastDeed(desk);
  deed.subscribe(() => undefined);
  await expect.poll(() => deed.get()?.name.code).toBe('deed: hold rules set');
  await done(undoLast(desk));
  await expect.poll(() => question.get()).toMatchObject({ version: 1, returnLevel: 0.01 });
});

test.each([
  [{ returnLevel: 0, chance: 0.25 }, 'return level not valid'],
  [{ returnLevel: 1.2, chance: 0.25 }, 'return level not valid'],
  [{ returnLevel: Number.NaN, chance: 0.25 }, 'return level not valid'],
  [{ returnLevel: 0.03, chance: 0 }, 'chance not valid'],
  [{ returnLevel: 0.03, chance: 1 }, 'chance not valid'],
])('%j is refused with a sentence and nothing is kept', async (rules, code) => {
  const desk = await freshDesk(42);
  const outcome = await setHoldRules(desk, rules);
  expect(outcome).toMatchObject({ ok: false, reason: { code } });
});

test('another level makes the holds anew: one percent is back where one percent is the level', async () => {
  const desk = await freshDesk(43);
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  await done(recordTreatment(desk, work.sculpture, { zones: [], type: 'wax', date: '2025-06-01' }));
  await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.01 }]);
  const question = collectionInsights(desk);
  question.subscribe(() => undefined);
  const ends = () => question.get()?.perWork[0]?.holds[0]?.holds.map(({ end }) => end);
  await expect.poll(ends, { timeout: 5000 }).toEqual(['still clear']);
  await done(setHoldRules(desk, { returnLevel: 0.01, chance: 0.25 }));
  await expect.poll(ends, { timeout: 5000 }).toEqual(['returned']);
});
