import { type BodyOf, type Entry, nameOf } from '../../src/engine/record';
import { collection, entry, uuid } from './entries';

/** An erasure that takes out what is given. */
export const erasure = (
  n: number,
  gone: Partial<Pick<BodyOf<'erasure'>, 'entries' | 'hashes' | 'names'>> & Record<string, unknown>,
  over: Partial<Entry> = {},
): Entry =>
  entry(n, {
    thing: nameOf.erasure(uuid(70_000 + n)),
    within: collection,
    body: { of: 'name', entries: [], hashes: [], reason: 'She asked for it', date: '2026-05-20', ...gone },
    ...over,
  });
