import type { Life, ZoneHolds } from '../../engine/hold';
import { collectionOwn, type FirstPass, firstPass, lives as livesFrom, secondPass } from '../../engine/reckoning';
import { type CollectionOwn, gather, nameOf } from '../../engine/record';
import type { Reader } from '../store';
import { wordOf } from '../wordOf';
import {
  everythingWord,
  firstStamp,
  holds,
  type Kept,
  rowOf,
  type Standing,
  stampOf,
  type Words,
  type WorkInsights,
  type WorkNeed,
} from './kept';

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
/** Names the holds of a work: what all works together tell is worked out anew only where one of these changed. */
type HoldsWord = Kept<string>;

/** What of the collection's own moves a figure: the spread of an eye does, how many pairs it rests on does not. */
const movingIn = ({ eyes, ...own }: CollectionOwn) => ({
  ...own,
  eyes: Object.fromEntries(Object.entries(eyes).map(([who, { sd }]) => [who, sd])),
});

/**
 * Brings the figures of all works up to date with what lies in the store, reading no work whose figures still hold. Each step is told
 * as it comes; whoever runs it may leave off between two.
 */
export async function* figuresInSteps(source: Source, { collection, today }: FiguresAsked): AsyncGenerator<Step, void> {
  const standings = await source.standings();
  const own = await ownIn(source, collection);
  const ownWord = wordOf(movingIn(own));
  const works = (await source.ofKind('sculpture')).map(({ thing }) => thing).sort();
  const keptHolds = new Map(await source.metas<HoldsWord>(rowOf.holds('')));
  const firsts = new Map<string, Kept<FirstPass>>();
  const holdsWords = new Map<string, string>();

  const workOut = async (work: string): Promise<Kept<FirstPass> | undefined> => {
    const { currents, heads } = await source.standing(work);
    const record = gather(currents, own);
    if (!record) return undefined;
    const first = { stamp: firstStamp(heads, ownWord), from: today, until: null, value: firstPass(record, today) };
    firsts.set(work, first);
    return first;
  };

  let done = 0;
  for (const work of works) {
    const kept = keptHolds.get(work);
    if (holds(kept, firstStamp(standings.get(work) ?? '', ownWord), today)) holdsWords.set(work, kept.value);
    else {
      yield { done, all: works.length };
      const first = await workOut(work);
      if (first) holdsWords.set(work, wordOf(first.value.holds));
    }
    done++;
  }

  const { lives, livesWord, row } = await livesIn(source, holdsWords, firsts);
  const words: Words = { own: ownWord, lives: livesWord };
  yield { words };
  if (row) yield { rows: [row] };

  const summaries = new Map(await source.metas<Kept<unknown>>(rowOf.summary('')));
  for (const work of works) {
    const heads = standings.get(work) ?? '';
    if (!firsts.has(work) && holds(summaries.get(work), stampOf(heads, words), today)) continue;
    const first =
      firsts.get(work) ?? (await firstKept(source, work, firstStamp(heads, ownWord))) ?? (await workOut(work));
    if (!first) continue;
    const holdsWord = holdsWords.get(work) ?? wordOf(first.value.holds);
    yield { rows: rowsOf(work, first, holdsWord, words, lives, today) };
    firsts.delete(work);
  }
  const standing: Standing = { everything: everythingWord(standings), words };
  yield { rows: [[rowOf.standing, standing]] };
}

/** The stamp of a second pass begins with that of its first. */
const secondStamp = (first: string, { lives }: Words): string => `${first} ${lives}`;

const rowsOf = (
  work: string,
  { stamp, value: first }: Kept<FirstPass>,
  holdsWord: string,
  words: Words,
  lives: readonly Life[],
  today: string,
): [string, unknown][] => {
  const { need, summary, advice, until } = secondPass(first, lives, today);
  const { record, round, score, clearlyWorse, holds: zones, trends } = first;
  const kept = <T>(value: T): Kept<T> => ({ stamp: secondStamp(stamp, words), from: today, until, value });
  return [
    [rowOf.need(work), kept<WorkNeed>({ record, round, score, clearlyWorse, need })],
    [rowOf.insights(work), kept<WorkInsights>({ holds: zones, advice, trends })],
    [rowOf.holds(work), { ...kept(holdsWord), stamp }],
    // Last: a summary stands for all the rows of its work.
    [rowOf.summary(work), kept(summary)],
  ];
};

/** The first pass put together again from what was kept of it; undefined where one of its rows was lost. */
const firstKept = async (source: Source, work: string, stamp: string): Promise<Kept<FirstPass> | undefined> => {
  const [need, insights] = await Promise.all([
    source.meta<Kept<WorkNeed>>(rowOf.need(work)),
    source.meta<Kept<WorkInsights>>(rowOf.insights(work)),
  ]);
  if (!need?.stamp.startsWith(`${stamp} `) || !insights?.stamp.startsWith(`${stamp} `)) return undefined;
  const { need: _, ...first } = need.value;
  return {
    stamp,
    from: need.from,
    until: need.until,
    value: { ...first, holds: insights.value.holds, trends: insights.value.trends },
  };
};

const ownIn = async (source: Source, collection: string) => {
  const [scale, holdRules, reratings, rounds, eyeChecks] = await Promise.all([
    source.current(nameOf.scale(collection)),
    source.current(nameOf.holdRules(collection)),
    source.ofKind('rerating'),
    source.ofKind('round'),
    source.ofKind('eyeCheck'),
  ]);
  return collectionOwn({ scale, holdRules, reratings, rounds, eyeChecks });
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
    const first = firsts.get(work)?.value;
    all.push(first?.holds ?? (await source.meta<Kept<WorkInsights>>(rowOf.insights(work)))?.value.holds ?? []);
  }
  const lives = livesFrom(all);
  const word = wordOf(lives);
  const row: [string, KeptLives] = [rowOf.lives, { stamp, lives, word }];
  return { lives, livesWord: word, row };
};
