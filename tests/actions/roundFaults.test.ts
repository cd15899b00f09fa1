import { afterEach, expect, test, vi } from 'vitest';
import { editSculpture, leaveZone, roundView, undoInRound } from '../../src/actions';
import { memoryOf } from '../../src/actions/round/roundMemory';
import { done } from '../screens/deskwork';
import { livedIn } from './livedIn';

afterEach(() => vi.restoreAllMocks());

const failing = () =>
  Promise.reject(Object.assign(new Error('a fault'), { reason: { code: 'store failed', params: {} } }));

test('a round that cannot be read again after something changed says so, shows nothing old, and is there once it can', async () => {
  const { desk, store, is } = await livedIn(41);
  const view = roundView(desk, is.now);
  const leave = view.subscribe(() => undefined);
  await expect.poll(() => view.get()?.sculpture.body.note).toBe(undefined);
  await expect.poll(() => view.get()).toBeTruthy();
  vi.spyOn(store, 'within').mockImplementation(failing);
  await done(editSculpture(desk, is.sculpture, { note: 'Moved' }));
  await expect.poll(() => memoryOf(desk, is.now).fault()).toBeDefined();
  expect(() => view.get()).toThrow('a fault');
  leave();
  vi.restoreAllMocks();
  const again = view.subscribe(() => undefined);
  await expect.poll(() => view.get()?.sculpture.body.note).toBe('Moved');
  again();
  store.close();
});

test('a zone whose leaving was taken back is told as taken back, though the round could not be read after it', async () => {
  const { desk, store, is } = await livedIn(42);
  await done(leaveZone(desk, is.now, is.a, { how: 'next' }));
  vi.spyOn(store, 'touchesOf').mockImplementation(failing);
  expect(await undoInRound(desk, is.now)).toMatchObject({ ok: true, zone: is.a });
  vi.restoreAllMocks();
  expect((await store.touchesOf(is.now)).filter(({ deed }) => deed === undefined)).toHaveLength(2);
  store.close();
});
