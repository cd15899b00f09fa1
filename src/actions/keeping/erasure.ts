import type { NewEntry } from '../../device/store';
import { type BodyOf, nameOf } from '../../engine/record';
import type { Desk } from '../desk';
import { refuse } from '../outcome';
import { refusal } from '../reasonCodes';
import { whoIsAtWork } from '../whoIsAtWork';

/** What one erasure may name at most, as its schema has it. */
const most = 10_000;

/** Why something is erased: it stays in the record, so that it is told later why something is missing. */
export const reasonGiven = (reason: string): string =>
  reason.trim().normalize('NFC').slice(0, 500) || refuse(refusal('erasing reason missing', {}));

/** The entries that say what is gone: one, or as many as their length asks for. */
export const erasures = async (
  desk: Desk,
  deed: string,
  within: string,
  gone: Pick<BodyOf<'erasure'>, 'of' | 'entries' | 'hashes' | 'names' | 'reason'>,
): Promise<NewEntry[]> => {
  const by = await whoIsAtWork(desk);
  const parts = Math.max(1, Math.ceil(gone.entries.length / most));
  return Array.from({ length: parts }, (_, i) => ({
    id: desk.newId(),
    thing: nameOf.erasure(desk.newId()),
    kind: 'erasure',
    within,
    v: 1,
    at: desk.now(),
    by,
    deed,
    replaces: [],
    body: { ...gone, entries: gone.entries.slice(i * most, (i + 1) * most), date: desk.today() },
  }));
};
