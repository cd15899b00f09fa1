import type { Life, ZoneHolds } from '../../engine/hold';
import { type FirstPass, lives as livesFrom, secondPass } from '../../engine/reckoning';
import type { Reader } from '../store';
import { wordOf } from '../wordOf';
import { type Done, firstPasses, staleIn, worksIn } from './firsts';
import {
  contentStamp,
  everythingWord,
  firstStamp,
  holds,
  type Kept,
  type KeptSummary,
  rowOf,
  type Standing,
  stampOf,
  type Words,
} from './kept';
import { ownIn } from './own';

export interface FiguresAsked {
  readonly do: 'figures';
  /** Collection thing name. */
  readonly collection: string;
  readonly today: string;
}

/** What the work tells while it goes on. `rows` are to be kept, `words` say what the rows that follow rest on. */
export type Step =
  | { readonly done: number; readonly all: number }
  | { readonly words: Words }
  | { readonly rows: readonly (readonly [key: string, value: unknown])[] };

type Source = Omit<Reader, 'close'>;

/**
 * Brings the figures of all works up to date with what lies in the store, reading no work whose figures still hold. Each step is told
 * as it comes; whoever runs it may leave off between two.
 */
export async function* figuresInSteps(source: Source, { collection, today }: FiguresAsked): AsyncGenerator<Step, void> {
  const standings = await source.standings();
  const { own, word: ownWord } = await ownIn(source, collection);
  const works = await worksIn(source);
  const firsts = new Map<string, Kept<FirstPass>>();
  const { stale, words: holdsWords } = await staleIn(source, works, standings, ownWord, today);
  const keep = ({ work, first, holdsWord }: Done) => {
    firsts.set(work, first);
    holdsWords.set(work, holdsWord);
  };
  yield* firstPasses(source, stale, own, ownWord, today, keep);

  const { lives, livesWord, row } = await livesIn(source, holdsWords, firsts);
  const words: Words = { own: ownWord, lives: livesWord };
  yield { words };
  if (row) yield { rows: [row] };

  let rows: [string, unknown][] = [];
  const summaries = new Map(await source.metas<KeptSummary>(rowOf.summary('')));
  for (const work of works) {
    const heads = standings.get(work) ?? '';
    if (!firsts.has(work) && holds(summaries.get(work), stampOf(heads, words), today)) continue;
    const first = firsts.get(work) ?? (await firstKept(source, work, firstStamp(heads, ownWord)));
    if (!first) continue;
    const holdsWord = holdsWords.get(work) ?? '';
    rows.push(...secondRows(work, first, holdsWord, words, lives, today, summaries.get(work)));
    firsts.delete(work);
    if (rows.length < rowsAtOnce) continue;
    yield { rows };
    rows = [];
  }
  if (rows.length > 0) yield { rows };
  const standing: Standing = { everything: everythingWord(standings), words };
  yield { rows: [[rowOf.standing, standing]] };
}

/** Each keeping is a transaction that is waited for, so that works share one; few, or the page is held up by what it is handed. */
const rowsAtOnce = 8;

/** What the second pass came to, as rows; those that are there already under the same name are not written again. */
const secondRows = (
  work: string,
  first: Kept<FirstPass>,
  holdsWord: string,
  { lives: livesWord }: Words,
  lives: readonly Life[],
  today: string,
  before: KeptSummary | undefined,
): [string, unknown][] => {
  const { need, summary, advice, until } = secondPass(first.value, lives, today);
  const content = wordOf([need?.classes, advice]);
  const large = <T>(value: T): Kept<T> => ({
    stamp: contentStamp(first.stamp, content),
    from: today,
    until: null,
    value,
  });
  const row: KeptSummary = { stamp: `${first.stamp} ${livesWord}`, from: today, until, value: summary, content };
  const same = before?.stamp.startsWith(`${first.stamp} `) && before.content === content;
  return [
    ...(same
      ? []
      : ([
          [rowOf.need(work), large(need)],
          [rowOf.advice(work), large(advice)],
        ] as [string, unknown][])),
    // Only now is it known until which day the first pass holds.
    [rowOf.holds(work), { stamp: first.stamp, from: today, until, value: holdsWord }],
    // Last: a summary stands for all the rows of its work.
    [rowOf.summary(work), row],
  ];
};

/** The first pass as it was kept; undefined where it was lost. */
const firstKept = async (source: Source, work: string, stamp: string): Promise<Kept<FirstPass> | undefined> => {
  const kept = await source.meta<Kept<FirstPass>>(rowOf.first(work));
  return kept?.stamp === stamp ? kept : undefined;
};

interface KeptLives {
  readonly stamp: string;
  readonly lives: readonly Life[];
  readonly word: string;
}

/** Worked out anew only where some hold changed. */
const livesIn = async (
  source: Source,
  words: ReadonlyMap<string, string>,
  firsts: ReadonlyMap<string, Kept<FirstPass>>,
) => {
  const stamp = wordOf([...words].map((row) => row.join(' ')).sort());
  const kept = await source.meta<KeptLives>(rowOf.lives);
  if (kept?.stamp === stamp) return { lives: kept.lives, livesWord: kept.word, row: undefined };
  const all: (readonly ZoneHolds[])[] = [];
  for (const work of words.keys()) {
    const first = firsts.get(work) ?? (await source.meta<Kept<FirstPass>>(rowOf.first(work)));
    all.push(first?.value.holds ?? []);
  }
  const lives = livesFrom(all);
  const word = wordOf(lives);
  const row: [string, KeptLives] = [rowOf.lives, { stamp, lives, word }];
  return { lives, livesWord: word, row };
};
