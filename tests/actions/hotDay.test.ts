import { expect, test } from 'vitest';
import {
  addInsert,
  addPlanned,
  closeHotDay,
  type Desk,
  deskOn,
  editPlanned,
  endHotWork,
  goOnWithHotWork,
  type Outcome,
  openHotDayAgain,
  sayWatchKept,
  setPlanned,
} from '../../src/actions';
import { countWatch } from '../../src/actions/plan/hotDay';
import { momentHere } from '../../src/actions/plan/momentHere';
import { watchState } from '../../src/engine/heat';
import { type BodyOf, nameOf } from '../../src/engine/record';
import { openFresh } from '../device/store/around';
import { aWork, done } from '../screens/deskwork';

const start = Date.parse('2026-06-03T13:00:00.000+00:00');
const minute = 60_000;

/** A tablet whose two clocks the test turns. */
const tablet = async () => {
  const { store, around } = await openFresh(1);
  const clocks = { wall: start, steady: 1000, page: 'one' };
  const desk = deskOn(store, {
    newId: around.newId,
    now: () => new Date(clocks.wall).toISOString().replace('Z', '+00:00'),
    today: () => '2026-06-03',
    surveyor: () => '',
  });
  const goes = (minutes: number) => {
    clocks.wall += minutes * minute;
    clocks.steady += minutes * minute;
  };
  return { desk, clocks, goes };
};

const cardOf = (sculpture: string, more: Partial<BodyOf<'hotDay'>> = {}): BodyOf<'hotDay'> => ({
  ...{ sculpture, date: '2026-06-03', permit: 'HW-12', authorisedBy: { role: 'Head of grounds' }, clearZone: 11 },
  ...{ checked: [], watcher: { role: 'Helper' }, watchMinutes: 60, ...more },
});

const aDay = async (desk: Desk, inserts: readonly string[] = []) => {
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-1', areas: [1] });
  const { thing } = await done(addPlanned(desk, 'hotDay', cardOf(sculpture, { inserts: [...inserts] })));
  return { sculpture, hotDay: thing };
};

const refusedWith = async (outcome: Promise<Outcome>): Promise<string> => {
  const came = await outcome;
  return came.ok ? 'done' : came.reason.code;
};

test('a day is closed only after its watch was counted to the end and the watcher gave their word', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: work not ended');
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(59);
  expect(await refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }))).toBe('heat: watch running');
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: watch not said kept');
  goes(1);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  expect(await refusedWith(closeHotDay(desk, hotDay, ' '))).toBe('heat: signed by nobody');
  await done(closeHotDay(desk, hotDay, 'Steward'));
  const kept = (await desk.store.current(hotDay))?.lead.body;
  expect(kept).toMatchObject({ watchKept: { by: 'Helper', counted: 60 }, closed: { by: 'Steward' } });
});

test('no way of keeping a day closes one that cannot be closed', async () => {
  const { desk } = await tablet();
  const { sculpture, hotDay } = await aDay(desk);
  const closed = { at: '2026-06-03T14:00:00.000+00:00', by: 'Steward' };
  expect(await refusedWith(editPlanned(desk, 'hotDay', hotDay, { closed }))).toBe('heat: work not ended');
  expect(await refusedWith(addPlanned(desk, 'hotDay', cardOf(sculpture, { closed })))).toBe('heat: work not ended');
});

test('a restart in the middle of a watch does not begin it anew, and the time it was shut is not counted', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  const { workEnded } = (await desk.store.current(hotDay))!.lead.body as { workEnded: string };
  goes(40);
  await countWatch(desk, hotDay, workEnded, { ...clocks });
  Object.assign(clocks, { wall: clocks.wall + 5 * minute, steady: 200, page: 'two' });
  await countWatch(desk, hotDay, workEnded, { ...clocks });
  goes(15);
  // An hour by the clock, 55 minutes counted.
  expect(await refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }))).toBe('heat: watch running');
  goes(5);
  expect(await refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }))).toBe('done');
});

test('a clock set forward is not believed, and the watcher’s own watch is, if it is long enough', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(2);
  clocks.wall += 60 * minute;
  const say = (own?: { from: string; until: string }) =>
    refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper', own }, { ...clocks }));
  expect(await say()).toBe('heat: watch running');
  expect(await say({ from: '15:00', until: '15:30' })).toBe('heat: watch too short');
  expect(await say({ from: '15:00', until: '16:00' })).toBe('done');
});

test('two times of the watcher’s own watch in the wrong order, or from before the flame was out, are no watch', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(2);
  clocks.wall += 70 * minute;
  const say = (from: string, until: string) =>
    refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper', own: { from, until } }, { ...clocks }));
  // The flame went out at 13:00.
  expect(await say('14:05', '13:05')).toBe('heat: own watch turned round');
  expect(await say('12:00', '13:10')).toBe('heat: own watch before the end');
  expect(await say('13:00', '14:00')).toBe('done');
});

test('against a clock that nothing speaks against, no word of another watch ends the watch', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(10);
  const own = { from: '15:00', until: '16:00' };
  expect(await refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper', own }, { ...clocks }))).toBe(
    'heat: watch running',
  );
});

test('work taken up again takes back the watch and its word', async () => {
  const { desk, clocks, goes } = await tablet();
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(60);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  await done(goOnWithHotWork(desk, hotDay));
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: work not ended');
  await done(endHotWork(desk, hotDay, { ...clocks }));
  expect(await refusedWith(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }))).toBe('heat: watch running');
});

