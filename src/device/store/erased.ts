import { type Entry, type Erased, erasedBy, erasureOf } from '../../engine/record';
import { deviceReason } from '../reasonCodes';
import { StoreProblem } from '../storeProblem';
import type { TableName } from './connection';
import type { Tables } from './database';
import type { NewEntry } from './store';

/** Inside a transaction: every erasure there is. */
export const erasuresIn = async (t: Tables): Promise<Entry[]> =>
  t.entries.where('thing').startsWith('erasure/').toArray();

/** Inside a transaction: all that was ever erased here. */
export const erasedIn = async (t: Tables): Promise<Erased> => erasedBy(await erasuresIn(t));

/** Tables a write needs beside the usual ones: bytes go where something is erased. */
export const erasingTables = (entries: readonly { readonly kind: string }[]): readonly TableName[] =>
  entries.some(({ kind }) => kind === 'erasure') ? ['photoBytes', 'thumbs'] : [];

const saidOf = (erasure: Entry) => ({
  reason: String(erasure.body.reason ?? ''),
  day: String(erasure.body.date ?? ''),
});

/** Refuses bytes of an erased photo. */
export const refuseErasedBytes = (erased: Erased, sha256: string): void => {
  const erasure = erased.hashes.get(sha256);
  if (erasure) throw new StoreProblem(deviceReason('photo erased', saidOf(erasure)));
};

/** Refuses what speaks of something erased, and what would change an erasure: that stands for good. */
export const refuseErased = (erased: Erased, entries: readonly NewEntry[]): void => {
  for (const { kind, thing, replaces, restores, gone } of entries) {
    if (kind === 'erasure' && (gone || restores !== undefined || replaces.length > 0))
      throw new StoreProblem(deviceReason('erasing stands', {}));
    const erasure = erasureOf(erased, thing);
    if (erasure && kind !== 'erasure')
      throw new StoreProblem(deviceReason(kind === 'name' ? 'name erased' : 'photo erased', saidOf(erasure)));
  }
};
