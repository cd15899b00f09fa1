import { expect, test, vi } from 'vitest';
import {
  addPlanned,
  type Desk,
  type DueThings,
  dueThings,
  editPlanned,
  prepareCalendar,
  type Question,
  recordLook,
  recordTreatment,
  replaceDecision,
  saveFile,
  setPlanned,
  sinceCarried,
  type TripwiresMet,
  tripwiresMet,
  watchOfCampaign,
} from '../../src/actions';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { answered } from '../files/answered';
import { aRound, aWork, done, freshDesk, type Work } from '../screens/deskwork';

/** A question is looked at until it says this of itself: figures are worked out beside the page. */
const comesTo = async <T, S>(question: Question<T>, of: (value: T) => S, expected: S): Promise<void> => {
  const stop = question.subscribe(() => undefined);
  try {
    await vi.waitFor(() => {
      const value = question.get();
      if (value === undefined) throw new Error('not yet read');
      expect(of(value)).toEqual(expected);
    }, 10_000);
  } finally {
    stop();
  }
};

const decided = (work: Work, more: Partial<BodyOf<'decision'>> = {}): BodyOf<'decision'> => ({
  ...{ sculpture: work.sculpture, date: '2024-11-20', title: 'Go on waxing', chosen: 'Wax every May', refused: [] },
  ...{ evidence: [], consulted: [], tripwires: [], signed: [], ...more },
});

const heron = async (seed: number): Promise<{ desk: Desk; work: Work }> => {
  const desk = await freshDesk(seed);
  return { desk, work: await aWork(desk, { title: 'Grey heron', number: '2', areas: [2, 1] }) };
};

test('a tripwire is held against the record as it is: a new round makes it go, an answer rests it, the next round asks again', async () => {
  const { desk, work } = await heron(1);
  const [zone] = work.zones;
  await aRound(desk, work, '2024-05-12', [{ 'green-spots': 0.05 }, 'nothing']);
  const tripwires = [{ id: 't1', sort: 'green share over', zone: zone!, level: 30 }];
  const { thing } = await done(addPlanned(desk, 'decision', decided(work, { tripwires })));
  await comesTo(tripwiresMet(desk), ({ standing }) => standing.map(({ word }) => word), ['cannot tell']);
  const open = ({ open: list }: TripwiresMet) => list.map(({ word, since }) => `${word} ${since}`);
  await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.6 }, 'nothing']);
  await comesTo(tripwiresMet(desk), open, ['met 2025-05-12']);
  const answer = { sculpture: work.sculpture, decision: thing, tripwire: 't1', seen: '60 %', on: '2025-06-01' };
  const name = nameOf.tripwireAnswer(thing, 't1', '2025-06-01');
  await done(setPlanned(desk, 'tripwireAnswer', name, { ...answer, answer: 'keep to it', by: 'Steward' }));
  await comesTo(tripwiresMet(desk), open, []);
  await aRound(desk, work, '2026-05-12', [{ 'green-spots': 0.7 }, 'nothing']);
  await comesTo(tripwiresMet(desk), open, ['met 2026-05-12']);
});

test('a stop word is found in an earlier round too, though only the latest is kept whole', async () => {
  const { desk, work } = await heron(2);
  await aRound(desk, work, '2025-10-09', [{ 'pale-powdery-mounds': 0.01 }, 'nothing'], { round: { type: 'autumn' } });
  await aRound(desk, work, '2026-05-12', ['nothing', 'nothing']);
  await done(addPlanned(desk, 'decision', decided(work, { tripwires: [{ id: 't', sort: 'stop word' }] })));
  await comesTo(tripwiresMet(desk), ({ open }) => open.map(({ since }) => since), ['2025-10-09']);
});

test('where there is no decision nothing is read of any work', async () => {
  const { desk } = await heron(3);
  expect(await answered(tripwiresMet(desk))).toEqual({ standing: [], open: [], zones: new Map(), workingOut: 0 });
});

test('a decision takes the place of another in one deed, and only the new one is watched', async () => {
  const { desk, work } = await heron(4);
  const wires = [{ id: 't', sort: 'day comes', by: '2026-01-01' }];
  const { thing: old } = await done(
    addPlanned(desk, 'decision', decided(work, { tripwires: wires, review: '2026-01-01' })),
  );
  await comesTo(tripwiresMet(desk), ({ open }) => open.length, 1);
  const body = decided(work, { title: 'Strip', date: '2026-10-15', review: '2027-11-01' });
  const { thing } = await done(replaceDecision(desk, old, body));
  await comesTo(tripwiresMet(desk), ({ open }) => open.length, 0);
  expect((await desk.store.current(old))?.lead.body.replacedBy).toBe(thing);
  const reviews = ({ due }: DueThings) => due.filter(({ sort }) => sort === 'review').map(({ day }) => day);
  await comesTo(dueThings(desk), reviews, ['2027-11-01']);
});

