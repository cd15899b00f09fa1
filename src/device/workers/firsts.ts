import { type FirstPass, firstPass } from '../../engine/reckoning';
import { type CollectionOwn, gather } from '../../engine/record';
import type { Reader } from '../store';
import { wordOf } from '../wordOf';
import type { Step } from './figures';
import { firstStamp, holds, type Kept, rowOf } from './kept';
import { ownIn } from './own';

/** A part of the works, for where several workers share them: those whose place leaves `part` when divided by `parts`. */
export interface FirstsAsked {
  readonly do: 'firsts';
  readonly collection: string;
  readonly today: string;
  readonly part: number;
  readonly parts: number;
}

type Source = Omit<Reader, 'close'>;

/** A first pass, with the name of its holds: what all works together tell is worked out anew only where one of these changed. */
export interface Done {
  readonly work: string;
  readonly first: Kept<FirstPass>;
  readonly holdsWord: string;
}

export const worksIn = async (source: Source): Promise<readonly string[]> =>
  (await source.ofKind('sculpture')).map(({ thing }) => thing).sort();

/** Works whose first pass holds no longer, and the names of the holds of the others. */
export const staleIn = async (
  source: Source,
  works: readonly string[],
  standings: ReadonlyMap<string, string>,
  ownWord: string,
  today: string,
): Promise<{ readonly stale: readonly string[]; readonly words: Map<string, string> }> => {
  const kept = new Map(await source.metas<Kept<string>>(rowOf.holds('')));
  const words = new Map<string, string>();
  const stale = works.filter((work) => {
    const row = kept.get(work);
    if (!holds(row, firstStamp(standings.get(work) ?? '', ownWord), today)) return true;
    words.set(work, row.value);
    return false;
  });
  return { stale, words };
};

/** Works out these works one after the other; the next one is read meanwhile. Rows come at once, so that leaving off loses little. */
export async function* firstPasses(
  source: Source,
  works: readonly string[],
  own: CollectionOwn,
  ownWord: string,
  today: string,
  done: (one: Done) => void,
): AsyncGenerator<Step, void> {
  const read = (work: string | undefined) => {
    const reading = work === undefined ? undefined : source.standing(work);
    // A fault is heard when its turn comes.
    reading?.catch(() => undefined);
    return reading;
  };
  let next = read(works[0]);
  for (const [i, work] of works.entries()) {
    yield { done: i, all: works.length };
    const reading = next;
    next = read(works[i + 1]);
    if (!reading) continue;
    const { currents, heads } = await reading;
    const record = gather(currents, own);
    if (!record) continue;
    const value = firstPass(record, today);
    const first = { stamp: firstStamp(heads, ownWord), from: today, until: null, value };
    const holdsWord = wordOf(value.holds);
    done({ work, first, holdsWord });
    yield {
      rows: [
        [rowOf.first(work), first],
        [rowOf.holds(work), { ...first, value: holdsWord }],
      ],
    };
  }
}

/** The first passes of a part of the works, nothing more: what all teach together comes after. */
export async function* firstsInSteps(
  source: Source,
  { collection, today, part, parts }: FirstsAsked,
): AsyncGenerator<Step, void> {
  const [standings, { own, word }, works] = await Promise.all([
    source.standings(),
    ownIn(source, collection),
    worksIn(source),
  ]);
  const mine = works.filter((_, i) => i % parts === part);
  const { stale } = await staleIn(source, mine, standings, word, today);
  yield* firstPasses(source, stale, own, word, today, () => undefined);
}