test('each insert near the heat holds the day open until it has its limit and its photo after', async () => {
  const { desk, clocks, goes } = await tablet();
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-2', areas: [1] });
  const fields = { material: 'Cast glass', count: 1, removable: 'no' as const };
  const { insert } = await done(addInsert(desk, sculpture, fields));
  const { thing: hotDay } = await done(addPlanned(desk, 'hotDay', cardOf(sculpture, { inserts: [insert] })));
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(60);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: insert without limit');
  const limitBy = { role: 'Glass conservator' };
  const care = { sculpture, insert, most: 60, limitBy, limitDate: '2026-05-01' };
  await done(setPlanned(desk, 'insertCare', nameOf.insertCare(insert), care));
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: no photo after');
  const at = '2026-06-03T14:10:00.000+00:00';
  const after = { sculpture, insert, hotDay, state: 'unchanged' as const, by: 'Helper', at };
  const name = nameOf.insertAfter(hotDay, insert);
  expect(await refusedWith(setPlanned(desk, 'insertAfter', name, { ...after, photos: [] }))).toBe('field not possible');
  await done(setPlanned(desk, 'insertAfter', name, { ...after, photos: ['photo/1'] }));
  goes(20);
  // The flame is lit again: what was photographed before is not after the heat.
  await done(goOnWithHotWork(desk, hotDay));
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(60);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: no photo after');
  await done(setPlanned(desk, 'insertAfter', name, { ...after, photos: ['photo/2'], at: momentHere(desk) }));
  await done(closeHotDay(desk, hotDay, 'Steward'));
});

test('taking an insert off the card after it was read does not close the day past its photo', async () => {
  const { desk, clocks, goes } = await tablet();
  const { sculpture } = await aWork(desk, { title: 'Test figure', number: 'T-3', areas: [1] });
  const { insert } = await done(addInsert(desk, sculpture, { material: 'Glass', count: 1, removable: 'no' }));
  const { thing: hotDay } = await done(addPlanned(desk, 'hotDay', cardOf(sculpture, { inserts: [insert] })));
  const reading = { sculpture, insert, hotDay, time: '12:50', spot: 'rim', celsius: 58, by: 'Helper' };
  await done(addPlanned(desk, 'insertReading', reading));
  await done(editPlanned(desk, 'hotDay', hotDay, { inserts: [] }));
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(60);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  expect(await refusedWith(closeHotDay(desk, hotDay, 'Steward'))).toBe('heat: no photo after');
});

test('nothing is written into a closed day until it is opened again', async () => {
  const { desk, clocks, goes } = await tablet();
  const { sculpture, hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay, { ...clocks }));
  goes(60);
  await done(sayWatchKept(desk, hotDay, { by: 'Helper' }, { ...clocks }));
  await done(closeHotDay(desk, hotDay, 'Steward'));
  const reading = { sculpture, insert: 'insert/1', hotDay, time: '10:05', spot: 'rim', celsius: 19, by: 'Helper' };
  expect(await refusedWith(addPlanned(desk, 'insertReading', reading))).toBe('heat: day is closed');
  expect(await refusedWith(goOnWithHotWork(desk, hotDay))).toBe('heat: day is closed');
  await done(openHotDayAgain(desk, hotDay));
  expect(await refusedWith(addPlanned(desk, 'insertReading', reading))).toBe('done');
});

test('a limit without the expert who set it, an end of another day and a limit no summer keeps are refused', async () => {
  const { desk } = await tablet();
  const { sculpture, hotDay } = await aDay(desk);
  const insert = 'insert/1';
  const care = (more: Partial<BodyOf<'insertCare'>>) =>
    refusedWith(setPlanned(desk, 'insertCare', nameOf.insertCare(insert), { sculpture, insert, ...more }));
  const limitBy = { role: 'Glass conservator' };
  expect(await care({ most: 60 })).toBe('heat: limit by nobody');
  expect(await care({ most: 60, limitBy })).toBe('heat: limit by nobody');
  expect(await care({ most: 6, limitBy, limitDate: '2026-05-01' })).toBe('heat: limit under the air');
  expect(await care({ takenOut: '2026-06-02', putBack: '2026-06-01' })).toBe('heat: days not in order');
  const workEnded = '2026-06-09T13:00:00.000+00:00';
  expect(await refusedWith(editPlanned(desk, 'hotDay', hotDay, { workEnded }))).toBe('heat: not of this day');
});

test('in the invented garden, whose day stands still, a watch runs by the time of the day and is not in doubt', async () => {
  const { store, around } = await openFresh(2);
  const desk = deskOn(store, {
    newId: around.newId,
    now: () => '2026-11-26T14:30:00.000+00:00',
    today: () => '2026-06-03',
    surveyor: () => '',
    invented: true,
  });
  const { hotDay } = await aDay(desk);
  await done(endHotWork(desk, hotDay));
  const { workEnded } = (await desk.store.current(hotDay))!.lead.body as { workEnded: string };
  expect(workEnded).toBe('2026-06-03T14:30:00.000+00:00');
  const count = await countWatch(desk, hotDay, workEnded);
  expect(watchState(count, 60)).toMatchObject({ state: 'running', reasons: [] });
});
