import { describe, expect, it } from 'vitest';
import { type Preview, previewImport } from '../../../src/engine/exchange';
import { type Entry, nameOf } from '../../../src/engine/record';
import { bodies, collection, entry, first, round, sculpture, uuid, zoneA } from '../../files/entries';
import { smallSurvey } from '../../files/smallSurvey';

const { entries } = smallSurvey();
const finding = nameOf.finding(round, zoneA, 'green-spots', 'metal');
const hash = 'ab'.repeat(32);

const previewed = (
  here: readonly Entry[],
  coming: readonly Entry[],
  photos: string[] = [],
  theirs = collection,
): Preview => {
  const preview = previewImport({ collection, entries: here }, { collection: theirs, entries: coming }, photos);
  if (!preview.ok) throw new Error(JSON.stringify(preview.problems));
  return preview;
};
const ofWork = (preview: Preview) => preview.rows.find((row) => row.within === sculpture);
const ofAll = (preview: Preview) => preview.rows.find((row) => row.within === collection);

describe('What an import would change', () => {
  it('into an empty collection: all is new, told by sculpture, the collection itself last', () => {
    const preview = previewed([], entries);
    expect(preview.rows.map((row) => row.within)).toEqual([sculpture, collection]);
    expect(ofWork(preview)).toMatchObject({
      number: 'Q-01',
      title: 'Invented work',
      newHere: true,
      already: 0,
      replaced: 0,
    });
    const things = new Set(entries.map((e) => e.thing)).size;
    expect(preview.rows.reduce((sum, row) => sum + row.new, 0)).toBe(things);
    expect(preview.entries).toHaveLength(entries.length);
  });

  it('of the same file again: nothing', () => {
    const preview = previewed(entries, entries);
    expect(preview.entries).toEqual([]);
    for (const row of preview.rows) expect(row).toMatchObject({ newHere: false, new: 0, replaced: 0, twoVersions: 0 });
  });

  it('of an older file after a newer one: nothing', () => {
    const older = entries.filter((e) => e.id !== uuid(116) && e.id !== uuid(124));
    expect(ofWork(previewed(entries, older))).toMatchObject({ new: 0, replaced: 0, twoVersions: 0 });
  });

  it('where the other side went on from what is here: replaced', () => {
    const later = first(200, finding, 'finding', bodies.finding({ severity: 'severe' }), { replaces: [uuid(116)] });
    expect(ofWork(previewed(entries, [...entries, later]))).toMatchObject({ new: 0, replaced: 1, twoVersions: 0 });
  });

  it('where the other side took away what is here: replaced', () => {
    const gone = entry(200, { thing: finding, replaces: [uuid(116)], gone: true });
    expect(ofWork(previewed(entries, [...entries, gone]))).toMatchObject({ replaced: 1, twoVersions: 0 });
  });

  it('where both went on without seeing each other: two versions', () => {
    const mine = first(200, finding, 'finding', bodies.finding({ note: 'here' }), { replaces: [uuid(116)] });
    const theirs = first(201, finding, 'finding', bodies.finding({ note: 'there' }), { replaces: [uuid(116)] });
    expect(ofWork(previewed([...entries, mine], [...entries, theirs]))).toMatchObject({ replaced: 0, twoVersions: 1 });
  });

  it('where the other side has settled what has two versions here: replaced', () => {
    const mine = first(200, finding, 'finding', bodies.finding({ note: 'here' }), { replaces: [uuid(116)] });
    const theirs = first(201, finding, 'finding', bodies.finding({ note: 'there' }), { replaces: [uuid(116)] });
    const settled = first(202, finding, 'finding', bodies.finding(), { replaces: [uuid(200), uuid(201)] });
    const both = [...entries, mine, theirs];
    expect(ofWork(previewed(both, [...both, settled]))).toMatchObject({ replaced: 1, twoVersions: 0 });
  });

  it('counts photos whose bytes are not here', () => {
    expect(ofWork(previewed([], entries))?.photosMissing).toBe(2);
    expect(ofWork(previewed([], entries, [hash]))?.photosMissing).toBe(1);
  });

  it('does not miss the bytes of a photo that was taken away', () => {
    const gone = entry(200, { thing: nameOf.photo(hash), replaces: [uuid(123)], gone: true });
    expect(ofWork(previewed([], [...entries, gone]))?.photosMissing).toBe(1);
  });

  it('asks of rounds begun apart whether they are one', () => {
    const other = first(200, nameOf.round(uuid(50)), 'round', bodies.round({ date: '2026-05-15' }), {
      device: 'tablet-2',
    });
    expect(ofWork(previewed(entries, [...entries, other]))?.roundsThatMayBeOne).toBe(1);
    expect(ofWork(previewed([...entries, other], [...entries, other]))?.roundsThatMayBeOne).toBe(0);
  });

  it('says that the file is of another collection, with both names', () => {
    const there = first(
      300,
      `collection/${uuid(99)}`,
      'collection',
      { name: 'Other park' },
      { within: `collection/${uuid(99)}` },
    );
    const preview = previewed(entries, [there], [], there.thing);
    expect(preview.otherCollection).toEqual({ here: 'Invented garden', theirs: 'Other park' });
    expect(ofAll(preview)).toBeUndefined();
    expect(previewed(entries, entries).otherCollection).toBeUndefined();
  });

  it('says that the file holds an invented collection', () => {
    const demo = [first(101, collection, 'collection', { name: 'Demo', invented: true }, { within: collection })];
    expect(previewed([], demo).invented).toBe(true);
    expect(previewed([], entries).invented).toBe(false);
  });

  it('finds a copied tablet: one count of one device on two entries', () => {
    const twin = { ...entry(200, { thing: `look/${uuid(60)}` }), n: entries[3]?.n ?? 0 };
    expect(previewed(entries, [twin]).copiedDevices).toEqual(['tablet-1']);
    expect(previewed(entries, entries).copiedDevices).toEqual([]);
  });

  it('is refused where one id stands for two contents', () => {
    const [one] = entries;
    const changed = { ...one!, body: { name: 'Somebody else' } };
    expect(previewImport({ collection, entries }, { collection, entries: [changed] })).toMatchObject({
      ok: false,
      problems: [{ code: 'one id, two contents', params: { id: one?.id } }],
    });
  });
});
