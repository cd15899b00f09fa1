import { describe, expect, it } from 'vitest';
import { adviceOn, limits, problemReasons, readSurvey, writeSurvey } from '../../../src/engine/exchange';
import { entry, sculpture, uuid } from '../../files/entries';
import { hostileFiles } from '../../files/hostile';
import { smallSurvey } from '../../files/smallSurvey';

const { collection, entries } = smallSurvey();
const good = writeSurvey(collection, entries);
const encode = (text: string) => new TextEncoder().encode(text);
const text = new TextDecoder().decode(good);

describe('A file that is not taken', () => {
  it.each(hostileFiles.map((h) => [h.name, h] as const))(
    '%s: says what is wrong and where',
    (_, { bytes, code, where }) => {
      const read = readSurvey(bytes);
      expect(read.ok).toBe(false);
      if (read.ok) return;
      expect(read.problems.map((p) => p.code)).toContain(code);
      const said = read.problems.find((p) => p.code === code);
      expect(Object.keys(said?.params ?? {}).sort()).toEqual([...problemReasons[code]].sort());
      if (where !== undefined) expect(said?.params.where).toBe(where);
    },
  );

  it('is here for every problem there is', () => {
    const met = [...hostileFiles.map((h) => h.code), 'file too large', 'more problems'];
    expect(new Set(met)).toEqual(new Set(Object.keys(problemReasons)));
  });

  it('leaves nothing behind in the machinery of objects', () => {
    for (const { bytes } of hostileFiles) readSurvey(bytes);
    expect(Object.hasOwn(Object.prototype, 'mine')).toBe(false);
    expect(({} as Record<string, unknown>).mine).toBeUndefined();
  });

  it('has a piece of advice for each thing that may be wrong', () => {
    expect(Object.keys(adviceOn).sort()).toEqual(Object.keys(problemReasons).sort());
  });

  it('is too large: refused before a byte is read', () => {
    const read = readSurvey({ length: limits.bytes + 1 } as Uint8Array);
    expect(read).toMatchObject({
      ok: false,
      problems: [{ code: 'file too large', params: { megabytes: 151, most: 150 } }],
    });
  });

  it.each([
    ['more than 100 %', 0, 1],
    ['a zone of no area', 0, 100_000],
    ['a counter below nothing', 0, 'any number'],
  ])('because of %s: says between what the number may lie', (name, least, most) => {
    const read = readSurvey(hostileFiles.find((h) => h.name === name)?.bytes ?? new Uint8Array());
    expect(read).toMatchObject({ ok: false, problems: [{ params: { least, most } }] });
  });

  it('with a hundred faults lists the first twenty, and counts the rest', () => {
    const faulty = Array.from({ length: 100 }, (_, i) => entry(300 + i, { thing: `zone/${i}`, kind: 'round' }));
    const read = readSurvey(writeSurvey(collection, faulty));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems).toHaveLength(limits.problems + 1);
    expect(read.problems.at(-1)).toEqual({ code: 'more problems', params: { count: 80 } });
  });
});

describe('A damaged file', () => {
  // Five entries are enough to meet every kind of byte a file has.
  const small = writeSurvey(collection, [...entries.slice(0, 2), ...entries.slice(13, 16)]);

  it('cut at any length is refused', () => {
    for (let length = 0; length < small.length; length++) {
      const read = readSurvey(small.subarray(0, length));
      expect(read.ok, `cut at ${length}`).toBe(false);
    }
  });

  it('with any one byte flipped is refused, or says exactly the same', () => {
    const flips = [0x01, 0x20, 0x80];
    let taken = 0;
    for (let at = 0; at < small.length; at++) {
      for (const flip of flips) {
        const bytes = small.slice();
        bytes[at] = (bytes[at] ?? 0) ^ flip;
        const read = readSurvey(bytes);
        if (!read.ok) continue;
        taken++;
        expect(writeSurvey(read.collection, read.entries), `byte ${at} flipped by ${flip}`).toEqual(small);
      }
    }
    // Only the name of the check itself may be spoilt without harm.
    expect(taken).toBeLessThanOrEqual('check'.length * flips.length);
  });
});

describe('A file that is taken', () => {
  it('may be set out anew, with other white space and order of fields', () => {
    const pretty = encode(`\ufeff${JSON.stringify(JSON.parse(text), null, 2)}\n`);
    expect(readSurvey(pretty)).toMatchObject({ ok: true });
    const { check, ...rest } = JSON.parse(text);
    expect(readSurvey(encode(JSON.stringify({ ...rest, check })))).toMatchObject({ ok: true });
  });

  it('may come from a program that writes no check sum', () => {
    expect(readSurvey(encode(text.replace(/"check":"[^"]*",/, '')))).toMatchObject({ ok: true });
  });

  it('may come from a newer minor version, and that is said', () => {
    const { check: _, ...rest } = JSON.parse(text);
    const read = readSurvey(encode(JSON.stringify({ ...rest, version: '1.7', tides: [1] })));
    expect(read).toMatchObject({ ok: true, entries, notes: [{ code: 'written by a newer version' }] });
  });

  it('may hold the same entry twice', () => {
    const { check: _, ...rest } = JSON.parse(text);
    expect(readSurvey(encode(JSON.stringify({ ...rest, entries: [...entries, ...entries] })))).toMatchObject({
      ok: true,
    });
  });

  it('may take a thing away without saying more', () => {
    const more = [...entries, entry(500, { thing: sculpture, replaces: [uuid(105)], gone: true })];
    expect(readSurvey(writeSurvey(collection, more))).toMatchObject({ ok: true });
  });

  it('may speak of things kept at home, and that is counted', () => {
    const read = readSurvey(
      writeSurvey(
        collection,
        entries.filter((e) => e.kind !== 'photo'),
      ),
    );
    expect(read).toMatchObject({
      ok: true,
      keptAtHome: [`photo/${'ab'.repeat(32)}`, `photo/${'b'.repeat(64)}`],
      notes: [{ code: 'kept at home' }],
    });
  });

  it('keeps markup and odd signs in text as they came', () => {
    const odd = '<img src=x onerror=alert(1)> =1+1 \u0000\u202e\ud83d\ude00 \u2028';
    const more = [...entries, entry(500, { thing: 'lantern/x', body: { odd } })];
    const read = readSurvey(writeSurvey(collection, more));
    expect(read.ok && read.entries.find((e) => e.id === uuid(500))?.body.odd).toBe(odd);
  });

  it('reads minus nought as nought', () => {
    const { check: _, ...rest } = JSON.parse(text);
    const read = readSurvey(encode(JSON.stringify(rest).replace('"order":1', '"order":-0')));
    expect(read.ok && new TextDecoder().decode(writeSurvey(read.collection, read.entries))).toContain('"order":0');
  });
});