test('a decision with its days out of order is refused with a sentence, and so is one in the place of another', async () => {
  const { desk, work } = await heron(5);
  const early = decided(work, { review: '2024-01-01' });
  expect(await addPlanned(desk, 'decision', early)).toMatchObject({
    ok: false,
    reason: { code: 'watch: review before decision' },
  });
  const { thing } = await done(addPlanned(desk, 'decision', decided(work)));
  expect(await replaceDecision(desk, thing, early)).toMatchObject({ ok: false });
  expect((await desk.store.current(thing))?.lead.body.replacedBy).toBeUndefined();
});

test('all that is due stands in one list: the round, the warranty look, a price, a task; done is out, later comes back', async () => {
  const { desk, work } = await heron(6);
  const { sculpture } = work;
  await aRound(desk, work, '2026-05-12', ['nothing', 'nothing']);
  const campaign = { sculpture, title: 'Strip', opened: '2023-05-09', step: 'watch', ended: '2023-09-22' };
  await done(addPlanned(desk, 'campaign', { ...campaign, warrantyUntil: '2026-11-22', warrantyWho: 'Foundry' }));
  const { thing: task } = await done(addPlanned(desk, 'task', { sculpture, what: 'Weep hole', from: '2026-10-01' }));
  const amount = { minor: 100, currency: 'EUR' };
  const price = { sculpture, who: 'A foundry', what: 'Lift', amount, state: 'quote', date: '2026-09-01' } as const;
  await done(addPlanned(desk, 'quote', { ...price, validUntil: '2026-11-10' }));
  const comes = (...rows: readonly string[]) =>
    comesTo(dueThings(desk), ({ due }) => due.map(({ sort, when }) => `${sort} ${when}`), rows);
  await comes('warranty over', 'task over', 'quote now', 'round later', 'watch later');
  await done(editPlanned(desk, 'task', task, { done: { on: '2026-10-15' } }));
  const warranty = (await answered(dueThings(desk))).due[0]!;
  const until = '2026-11-01';
  const later = { sculpture, key: warranty.key, on: desk.today(), answer: 'later', until } as const;
  await done(setPlanned(desk, 'dueAnswered', nameOf.dueAnswered(warranty.key), later));
  await comes('warranty soon', 'quote now', 'round later', 'watch later');
  for (const zone of work.zones)
    await done(recordLook(desk, sculpture, { zone, result: 'clear', planned: true, wet: 'dry' }));
  const warranties = ({ due }: DueThings) => due.filter(({ sort }) => sort === 'warranty').length;
  await comesTo(dueThings(desk), warranties, 0);
});

test('after a campaign: what held, beside what held before and what was promised', async () => {
  const { desk, work } = await heron(7);
  const { sculpture } = work;
  for (const [type, date] of [
    ['wax', '2022-05-19'],
    ['strip', '2023-09-04'],
    ['wax', '2023-09-21'],
  ] as const)
    await done(recordTreatment(desk, sculpture, { zones: [], type, date }));
  await aRound(desk, work, '2022-08-01', [{ 'green-spots': 0.1 }, { 'green-spots': 0.1 }]);
  await aRound(desk, work, '2024-05-12', ['nothing', 'nothing']);
  const lines = [{ id: 'l1', name: 'Strip', amount: { minor: 100, currency: 'EUR' } }];
  const fund = { sculpture, title: 'Heron', lines, priced: '2023-01-01', promise: 'Ten good months a year' };
  const { thing: of } = await done(addPlanned(desk, 'fund', fund));
  const campaign = { sculpture, title: 'Strip', opened: '2023-05-09', step: 'watch', fund: of };
  const { thing } = await done(addPlanned(desk, 'campaign', { ...campaign, began: '2023-09-04', ended: '2023-09-22' }));
  await comesTo(dueThings(desk), ({ workingOut }) => workingOut, 0);
  const watch = await answered(watchOfCampaign(desk, thing));
  expect(watch?.promise).toBe('Ten good months a year');
  expect(watch?.marks.find(({ months }) => months === 6)?.state).toBe('done');
  expect(watch?.held.map(({ word }) => word)).toEqual(['longer', 'longer']);
  expect(await answered(watchOfCampaign(desk, 'campaign/nowhere'))).toBeNull();
});

test('the calendar leaves as a file of its own and is never taken for a backup', async () => {
  const { desk } = await heron(8);
  const day = { uid: 'x', day: '2026-11-01', summary: 'Look', description: 'Look' };
  const prepared = prepareCalendar(desk, [day], { name: 'Heron', alarmDays: 1 });
  expect(prepared.name).toBe('patina-round-2026-10-15.ics');
  expect(new TextDecoder().decode(prepared.bytes)).toContain('DTSTART;VALUE=DATE:20261101');
  const before = await answered(sinceCarried(desk));
  expect(await saveFile(desk, prepared, 'text')).toMatchObject({ ok: true, way: 'text' });
  expect(await answered(sinceCarried(desk))).toEqual(before);
});
