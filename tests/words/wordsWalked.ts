/** A word, or what makes one of parts, and where it stands: "round.zone.done". */
export interface Word {
  readonly at: string;
  readonly word: unknown;
}

/** All words under a value, in the order they stand. */
export const wordsUnder = (at: string, value: unknown): Word[] => {
  if (typeof value === 'string' || typeof value === 'function') return [{ at, word: value }];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => wordsUnder(`${at}.${key}`, part));
};

type Made = (...given: unknown[]) => unknown;

/** The parameters of a reason, each as a mark that says which was asked for. */
const params = (text: (key: string) => string) => ({
  text,
  number: (key: string) => `⟦${key}⟧`,
  times: (key: string, one: string, many: string) => `⟦${key}⟧ ${text(key) === '1' ? one : many}`,
  ...Object.fromEntries(
    [
      ...['percent', 'area', 'measure', 'day', 'kind', 'kinds', 'method', 'notLooked', 'treatment', 'beading'],
      ...['substrate', 'active', 'areaMethod', 'unknown', 'deed', 'thing'],
    ].map((asked) => [asked, (key: string) => `⟦${key}⟧`]),
  ),
});

/** Answers any question with a mark: stands for an object or a list among what is given. */
const anything = (mark: string): unknown =>
  new Proxy(() => mark, {
    get: (_, key) => {
      if (key === Symbol.toPrimitive || key === 'toString') return () => mark;
      if (key === 'length') return 2;
      if (key === 'map' || key === 'flatMap') return (each: Made) => [each(anything(`${mark}`), 0)];
      if (key === 'filter') return () => anything(mark);
      if (key === 'join') return () => mark;
      return typeof key === 'string' ? anything(`${mark}`) : undefined;
    },
    apply: () => mark,
  });

const marks = ['⟦a⟧', '⟦b⟧', '⟦c⟧', '⟦d⟧', '⟦e⟧', '⟦f⟧', '⟦g⟧', '⟦h⟧'];
const numbers = [7101, 7202, 7303, 7404, 7505, 7606, 7707, 7808];

/** Ways to give the parameters of words; the first that brings words out counts for the marks. */
const waysFor = (made: Made): readonly (readonly unknown[])[] => {
  const n = made.length;
  return [
    [params((key) => `⟦${key}⟧`)],
    [params(() => '7101')],
    [new Proxy({}, { get: () => 7101 })],
    marks.slice(0, n),
    numbers.slice(0, n),
    marks.slice(0, n).map((mark, i) => (i % 2 ? numbers[i] : mark)),
    marks.slice(0, n).map((mark, i) => (i % 2 ? mark : numbers[i])),
    marks.slice(0, n).map(anything),
  ];
};

/** Ways that take another turn in what makes the words: nothing, one, several. */
const turns = (made: Made): readonly (readonly unknown[])[] => [
  [params(() => '')],
  [params(() => '0')],
  [params(() => '1')],
  Array(made.length).fill(1),
  Array(made.length).fill(0),
  Array(made.length).fill(''),
  Array(made.length).fill(true),
  Array(made.length).fill(undefined),
];

/** What is said; undefined where these are not things to give, or where something was put in that is no word. */
const said = (made: Made, given: readonly unknown[]): string | undefined => {
  try {
    const parts = wordsUnder('', made(...given)).map(({ word }) => String(word));
    const text = parts.join(' ');
    return parts.length === 0 || /\[object|undefined|NaN|=>/.test(text) ? undefined : text;
  } catch {
    return undefined;
  }
};

export interface Saying {
  readonly english: string;
  readonly german: string;
}

/** What both say, given the same: with marks, which all have to come out, and at the turns where words are chosen. */
export const sayings = (
  english: Made,
  german: Made,
  given?: readonly (readonly unknown[])[],
): { readonly marked: Saying[]; readonly turned: Saying[] } => {
  const both = (one: readonly unknown[]): Saying[] => {
    const [text, theirs] = [said(english, one), said(german, one)];
    return text === undefined || theirs === undefined ? [] : [{ english: text, german: theirs }];
  };
  return {
    marked: (given ?? waysFor(english)).flatMap(both),
    turned: given ? [] : turns(english).flatMap(both),
  };
};

/** The marks and marked numbers in a text, each once, in order of the alphabet. */
export const marksIn = (text: string): string[] =>
  [...new Set(text.replace(/(?<=\d)[.,\s\u202f\u00a0](?=\d{3})/g, '').match(/⟦[^⟧]*⟧|7[1-8]0[1-8]/g) ?? [])].sort();
