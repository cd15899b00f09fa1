import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { WordsOfLanguage } from '../../src/words/tongue';
import { borrowed, ownFigures, sameWords, takesOneOf } from './germanAlike';
import { marksIn, sayings, wordsUnder } from './wordsWalked';

const texts = import.meta.glob<string>('../../src/words/en/*.ts', { eager: true, query: '?raw', import: 'default' });
const files = import.meta.glob<Record<string, unknown>>('../../src/words/en/*.ts');

type Made = (...given: unknown[]) => unknown;
interface Pair {
  readonly at: string;
  readonly word: unknown;
  readonly theirs: unknown;
}

/** Every name under which English words can be spoken in another language, each word with its German. */
const pairs: Pair[] = [];
beforeAll(async () => {
  vi.resetModules();
  const { speak } = await import('../../src/words/tongue');
  const { speakTrade } = await import('../../src/engine/trade/named');
  // Figures in both are written the German way, so that they can be held against each other; the words stay English where they are.
  speak({ language: 'de', locale: 'de-DE', units: 'metric' });
  speakTrade((await import('../../src/words/de/trade')).namesOfTrade);
  const german = (await import('../../src/words/de')) as WordsOfLanguage;
  for (const [path, text] of Object.entries(texts)) {
    const english = await files[path]?.();
    for (const [, file = '', name = ''] of text.matchAll(/spoken\(\s*'(\w+)',\s*'(\w+)'/g)) {
      const theirs = new Map(wordsUnder(`${file}.${name}`, german[file]?.[name]).map(({ at, word }) => [at, word]));
      for (const { at, word } of wordsUnder(`${file}.${name}`, english?.[name]))
        pairs.push({ at, word, theirs: theirs.get(at) });
    }
  }
}, 60_000);

const plain = () =>
  pairs.flatMap(({ at, word, theirs }) =>
    typeof word === 'string' && typeof theirs === 'string' ? [{ at, english: word, german: theirs }] : [],
  );
const made = () =>
  pairs.flatMap(({ at, word, theirs }) =>
    typeof word === 'function' && typeof theirs === 'function'
      ? [{ at, ...sayings(word as Made, theirs as Made, takesOneOf[at]) }]
      : [],
  );
const everySaying = () => [
  ...plain(),
  ...made().flatMap(({ at, marked, turned }) => [...marked, ...turned].map((saying) => ({ at, ...saying }))),
];

/** Words of English that are none of German. */
const stopWords =
  /\b(the|and|of|is|are|with|without|this|that|these|those|from|for|have|has|been|were|it|its|which|into|by|or|not|yes|one|two|no|to|at|on|only|than|there|their|your|you|they)\b/;
const own = (text: string): string =>
  borrowed.reduce((left, name) => left.replaceAll(name, ''), text.replace(/⟦[^⟧]*⟧/g, ''));
const figuresIn = (text: string): string[] =>
  (text.replace(/(?<=\d)[.,\s](?=\d{3}\b)/g, '').match(/\d+([.,]\d+)*/g) ?? [])
    .map((figure) => figure.replace(',', '.'))
    .sort();
const unitsIn = (text: string): string[] =>
  (text.match(/(?<![\p{L}\d])(°C|°F|[cm]?m[²2]?|kg|µm|m[lLg]|[kMG]B)(?![\p{L}\d])|%/gu) ?? [])
    .map((unit) => unit.replace('2', '²'))
    .sort();

describe('The German words', () => {
  it('stand for every English word', () => {
    expect(pairs.filter(({ word, theirs }) => typeof theirs !== typeof word).map(({ at }) => at)).toEqual([]);
    expect(pairs.length).toBeGreaterThan(8000);
  });

  it('are another text than the English, unless both languages have the same word', () => {
    const alike = plain().filter(
      ({ english, german }) => english === german && /[a-z]{2}/i.test(english) && !sameWords.has(english),
    );
    expect(alike).toEqual([]);
  });

  it('leave out nothing that a sentence was given to say', () => {
    const told = made();
    const other = told.flatMap(({ at, marked }) =>
      marked
        .filter(({ english, german }) => String(marksIn(english)) !== String(marksIn(german)))
        .map((saying) => ({ at, ...saying })),
    );
    expect(other).toEqual([]);
    expect(told.filter(({ marked }) => marked.length === 0).map(({ at }) => at)).toEqual([]);
    expect(told.length).toBeGreaterThan(2000);
  });

  it('say something wherever the English do', () => {
    expect(everySaying().filter(({ english, german }) => german === '' && english !== '')).toEqual([]);
  });

  it('hold no English word', () => {
    expect(everySaying().filter(({ german }) => stopWords.test(own(german)))).toEqual([]);
  });

  it('keep every figure and unit', () => {
    const other = plain().filter(
      ({ at, english, german }) =>
        !ownFigures.includes(at) &&
        (String(figuresIn(english)) !== String(figuresIn(german)) ||
          String(unitsIn(english)) !== String(unitsIn(german))),
    );
    expect(other).toEqual([]);
  });

  it('address a person as Sie, never as du', () => {
    expect(everySaying().filter(({ german }) => /\b([Dd]u|[Dd]ein\w*|[Dd]ich|[Dd]ir)\b/.test(german))).toEqual([]);
  });
});
