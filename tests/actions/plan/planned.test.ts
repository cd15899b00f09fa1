import { expect, it } from 'vitest';
import {
  addPlanned,
  addSculpture,
  editPlanned,
  type Planned,
  plannedAll,
  plannedOf,
  plannedOfCollection,
  type Question,
  removePlanned,
  setPlanned,
  undoLast,
} from '../../../src/actions';
import { nameOf } from '../../../src/engine/record';
import { done, freshDesk } from '../../screens/deskwork';

/** What a question comes to say; an answer from before a change stands until it is read anew. */
const says = async <T>(question: Question<Planned>, of: (planned: Planned) => T, what: T): Promise<void> => {
  const leave = question.subscribe(() => undefined);
  await expect
    .poll(() => (question.get() ? of(question.get() as Planned) : undefined), { timeout: 5000 })
    .toEqual(what);
  leave();
};

const aWork = async () => {
  const desk = await freshDesk();
  const { sculpture } = await done(addSculpture(desk, { number: '1', title: 'Invented' }));
  return { desk, sculpture };
};
const task = { what: 'Clear the weep hole', from: '2026-09-01' };

it('what is planned of a work lies in the work, the rest in the collection, and one question has both', async () => {
  const { desk, sculpture } = await aWork();
  await done(addPlanned(desk, 'task', { ...task, sculpture }));
  await done(addPlanned(desk, 'task', task));
  await says(plannedOf(desk, sculpture), (p) => p.task.length, 1);
  await says(plannedOfCollection(desk), (p) => p.task.length, 1);
  await says(plannedAll(desk), (p) => [p.task.length, p.gift], [2, []]);
});

it('a name two tablets agree on is said anew, not a second time', async () => {
  const { desk, sculpture } = await aWork();
  const name = nameOf.yearVerdict(sculpture, 2026);
  const verdict = {
    sculpture,
    year: 2026,
    verdict: 'hold',
    why: 'It holds',
    by: 'Steward',
    date: '2026-11-20',
  } as const;
  await done(setPlanned(desk, 'yearVerdict', name, verdict));
  await done(setPlanned(desk, 'yearVerdict', name, { ...verdict, verdict: 'watch' }));
  const verdicts = (p: Planned) => p.yearVerdict.map(({ body }) => String(body.verdict));
  await says(plannedOf(desk, sculpture), verdicts, ['watch']);
  await done(undoLast(desk));
  await says(plannedOf(desk, sculpture), verdicts, ['hold']);
});

it('a field its bounds do not hold is refused by its name, and nothing is stored', async () => {
  const { desk, sculpture } = await aWork();
  const long = await addPlanned(desk, 'task', { ...task, sculpture, what: 'x'.repeat(501) });
  expect(long).toEqual({ ok: false, reason: { code: 'field not possible', params: { field: 'what' } } });
  const never = await addPlanned(desk, 'task', { ...task, sculpture, from: '31 May' });
  expect(never).toEqual({ ok: false, reason: { code: 'field not possible', params: { field: 'from' } } });
  await says(plannedOf(desk, sculpture), (p) => p.task.length, 0);
});

it('an edit is checked as the whole will stand, and empties a field', async () => {
  const { desk, sculpture } = await aWork();
  const { thing } = await done(addPlanned(desk, 'task', { ...task, sculpture, until: '2026-09-30' }));
  expect(await editPlanned(desk, 'task', thing, { until: 'soon' })).toMatchObject({ ok: false });
  await done(editPlanned(desk, 'task', thing, { until: undefined, every: 12 }));
  await says(plannedOf(desk, sculpture), (p) => p.task[0]?.body as object, { ...task, sculpture, every: 12 });
  await done(removePlanned(desk, 'task', thing));
  await says(plannedOf(desk, sculpture), (p) => p.task.length, 0);
  expect(await editPlanned(desk, 'task', thing, { every: 6 })).toMatchObject({ reason: { code: 'not here' } });
});
