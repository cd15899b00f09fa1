import { type Entry, erasedBy, holdsWords, inOwnWords, isErased, isErasure, withAnyWords } from '../../engine/record';
import type { Tables } from './database';
import { dropBytesOf } from './photosKept';
import { arrivedKey, counterStart, photosArrivedKey, selfKey } from './self';
import type { Batch } from './store';
import { typedWithout } from './typedRows';

/**
 * Inside a transaction, after the erasures themselves were added: what they name is deleted, entries, bytes and thumbnails, and what
 * this device keeps of them by the way. Present states, counts and the tally are the caller's. Gives the entries that went.
 */
export const eraseIn = async (t: Tables, coming: readonly Entry[]): Promise<readonly Entry[]> => {
  const erasures = coming.filter(isErasure);
  if (erasures.length === 0) return [];
  const erased = erasedBy(erasures);
  const hashes = [...erased.hashes.keys()];
  const things = [...hashes.map((hash) => `photo/${hash}`), ...erased.names.keys()];
  const named = (await t.entries.bulkGet([...erased.entries])).flatMap((entry) => entry ?? []);
  const spokenOf = await t.entries.where('thing').anyOf(things).toArray();
  const gone = [...new Map([...named, ...spokenOf].map((entry) => [entry.id, entry])).values()].filter((entry) =>
    isErased(erased, entry),
  );
  await t.entries.bulkDelete(gone.map((entry) => entry.id));
  await dropBytesOf(t, hashes);
  await forgetAsides(t, hashes);
  await forgetDeeds(t, gone);
  await typedWithout(t, gone);
  return gone;
};

const ownRow = (key: string): boolean =>
  key === selfKey || [counterStart, arrivedKey(''), photosArrivedKey('')].some((start) => key.startsWith(start));

/** Where the work on a photo stood, kept under a key that bears its hash. */
const forgetAsides = async (t: Tables, hashes: readonly string[]): Promise<void> => {
  if (hashes.length === 0) return;
  const keys = await t.meta.toCollection().primaryKeys();
  await t.meta.bulkDelete(keys.filter((key) => !ownRow(key) && hashes.some((hash) => key.includes(hash))));
};

/** Deeds of which nothing is left cannot be taken back any more; the touches they wrote down go with them. */
const forgetDeeds = async (t: Tables, gone: readonly Entry[]): Promise<void> => {
  const deeds = [...new Set(gone.map((entry) => entry.deed))];
  for (const deed of deeds) {
    if ((await t.entries.where('deed').equals(deed).count()) > 0) continue;
    await t.deeds.where('deed').equals(deed).delete();
    await t.touches.where('deed').equals(deed).delete();
  }
};

/**
 * Inside a transaction: words that are to go from the log of touches, the names of deeds and the notes of this device. Gives the rounds
 * whose touches say something else now.
 */
export const sayInstead = async (t: Tables, { words, put }: NonNullable<Batch['instead']>): Promise<string[]> => {
  const moved = <T extends object>(rows: readonly T[]): T[] =>
    rows.flatMap((row) => {
      const said = withAnyWords(row, words, put, inOwnWords) as T;
      return said === row ? [] : [said];
    });
  const touches = moved(await t.touches.toArray());
  await t.touches.bulkPut(touches);
  await t.deeds.bulkPut(moved(await t.deeds.toArray()));
  await t.meta.bulkPut(moved((await t.meta.toArray()).filter(({ key }) => !ownRow(key))));
  return [...new Set(touches.map(({ round }) => round))];
};

/**
 * Inside a transaction: what to say instead of a name that an erasure from elsewhere took out here, where texts were put otherwise with
 * it; undefined where only the name kept apart went, or none.
 */
export const insteadOf = async (t: Tables, gone: readonly Entry[]): Promise<Batch['instead']> => {
  const names = gone.filter(({ kind }) => kind === 'name');
  const words = [
    ...new Set(names.flatMap(({ body }) => (typeof body.name === 'string' && body.name.trim() ? [body.name] : []))),
  ];
  if (words.length === 0 || gone.every(({ kind }) => kind === 'name' || kind === 'photo')) return undefined;
  const surveyor = await t.current.get(String(names[0]?.body.surveyor));
  const role = String(surveyor?.lead.body.role ?? '');
  return { words, put: role === '' || words.some((each) => holdsWords(role, each)) ? '—' : role };
};
