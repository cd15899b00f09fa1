import { describe, expect, it } from 'vitest';
import { toldIn } from '../../src/actions/toldIn';
import { inGerman } from '../../src/demo/inGerman';
import { readSurvey, writeSurvey } from '../../src/engine/exchange';
import type { Entry } from '../../src/engine/record';
import { gardenSurvey } from '../files/gardenSource';

const garden = gardenSurvey();
const told = toldIn(inGerman, garden);

/** Every text of an entry, with the field it stands in: `round.note`. */
const textsOf = (entry: Entry): { field: string; text: string }[] => {
  const found: { field: string; text: string }[] = [];
  const look = (held: unknown, field: string): void => {
    if (typeof held === 'string') found.push({ field, text: held });
    else if (Array.isArray(held)) for (const one of held) look(one, field);
    else if (held !== null && typeof held === 'object')
      for (const [name, one] of Object.entries(held)) look(one, `${field}.${name}`);
  };
  look(entry.body, entry.kind);
  return found;
};
const texts = garden.entries.flatMap(textsOf);

/** The same in any language: a figure, a share, a code of the lists. */
const sameInBoth =
  /^(\d+ %|\d+ : \d+|[a-z0-9-]+( (and )?[a-z]+)?( [a-z]+\/[0-9a-f-]+)?|[A-Z]{1,2}-[0-9A-Z]+|[A-Z]|[\d-]+)$/;

describe('the invented garden in German', () => {
  it('tells every text of a field people write in', () => {
    const written = new Set(texts.filter(({ text }) => text in inGerman).map(({ field }) => field));
    const left = texts.filter(({ field, text }) => written.has(field) && !(text in inGerman) && !sameInBoth.test(text));
    expect(left).toEqual([]);
  });

  it('leaves no sentence and no name without German, whatever field it stands in', () => {
    const left = texts
      .map(({ text }) => text)
      .filter((text) => !(text in inGerman) && /^[A-Z][a-z]+( |$)|[a-z]{2,}[.;] |\S+ \S+ \S+ \S+ \S+/.test(text))
      .filter((text) => !text.startsWith('<svg'));
    expect(left).toEqual([]);
  });

  it('has German for nothing the garden does not say', () => {
    const said = new Set(texts.map(({ text }) => text));
    expect(Object.keys(inGerman).filter((text) => !said.has(text))).toEqual([]);
  });

  it('says every figure of the English, and tells no two texts as one', () => {
    const figures = (text: string) => text.match(/\d+/g) ?? [];
    const other = Object.entries(inGerman).filter(([en, de]) => `${figures(en)}` !== `${figures(de)}`);
    expect(other).toEqual([]);
    expect(new Set(Object.values(inGerman)).size).toBe(Object.keys(inGerman).length);
  });

  it('leaves no English word', () => {
    const english = /\b(the|of|with|and|is|from|on|to|every|year|by|for|not|wax only|zone [A-Z])\b/;
    expect(Object.values(inGerman).filter((text) => english.test(text))).toEqual([]);
  });

  it('is the same record in other words, and reads as a survey', () => {
    const read = readSurvey(writeSurvey(told.collection, told.entries));
    expect(read.ok && { unknown: read.unknown, notes: read.notes, entries: read.entries }).toEqual({
      unknown: [],
      notes: [],
      entries: told.entries,
    });
    const bare = ({ body: _, ...rest }: Entry) => rest;
    expect(told.entries.map(bare)).toEqual(garden.entries.map(bare));
    expect(told.entries).not.toEqual(garden.entries);
  });
});
