import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import {
  addSurveyor,
  checkReady,
  type Desk,
  deviceFull,
  type ReadyLine,
  readyAbout,
  setSurveyor,
  startRound,
} from '../../src/actions';
import { aRound, aWork, done, freshDesk } from '../screens/deskwork';

const desks: Desk[] = [];
beforeEach(() => vi.stubGlobal('navigator', {}));
afterEach(() => {
  for (const { store } of desks.splice(0)) store.close();
  setSurveyor('');
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const fresh = async (seed: number): Promise<Desk> => {
  const desk = await freshDesk(seed);
  desks.push(desk);
  return { ...desk, surveyor: () => worker, collection: desk.collection };
};
let worker = '';

const check = async (desk: Desk): Promise<Map<string, ReadyLine>> => {
  const lines: ReadyLine[] = [];
  await checkReady(desk, { line: (line) => lines.push(line), bytes: 4_000_000 });
  expect(lines.map(({ about }) => about)).toEqual([...readyAbout]);
  return new Map(lines.map((line) => [line.about, line]));
};

test('a browser that tells nothing is not called in order: what cannot be known is said to be so', async () => {
  const lines = await check(await fresh(1));
  expect(lines.get('battery')).toMatchObject({ state: 'unknown', code: 'battery: not told' });
  expect(lines.get('promise')).toMatchObject({ state: 'unknown', code: 'promise: not told' });
  expect(lines.get('camera')).toMatchObject({ state: 'unknown', code: 'camera: not on the page' });
  expect(lines.get('awake')).toMatchObject({ state: 'look', code: 'awake: cannot' });
  expect(lines.get('offline')).toMatchObject({ state: 'look', code: 'offline: no worker' });
  expect(lines.get('installed')).toMatchObject({ state: 'look' });
});

test('room is what a trial write took, not what the browser estimates; a full tablet is remembered until it takes one', async () => {
  const desk = await fresh(2);
  const estimate = vi.fn(() => Promise.resolve({ quota: 1e12, usage: 0 }));
  vi.stubGlobal('navigator', { storage: { estimate } });
  expect((await check(desk)).get('room')).toMatchObject({
    state: 'ok',
    params: { trial: 4_000_000, photos: 1 },
  });
  expect(estimate).not.toHaveBeenCalled();
  const full = vi.spyOn(IDBObjectStore.prototype, 'add').mockImplementation(() => {
    throw new DOMException('', 'QuotaExceededError');
  });
  expect((await check(desk)).get('room')).toMatchObject({ state: 'look', code: 'room: full', params: { kept: 0 } });
  full.mockRestore();
  await check(desk);
  expect(deviceFull.get()).toBe(false);
});

test.each([
  [0.95, false, 'ok', 'battery: enough'],
  [0.5, false, 'look', 'battery: low'],
  [0.5, true, 'look', 'battery: filling'],
] as const)('a charge of %s, on the cable: %s, is %s', async (level, charging, state, code) => {
  vi.stubGlobal('navigator', { getBattery: async () => ({ level, charging }) });
  const line = (await check(await fresh(3))).get('battery');
  expect(line).toMatchObject({ state, code, params: { percent: Math.round(level * 100) } });
});

test('a screen that can be kept on is let go again at once', async () => {
  const release = vi.fn(() => Promise.resolve());
  vi.stubGlobal('navigator', { wakeLock: { request: () => Promise.resolve({ release }) } });
  expect((await check(await fresh(4))).get('awake')).toMatchObject({ state: 'ok' });
  expect(release).toHaveBeenCalledOnce();
});

test('a camera that is asked for is closed again, and one that was refused is said with what to do', async () => {
  const stop = vi.fn();
  const desk = await fresh(5);
  vi.stubGlobal('navigator', {
    mediaDevices: { getUserMedia: async () => ({ getTracks: () => [{ stop }], getVideoTracks: () => [] }) },
  });
  expect((await check(desk)).get('camera')).toMatchObject({ state: 'ok' });
  expect(stop).toHaveBeenCalledOnce();
  vi.stubGlobal('navigator', {
    mediaDevices: { getUserMedia: () => Promise.reject(new DOMException('', 'NotAllowedError')) },
  });
  expect((await check(desk)).get('camera')).toMatchObject({ state: 'look', code: 'camera: not allowed' });
});

test('a survey that never left the tablet is told', async () => {
  const desk = await fresh(6);
  expect((await check(desk)).get('elsewhere')).toMatchObject({ state: 'ok', code: 'elsewhere: nothing here' });
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  await aRound(desk, work, '2026-10-01', ['nothing']);
  expect((await check(desk)).get('elsewhere')).toMatchObject({ state: 'look', code: 'elsewhere: never' });
});

test('a clock behind what was entered here is told with both days', async () => {
  const desk = await fresh(7);
  await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  expect((await check(desk)).get('clock')).toMatchObject({ state: 'ok', params: { day: '2026-10-15' } });
  const behind: Desk = { ...desk, now: () => '2019-01-01T09:00:00.000+00:00', collection: desk.collection };
  expect((await check(behind)).get('clock')).toMatchObject({
    state: 'look',
    params: { day: '2026-10-15', today: '2019-01-01' },
  });
});

test('who is at work, and a round begun by another, are told', async () => {
  const desk = await fresh(8);
  expect((await check(desk)).get('person')).toMatchObject({ code: 'person: nobody named' });
  const { surveyor } = await done(addSurveyor(desk, { role: 'Steward' }));
  const helper = await done(addSurveyor(desk, { role: 'Helper' }));
  expect((await check(desk)).get('person')).toMatchObject({ state: 'look', code: 'person: nobody set' });
  worker = surveyor;
  expect((await check(desk)).get('person')).toMatchObject({ state: 'ok', params: { role: 'Steward' } });
  expect((await check(desk)).get('round')).toMatchObject({ state: 'ok', code: 'round: none open' });
  const work = await aWork(desk, { title: 'Heron', number: '1', areas: [1] });
  const start = { type: 'annual', date: '2026-10-15', wet: 'dry', washed: 'before wash', ownEye: false } as const;
  await done(startRound(desk, work.sculpture, start));
  expect((await check(desk)).get('round')).toMatchObject({ state: 'ok', code: 'round: open' });
  worker = helper.surveyor;
  expect((await check(desk)).get('round')).toMatchObject({
    state: 'look',
    params: { title: 'Heron', role: 'Steward' },
  });
  worker = '';
});
