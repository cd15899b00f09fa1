import type { Batch, NewEntry } from '../../../src/device/store';
import { openFresh } from './around';

export const at = '2026-05-12T10:00:00.000+01:00';

export const entry = (id: string, thing: string, body: Record<string, unknown>, replaces: string[] = []): NewEntry => ({
  id,
  thing,
  kind: thing.slice(0, thing.indexOf('/')),
  within: 'sculpture/s',
  v: 1,
  at,
  by: '',
  deed: 'd',
  replaces,
  body,
});

export const batchOf = (deed: string, entries: readonly NewEntry[]): Batch => ({
  entries: entries.map((e) => ({ ...e, deed })),
  deed: { id: deed, name: { code: deed, params: {} }, at },
});

/** A deed that adds one thing and says another anew. */
export const deviceStoreBatch = (deed: string): Batch =>
  batchOf(deed, [
    entry(`${deed}-1`, 'zone/3', { letter: 'C' }),
    entry(`${deed}-2`, 'zone/1', { letter: 'Z' }, ['one-1']),
  ]);

/** A store that already holds two zones. */
export const openWithTwo = async (seed: number) => {
  const opened = await openFresh(seed);
  await opened.store.commit(
    batchOf('one', [entry('one-1', 'zone/1', { letter: 'A' }), entry('one-2', 'zone/2', { letter: 'B' })]),
  );
  return opened;
};
