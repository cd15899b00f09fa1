import { assemble, type Reason, sameContent } from '../../engine/record';
import { sha256 } from '../hash';
import { deviceReason } from '../reasonCodes';
import type { TableName } from './connection';
import { currentRow, type Tables } from './database';
import { type Self, selfIn } from './self';
import type { LookedThrough } from './store';
import { noTally, type Tally, withEntries } from './tally';

type Run = <T>(mode: 'r', tables: readonly TableName[], deed: string, body: (t: Tables) => Promise<T>) => Promise<T>;

/** How far it is, in parts of one whole. */
export type LookStep = { readonly done: number; readonly all: number } | { readonly looked: LookedThrough };

/** Things looked at in one transaction: few enough that what is entered meanwhile waits for no finger's notice. */
const atOnce = 300;
/** A photo takes about as long to hash as so many things to hold against their entries. */
const photoWeighs = 20;
/** While entries are being made their count moves: it is taken again, so many times. */
const tries = 3;

/**
 * Looks through everything in small transactions, so that work goes on beside it: every entry counted and summed, every present state held
 * against its entries, every photo hashed anew, and what lies here that nothing speaks of. Changes nothing.
 */
export async function* lookingThrough(run: Run): AsyncGenerator<LookStep, void> {
  const photos = await run('r', ['photoBytes'], '', (t) => keysOf(t));
  const things = await run('r', ['current'], '', (t) => numberOf(t.current.count()));
  const all = things + photos.length * photoWeighs;
  let counted: Counted | undefined;
  for (let i = 0; i < tries && !counted?.still; i++) counted = yield* counting(run, all);
  const { entries, wrong, missing, faults } = counted as Counted;
  const altered: string[] = [];
  const orphans: string[] = [];
  for (const [i, name] of photos.entries()) {
    yield { done: things + i * photoWeighs, all };
    const [kept, spoken] = await run('r', ['photoBytes', 'entries'], '', async (t) => [
      await t.photoBytes.get(name),
      await t.entries.where('thing').equals(`photo/${name}`).count(),
    ]);
    if (!kept) continue;
    if (!(kept.bytes instanceof ArrayBuffer) || (await sha256(kept.bytes)) !== name) altered.push(name);
    else if (spoken === 0) orphans.push(name);
  }
  const here = new Set(photos);
  const looked: LookedThrough = {
    entries,
    photos: photos.length,
    presentWrong: wrong,
    altered,
    orphans,
    missing: missing.filter((name) => !here.has(name)).length,
    faults,
  };
  yield { looked };
}

interface Counted {
  /** Nothing was entered or taken out while it was counted. */
  readonly still: boolean;
  readonly entries: number;
  readonly wrong: number;
  /** Photos spoken of, by the hash of their bytes. */
  readonly missing: readonly string[];
  readonly faults: readonly Reason[];
}

/** Every present state held against its entries, by name of thing, a slice at a time. */
async function* counting(run: Run, all: number): AsyncGenerator<LookStep, Counted> {
  const before = await run('r', ['meta'], '', selfIn);
  let tally: Tally = noTally;
  let wrong = 0;
  let done = 0;
  const photos: string[] = [];
  for (let last = ''; ; ) {
    const slice = await run('r', ['current', 'entries'], '', async (t) => {
      const rows = await t.current.where('thing').above(last).limit(atOnce).toArray();
      const entries = await t.entries
        .where('thing')
        .anyOf(rows.map((row) => row.thing))
        .toArray();
      return { rows, entries };
    });
    if (slice.rows.length === 0) break;
    const made = assemble(slice.entries);
    for (const row of slice.rows) {
      const current = made.get(row.thing);
      if (!current || !sameContent(row, currentRow(current))) wrong++;
      if (row.kind === 'photo' && !row.gone) photos.push(row.thing.slice('photo/'.length));
    }
    tally = withEntries(
      tally,
      slice.entries.map((entry) => entry.id),
    );
    last = slice.rows.at(-1)?.thing ?? '';
    done += slice.rows.length;
    yield { done, all };
  }
  const [here, after] = await run('r', ['entries', 'meta'], '', async (t) => [
    await t.entries.count(),
    await selfIn(t),
  ]);
  const still = sameContent(before?.tally, after?.tally);
  // An entry whose thing has no present state at all.
  const unspoken = still ? here - tally.entries : 0;
  return {
    still,
    entries: here,
    wrong: wrong + Math.max(0, unspoken),
    missing: photos,
    faults: [
      ...(still && differs(tally, here, after)
        ? [deviceReason('counts differ', { count: here, expected: after?.tally.entries ?? 0 })]
        : []),
      ...(wrong + unspoken > 0 ? [deviceReason('present state differs', { things: wrong + unspoken })] : []),
    ],
  };
}

/** The sum can only be held against what has present states: where some have none, the count alone speaks. */
const differs = (found: Tally, here: number, self: Self | undefined): boolean =>
  here !== self?.tally.entries || (found.entries === here && !sameContent(found, self.tally));

const keysOf = (t: Tables): Promise<string[]> => Promise.resolve(t.photoBytes.toCollection().primaryKeys());
const numberOf = (count: PromiseLike<number>): Promise<number> => Promise.resolve(count);
