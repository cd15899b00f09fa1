import { expect, test } from 'vitest';
import type { Desk } from '../../src/actions';
import { editZone, joinZones, orderZones, removeZone, splitZone } from '../../src/actions';
import { asThing, type Thing } from '../../src/engine/record';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const bodyOf = async (desk: Desk, zone: string): Promise<Thing<'zone'>['body']> => {
  const current = await desk.store.current(zone);
  const thing = current && asThing(current, 'zone');
  if (!thing) throw new Error('no zone');
  return thing.body;
};
const area = { m2: 5, low: 4, high: 6, method: 'typed' as const };

test('before the first visit a new area is a correction; after it, a new version that leaves the old figure alone', async () => {
  const desk = await freshDesk(1);
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2] });
  const [a = ''] = work.zones;
  expect(await done(editZone(desk, a, { area }))).toMatchObject({ versioned: false });
  expect((await bodyOf(desk, a)).versions).toMatchObject([{ n: 1, area: { m2: 5 } }]);
  await aRound(desk, work, '2025-05-12', [{ 'green-spots': 0.03 }, 'nothing']);
  expect(await done(editZone(desk, a, { area: { ...area, m2: 5.5 } }))).toMatchObject({ versioned: true });
  expect((await bodyOf(desk, a)).versions).toMatchObject([
    { n: 1, area: { m2: 5 } },
    { n: 2, since: '2026-10-15', area: { m2: 5.5 } },
  ]);
  desk.store.close();
});

test('a new name, letter, exposure, reach or weight after visits is an edit and makes no version', async () => {
  const desk = await freshDesk(2);
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2] });
  await aRound(desk, work, '2025-05-12', ['nothing', 'nothing']);
  const [a = ''] = work.zones;
  const patch = { name: 'crown', letter: 'X', exposure: ['up', 'open'], reach: 'ladder', significance: 2 };
  expect(await done(editZone(desk, a, patch))).toMatchObject({ versioned: false });
  expect(await bodyOf(desk, a)).toMatchObject({ ...patch, versions: [{ n: 1 }] });
  expect(await editZone(desk, a, { letter: 'B' })).toMatchObject({ ok: false, reason: { code: 'letter taken' } });
  desk.store.close();
});

test('a split ends the zone in one deed and its parts share the area; shares that do not make a whole are refused', async () => {
  const desk = await freshDesk(3);
  const work = await aWork(desk, { title: 'W', number: '1', areas: [4] });
  const [a = ''] = work.zones;
  const wrong = await splitZone(desk, a, [
    { name: 'one', share: 0.5 },
    { name: 'two', share: 0.4 },
  ]);
  expect(wrong).toMatchObject({ ok: false, reason: { code: 'shares do not sum' } });
  const { zones } = await done(
    splitZone(desk, a, [
      { name: 'one', share: 0.25 },
      { name: 'two', share: 0.75 },
    ]),
  );
  const parts = await Promise.all(zones.map((z) => bodyOf(desk, z)));
  expect(parts.map((p) => [p.letter, p.versions[0]?.area.m2])).toEqual([
    ['A1', 1],
    ['A2', 3],
  ]);
  const parent = await bodyOf(desk, a);
  expect(parent.split).toMatchObject({ on: '2026-10-15', into: [{ share: 0.25 }, { share: 0.75 }] });
  const deeds = new Set((await desk.store.allEntries()).slice(-3).map((e) => e.deed));
  expect(deeds.size).toBe(1);
  expect(
    await splitZone(desk, a, [
      { name: 'x', share: 0.5 },
      { name: 'y', share: 0.5 },
    ]),
  ).toMatchObject({
    ok: false,
    reason: { code: 'zone has ended' },
  });
  desk.store.close();
});

test('joined zones end in one new one with the sum of their areas', async () => {
  const desk = await freshDesk(4);
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2, 3] });
  const { zone } = await done(joinZones(desk, work.zones.slice(0, 2), { name: 'both' }));
  const body = await bodyOf(desk, zone);
  expect(body.versions[0]?.area).toMatchObject({ m2: 3 });
  expect((await bodyOf(desk, work.zones[0] ?? '')).joined).toEqual({ on: '2026-10-15', into: zone });
  desk.store.close();
});

test('a zone somebody has looked at is not removed, and the walking order names every zone once', async () => {
  const desk = await freshDesk(5);
  const work = await aWork(desk, { title: 'W', number: '1', areas: [1, 2] });
  await aRound(desk, work, '2025-05-12', ['nothing', 'nothing']);
  const [a = '', b = ''] = work.zones;
  expect(await removeZone(desk, a)).toMatchObject({ ok: false, reason: { code: 'zone has visits' } });
  expect(await orderZones(desk, work.sculpture, [b])).toMatchObject({
    ok: false,
    reason: { code: 'order incomplete' },
  });
  await done(orderZones(desk, work.sculpture, [b, a]));
  expect([(await bodyOf(desk, a)).order, (await bodyOf(desk, b)).order]).toEqual([2, 1]);
  desk.store.close();
});
