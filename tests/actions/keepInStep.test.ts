import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { addSculpture, type Desk, joinFolder, keepInStep } from '../../src/actions';
import { type Folder, memoryFolder } from '../../src/device/folder';
import { done, freshDesk } from '../screens/deskwork';

// What is loaded when first needed is there before time is taken in hand.
beforeAll(() => Promise.all([import('../../src/actions/in-step/byItself'), import('../../src/engine/exchange')]));
// The database goes on by the machine's own clock; only waiting is taken in hand.
beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const second = 1000;
/** Lets what was begun come to its end. */
const settled = () => new Promise<void>((go) => setImmediate(() => setImmediate(() => setImmediate(go))));
const passes = async (ms: number) => {
  await vi.advanceTimersByTimeAsync(ms);
  for (let i = 0; i < 60; i++) await settled();
};

/** So much time passes, and the step this begins comes to its end. */
const stepsAfter = async (desk: Desk, ms: number) => {
  const last = async () => (await desk.store.meta<{ last: { at: string } }>('in step'))?.last.at;
  const before = await last();
  await vi.advanceTimersByTimeAsync(ms);
  for (let i = 0; i < 20_000 && (await last()) === before; i++) await settled();
  await passes(0);
};

const joined = async (seed: number, way: 'picked' | 'server' = 'picked') => {
  const inner = memoryFolder();
  let steps = 0;
  const folder: Folder = {
    ...inner,
    list: (path, signal) => {
      if (path === '') steps++;
      return inner.list(path, signal);
    },
  };
  const desk = await freshDesk(seed);
  await joinFolder(desk, folder, { way, name: 'shared' });
  const before = steps;
  return { desk, folder, steps: () => steps - before };
};
const work = (desk: Desk, number: string) => done(addSculpture(desk, { number, title: `Work ${number}` }));

test('it steps soon after the start, a while after something was entered, and every ten minutes', async () => {
  const { desk, steps } = await joined(1);
  const stop = keepInStep(desk);
  await stepsAfter(desk, 3 * second);
  expect(steps()).toBe(1);
  await work(desk, '1');
  await work(desk, '2');
  await passes(15 * second);
  expect(steps(), 'not while it is being entered').toBe(1);
  await stepsAfter(desk, 6 * second);
  expect(steps(), 'both together').toBe(2);
  await passes(599 * second);
  expect(steps()).toBe(2);
  await stepsAfter(desk, 2 * second);
  expect(steps()).toBe(3);
  stop();
});

test('what is entered while a step is under way does not wait for ten minutes', async () => {
  const { desk, folder, steps } = await joined(2);
  const stop = keepInStep(desk);
  const { list } = folder;
  let entered = false;
  Object.assign(folder, {
    list: async (path: string, signal?: AbortSignal) => {
      const found = await list(path, signal);
      if (!entered) {
        entered = true;
        await work(desk, '1');
      }
      return found;
    },
  });
  await stepsAfter(desk, 3 * second);
  expect([entered, steps()]).toEqual([true, 1]);
  await stepsAfter(desk, 21 * second);
  expect(steps()).toBe(2);
  stop();
});

test('it does nothing where it is switched off, stopped, without a network to the server, or in the invented collection', async () => {
  const off = await freshDesk(3);
  const stopOff = keepInStep(off);
  const ended = await joined(4);
  keepInStep(ended.desk)();
  const away = await joined(5, 'server');
  vi.stubGlobal('navigator', { onLine: false });
  const stopAway = keepInStep(away.desk);
  const garden = await joined(6);
  const stopGarden = keepInStep({ ...garden.desk, store: garden.desk.store, invented: true } as Desk);
  await passes(700 * second);
  expect([ended.steps(), away.steps(), garden.steps()]).toEqual([0, 0, 0]);
  vi.stubGlobal('navigator', { onLine: true });
  await stepsAfter(away.desk, 601 * second);
  expect(away.steps(), 'and goes on once it is back').toBe(1);
  for (const stop of [stopOff, stopAway, stopGarden]) stop();
});
