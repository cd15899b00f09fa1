import { describe, expect, it } from 'vitest';
import { partialCarry, previewImport, readSurvey, unite, writeSurvey } from '../../../src/engine/exchange';
import { assemble, type Entry, nameOf } from '../../../src/engine/record';
import { bodies, collection, entry, first, sculpture, uuid, zoneA } from '../../files/entries';
import { erasure } from '../../files/erasures';
import { smallSurvey } from '../../files/smallSurvey';

const hash = 'ab'.repeat(32);
const surveyor = nameOf.surveyor(uuid(7));
const name = nameOf.personName(surveyor);
const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const read = (entries: readonly Entry[]) => {
  const { check: _, ...rest } = JSON.parse(text(writeSurvey(collection, []))) as Record<string, unknown>;
  return readSurvey(new TextEncoder().encode(JSON.stringify({ ...rest, entries })));
};
const united = (a: readonly Entry[], b: readonly Entry[]): readonly Entry[] => {
  const both = unite(a, b);
  if (!both.ok) throw new Error(JSON.stringify(both.problems));
  return both.entries;
};
const small = smallSurvey().entries;
const nameGone = erasure(400, { of: 'name', entries: [uuid(104)], names: [name] });
const photoGone = erasure(401, { of: 'photo', hashes: [hash], entries: [uuid(123)] }, { within: sculpture });

describe('Joining a survey in which something was erased', () => {
  it('an older file does not bring it back, whoever opens whose', () => {
    const here = united(small, [nameGone]);
    expect(text(writeSurvey(collection, here))).not.toContain('"name":"Ödön Invented"');
    expect(united(here, small)).toEqual(here);
    expect(united(small, here)).toEqual(here);
  });

  it('a spelling put right elsewhere meanwhile does not bring the name back', () => {
    const elsewhere = first(
      410,
      name,
      'name',
      { surveyor, name: 'Ödön Mended' },
      { within: collection, replaces: [uuid(104)] },
    );
    const both = united([...small, elsewhere], united(small, [nameGone]));
    expect(both.filter((e) => e.thing === name)).toEqual([]);
  });

  it('one id with two contents stops nobody once that id is erased', () => {
    const other = small.map((e) => (e.id === uuid(104) ? { ...e, body: { ...e.body, name: 'Else' } } : e));
    expect(unite(small, other).ok).toBe(false);
    expect(unite(united(small, [nameGone]), other).ok).toBe(true);
  });
});

describe('A file with erasures', () => {
  const zone1 = first(500, zoneA, 'zone', bodies.zone({ note: 'Ödön says so' }));
  const zone2 = first(501, zoneA, 'zone', bodies.zone({ note: 'The steward says so' }), { replaces: [uuid(500)] });
  const brought = { ...zone2, id: uuid(502), n: 502, replaces: [uuid(501)], restores: uuid(500) };

  it('may replace and bring back entries that an erasure in it names', () => {
    expect(read([zone2, brought, erasure(600, { entries: [uuid(500)] })])).toMatchObject({ ok: true });
    expect(read([zone2])).toMatchObject({ ok: false, problems: [{ code: 'replaces what is not in the file' }] });
  });

  it('that still holds what it erased is read without it, and that is said', () => {
    const back = read([zone1, zone2, erasure(600, { entries: [uuid(500)] })]);
    expect(back).toMatchObject({
      ok: true,
      notes: [{ code: 'erased left out', params: { count: 1 } }, { code: 'kept at home' }],
    });
    expect(back.ok && back.entries.map((e) => e.id)).toEqual([uuid(501), uuid(600)]);
  });

  it('is never written with what it erased', () => {
    expect(text(writeSurvey(collection, [...small, photoGone]))).not.toContain(`"sha256":"${hash}"`);
  });

  it('says of an erased photo that it is gone, not that it was kept at home', () => {
    const back = readSurvey(writeSurvey(collection, [...small, photoGone]));
    expect(back.ok && back.keptAtHome).not.toContain(`photo/${hash}`);
    expect(partialCarry(united(small, [photoGone])).keptAtHome).not.toContain(`photo/${hash}`);
  });

  it.each<[string, Partial<Entry>]>([
    ['taken away', { gone: true, replaces: [uuid(600)] }],
    ['said anew', { replaces: [uuid(600)] }],
    ['brought back', { restores: uuid(600) }],
  ])('is refused where an erasure is %s', (_, over) => {
    const one = erasure(600, { entries: [uuid(500)] });
    const two = { ...one, id: uuid(601), ...over };
    expect(read([one, two])).toMatchObject({ ok: false, problems: [{ code: 'erasure changed' }] });
  });
});

describe('A partial carry', () => {
  const other = nameOf.sculpture(uuid(50));
  const all = [
    ...small,
    first(300, other, 'sculpture', { number: 'Q-02', title: 'Other' }, { within: other }),
    erasure(402, { of: 'photo', hashes: ['ef'.repeat(32)] }, { within: other }),
    nameGone,
    photoGone,
  ];

  it('takes the erasures of what it carries and of the collection along, not those of other works', () => {
    const taken = partialCarry(all, { sculptures: [sculpture], without: ['names'] }).entries.map((e) => e.id);
    expect(taken).toContain(nameGone.id);
    expect(taken).toContain(photoGone.id);
    expect(taken).not.toContain(uuid(402));
  });

  it('makes an erasure hold on the tablet it comes to', () => {
    const carried = partialCarry(united(all, []), { sculptures: [sculpture], without: ['names'] }).entries;
    const there = united(small, carried);
    expect(there.some((e) => e.thing === name || e.thing === `photo/${hash}`)).toBe(false);
  });
});

describe('A preview', () => {
  const here = { collection, entries: small };

  it('says before anything is done what would be erased here, work by work, and which bytes', () => {
    const preview = previewImport(here, { collection, entries: [nameGone, photoGone] }, [hash, 'be'.repeat(32)]);
    if (!preview.ok) throw new Error('not taken');
    expect(preview.erased).toEqual({ entries: 2, photos: 1 });
    expect(preview.rows.map(({ within, erased }) => [within, erased])).toEqual([
      [sculpture, 1],
      [collection, 1],
    ]);
  });

  it('offers nothing that was erased here before, and counts it', () => {
    const after = united(small, [nameGone]);
    const preview = previewImport({ collection, entries: after }, { collection, entries: small });
    if (!preview.ok) throw new Error('not taken');
    expect(preview).toMatchObject({ refused: 1, entries: [], erased: { entries: 0 } });
  });

  it('of what would stand is what stands after joining', () => {
    const more = [...small, entry(700, { thing: 'lantern/x' }), nameGone];
    const preview = previewImport(here, { collection, entries: more });
    if (!preview.ok) throw new Error('not taken');
    expect(assemble(united(small, preview.entries))).toEqual(assemble(united(small, more)));
  });
});
