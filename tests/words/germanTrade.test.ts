import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { NamesOfTrade } from '../../src/engine/trade';
import { borrowed, sameWords } from './germanAlike';

const doors = import.meta.glob<Record<string, unknown>>('../../src/engine/*/index.ts');

/** What a person reads of a row; all else is a code, a figure or a source. */
const readFields = new Set([
  ...['name', 'means', 'word', 'text', 'why', 'looksLike', 'asks', 'caution', 'signs', 'remedy', 'who', 'does'],
  ...['risks', 'irreversible', 'ask', 'first', 'agent', 'pel', 'rel', 'idlh', 'decides'],
]);
interface Read {
  readonly at: string;
  readonly id: string;
  readonly text: string;
}

/** Rows a person reads, and what they say, from all that the doors of the engine give out. */
const readIn = (value: unknown, at: string, seen: Set<unknown>): Read[] => {
  if (typeof value !== 'object' || value === null || seen.has(value) || value instanceof Map) return [];
  seen.add(value);
  const row = value as Record<string, unknown>;
  const id = typeof row.id === 'string' ? row.id : undefined;
  const here = Object.entries(row).flatMap(([field, said]) =>
    id !== undefined && readFields.has(field)
      ? (Array.isArray(said) ? said : [said])
          .filter((text): text is string => typeof text === 'string' && text !== '')
          .map((text, i) => ({ at: `${at}.${id}.${field}.${i}`, id, text }))
      : [],
  );
  return [
    ...here,
    ...Object.entries(row)
      .filter(([field]) => field !== 'source')
      .flatMap(([field, part]) => readIn(part, `${at}.${field}`, seen)),
  ];
};

/** What sources and numbers say of themselves. */
const factsIn = (value: unknown, seen: Set<unknown>): string[] => {
  if (typeof value !== 'object' || value === null || seen.has(value) || value instanceof Map) return [];
  seen.add(value);
  const { text, sure, what, source } = value as Record<string, unknown>;
  return [
    ...(typeof text === 'string' && typeof sure === 'string' ? [text] : []),
    ...(typeof what === 'string' && source ? [what] : []),
    ...Object.values(value).flatMap((part) => factsIn(part, seen)),
  ];
};

const engineIn = async (
  names: NamesOfTrade,
): Promise<Readonly<Record<string, { readonly sides?: readonly string[] }>>> => {
  vi.resetModules();
  const { speakTrade } = await import('../../src/engine/trade/named');
  speakTrade(names);
  return Object.fromEntries(
    await Promise.all(
      Object.entries(doors).map(async ([path, door]) => [path.split('/').at(-2), { ...(await door()) }]),
    ),
  );
};

let names: NamesOfTrade = {};
let english: Read[] = [];
let german = new Map<string, string>();
let facts: string[] = [];
let sides: readonly string[] = [];
let sidesInGerman: readonly string[] = [];
beforeAll(async () => {
  ({ namesOfTrade: names } = await import('../../src/words/de/trade'));
  const plain = await engineIn({});
  english = readIn(plain, '', new Set());
  facts = [...new Set(factsIn(plain, new Set()))];
  sides = plain.trade?.sides ?? [];
  const spoken = await engineIn(names);
  sidesInGerman = spoken.trade?.sides ?? [];
  german = new Map(readIn(spoken, '', new Set()).map(({ at, text }) => [at, text]));
}, 60_000);

describe('The trade in German', () => {
  it('names every row a person reads, in every word of it', () => {
    const worded = (text: string) => /[a-z]{3}/i.test(text.replace(/\b(ppm|mg|min)\b/g, ''));
    const left = english.filter(({ at, text }) => german.get(at) === text && worded(text) && !sameWords.has(text));
    expect(left).toEqual([]);
    expect(english.length).toBeGreaterThan(600);
    expect(sides).toHaveLength(9);
    expect(sidesInGerman.filter((side) => sides.includes(side))).toEqual([]);
    expect(sidesInGerman).toHaveLength(9);
  });

  it('leaves no line out and adds none', () => {
    expect(english.filter(({ at }) => !german.has(at)).map(({ at }) => at)).toEqual([]);
    expect([...german.keys()].filter((at) => !english.some((read) => read.at === at))).toEqual([]);
  });

  it('names no row that is no more', () => {
    const ids = new Set([...english.map(({ id }) => id), ...sides]);
    expect(Object.values(names).flatMap((rows) => Object.keys(rows).filter((id) => !ids.has(id)))).toEqual([]);
  });

  it('keeps the figures of every line', () => {
    const figures = (text: string) => (text.match(/\d+([.,]\d+)*/g) ?? []).map((one) => one.replace(',', '.')).sort();
    const other = english.filter(({ at, text }) => String(figures(text)) !== String(figures(german.get(at) ?? '')));
    expect(other.map(({ at, text }) => [at, text, german.get(at)])).toEqual([]);
  });

  it('says where each fact comes from and what each number is', async () => {
    const { facts: said } = await import('../../src/words/de/facts');
    expect(facts.filter((fact) => said[fact] === undefined && !sameWords.has(fact))).toEqual([]);
    expect(Object.keys(said).filter((fact) => !facts.includes(fact))).toEqual([]);
    const left = Object.values(said).filter((text) =>
      /\b(the|and|of|with|from|for|is|by|our|own)\b/.test(
        borrowed.reduce((rest, name) => rest.replaceAll(name, ''), text),
      ),
    );
    expect(left).toEqual([]);
  });
});
