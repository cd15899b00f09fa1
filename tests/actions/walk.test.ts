import { describe, expect, it } from 'vitest';
import {
  type HoldSaid,
  keepWalkSetting,
  patrolWalk,
  recordAllClear,
  recordLook,
  recordTreatment,
  undoLast,
  type WorkPassed,
  walkList,
  walkSettingKept,
} from '../../src/actions';
import type { Advice } from '../../src/engine/hold';
import { aWork, done, freshDesk } from '../screens/deskwork';

const today = '2026-10-15';

const answered = async (question: ReturnType<typeof patrolWalk>): Promise<readonly WorkPassed[]> => {
  let works: readonly WorkPassed[] | undefined;
  const stop = question.subscribe(() => {
    works = question.get();
  });
  await expect.poll(() => works ?? question.get()).toBeDefined();
  const found = question.get() ?? works;
  stop();
  if (!found) throw new Error('no answer');
  return found;
};

const waxed = async () => {
  const desk = await freshDesk();
  const work = await aWork(desk, { number: 'X-1', title: 'Tall One', areas: [1, 1, 1] });
  await done(recordTreatment(desk, work.sculpture, { type: 'wax', date: '2026-05-21', zones: [...work.zones] }));
  return { desk, work };
};

const listOf = async (desk: Awaited<ReturnType<typeof freshDesk>>, said: ReadonlyMap<string, HoldSaid> = new Map()) =>
  walkList(await answered(patrolWalk(desk)), said, today);

const nextLook = (day: string): HoldSaid => ({
  advice: { nextLook: { day, low: null, high: null, reasons: [] } } as unknown as Advice,
  onNow: null,
});

describe('The list of a walk', () => {
  it('holds what was coated and never looked at, and leaves what was not coated a touch away', async () => {
    const { desk } = await waxed();
    await aWork(desk, { number: 'X-2', title: 'Bare One', areas: [1] });
    const { works, left } = await listOf(desk);
    expect(left).toBe(3);
    expect(works.map(({ listed, rest }) => [listed.length, rest.length])).toEqual([
      [3, 0],
      [0, 1],
    ]);
    expect(works[0]?.listed.map(({ why }) => why)).toEqual(['never looked at', 'never looked at', 'never looked at']);
  });

  it('is told by the day a look would tell most, where the holds say one', async () => {
    const { desk, work } = await waxed();
    const [a = '', b = ''] = work.zones;
    const { works, nextDue } = await listOf(
      desk,
      new Map([
        [a, nextLook('2026-10-17')],
        [b, nextLook('2026-12-03')],
      ]),
    );
    expect(works[0]?.listed.map(({ why }) => why)).toEqual(['due', 'never looked at']);
    expect(works[0]?.rest.map(({ zone }) => zone.thing)).toEqual([b]);
    expect(nextDue).toBe('2026-10-17');
  });

  it('asks again what was not sure, and watches no more where the green is back', async () => {
    const { desk, work } = await waxed();
    const [a = '', b = ''] = work.zones;
    const said = { planned: true, wet: 'dry' } as const;
    await done(recordLook(desk, work.sculpture, { zone: a, result: 'unsure', ...said }));
    await done(recordLook(desk, work.sculpture, { zone: b, result: 'green', ...said }));
    const later = walkList(await answered(patrolWalk(desk)), new Map(), '2026-10-22');
    expect(later.works[0]?.listed.map(({ zone, why }) => [zone.body.letter, why])).toEqual([
      ['A', 'not sure'],
      ['C', 'never looked at'],
    ]);
  });

  it('keeps what was looked at today where the hand left it', async () => {
    const { desk, work } = await waxed();
    await done(
      recordLook(desk, work.sculpture, { zone: work.zones[1] ?? '', result: 'green', planned: true, wet: 'dry' }),
    );
    const { works, looked, left } = await listOf(desk);
    expect([looked, left]).toEqual([1, 2]);
    expect(works[0]?.listed.map(({ why }) => why)).toEqual(['never looked at', 'today', 'never looked at']);
  });
});

describe('All left are clear', () => {
  it('is a look for each zone, one deed and one undo', async () => {
    const { desk, work } = await waxed();
    await done(recordAllClear(desk, work.sculpture, work.zones, { planned: true, wet: 'damp' }));
    const [row] = await answered(patrolWalk(desk));
    expect(row?.zones.map(({ last }) => [last?.body.result, last?.body.wet, last?.body.date])).toEqual(
      work.zones.map(() => ['clear', 'damp', today]),
    );
    await done(undoLast(desk));
    // The last answer stands until the store has told of the change.
    await expect
      .poll(async () => (await answered(patrolWalk(desk)))[0]?.zones.every(({ last }) => last === undefined))
      .toBe(true);
  });
});

it('what is said once for a walk is kept for the day', async () => {
  const desk = await freshDesk();
  expect(await walkSettingKept(desk)).toEqual({ wet: 'dry', planned: true });
  await keepWalkSetting(desk, { wet: 'wet', planned: false });
  expect(await walkSettingKept(desk)).toEqual({ wet: 'wet', planned: false });
  expect(await walkSettingKept({ ...desk, today: () => '2026-10-16' })).toEqual({ wet: 'dry', planned: true });
});
