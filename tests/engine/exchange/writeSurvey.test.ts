import canonicalize from 'canonicalize';
import { describe, expect, it } from 'vitest';
import { readSurvey, writeSurvey } from '../../../src/engine/exchange';
import { crc32 } from '../../../src/engine/exchange/crc32';
import { bodySchemas } from '../../../src/engine/record/schemas';
import { entry, uuid } from '../../files/entries';
import { smallSurvey } from '../../files/smallSurvey';

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const { collection, entries } = smallSurvey();

describe('The survey file', () => {
  it('is RFC 8785 as a whole, check sum included', () => {
    const written = text(writeSurvey(collection, entries));
    expect(written).toBe(canonicalize(JSON.parse(written)));
  });

  it('is the same bytes whatever order entries, fields and replaced ids came in', () => {
    const settled = entry(300, {
      thing: entries[14]!.thing,
      body: entries[14]!.body,
      replaces: [uuid(116), uuid(115)],
    });
    const all = [...entries, settled];
    const shuffled = [...all].reverse().map((e) => ({
      ...(Object.fromEntries(Object.entries(e).reverse()) as typeof e),
      replaces: [...e.replaces].reverse(),
    }));
    expect(writeSurvey(collection, [...shuffled, ...all])).toEqual(writeSurvey(collection, all));
  });

  it('says nothing of when, where or on what it was written', () => {
    expect(Object.keys(JSON.parse(text(writeSurvey(collection, entries))))).toEqual([
      'check',
      'collection',
      'entries',
      'format',
      'version',
    ]);
  });

  it('carries a check sum of everything behind it', () => {
    const written = text(writeSurvey(collection, []));
    const rest = written.slice(written.indexOf(',') + 1);
    expect(written.startsWith(`{"check":"crc32:${crc32(new TextEncoder().encode(rest))}",`)).toBe(true);
  });

  it('is never written with two contents under one id', () => {
    const two = [entry(1, { thing: 'look/x' }), entry(1, { thing: 'look/x', body: { a: 1 } })];
    expect(() => writeSurvey(collection, two)).toThrow(RangeError);
  });

  it('comes back exactly as it went, every known kind in it', () => {
    const bytes = writeSurvey(collection, entries);
    const back = readSurvey(bytes);
    if (!back.ok) throw new Error(JSON.stringify(back.problems));
    expect(new Set(back.entries.map((e) => e.kind))).toEqual(new Set(Object.keys(bodySchemas)));
    expect(back.entries).toEqual(entries);
    expect(writeSurvey(back.collection, back.entries)).toEqual(bytes);
    expect(back).toMatchObject({ unknown: [], keptAtHome: [], notes: [] });
  });

  it('keeps kinds, fields and versions it does not know, byte for byte', () => {
    const strange = [
      ...entries,
      entry(200, { thing: 'lantern/x', body: { deep: { list: [1, { two: 'zwei' }] } }, extra: true }),
      entry(201, { thing: `look/${uuid(201)}`, v: 2, body: { result: 'seen from the air' } }),
      { ...entries[4]!, id: uuid(202), replaces: [uuid(105)], body: { ...entries[4]!.body, lit: 'at night' } },
    ];
    const bytes = writeSurvey(collection, strange);
    const back = readSurvey(bytes);
    if (!back.ok) throw new Error(JSON.stringify(back.problems));
    expect(writeSurvey(back.collection, back.entries)).toEqual(bytes);
    expect(back.unknown.map((u) => u.kind)).toEqual(['lantern', 'look']);
    expect(back.notes.map((n) => n.code)).toEqual(['kinds not known']);
  });
});

describe('The check sum', () => {
  it('is CRC-32: the published check value of "123456789" comes out', () => {
    // Check value of CRC-32/ISO-HDLC: Williams, "A Painless Guide to CRC Error Detection Algorithms" (1993), from memory.
    expect(crc32(new TextEncoder().encode('123456789'))).toBe('cbf43926');
    expect(crc32(new Uint8Array())).toBe('00000000');
  });
});
