import { expect, it } from 'vitest';
import { previewImport, readSurvey, unite, writeSurvey } from '../../src/engine/exchange';
import { assemble, type Entry, nameOf } from '../../src/engine/record';
import { bodies, collection, sculpture } from '../files/entries';
import { erasure } from '../files/erasures';
import { type Seeded, seeded } from '../files/seeded';

/** Entries of many findings over many rounds, a third of them corrected once or twice, by one of two tablets. */
const manyEntries = (count: number, draw: Seeded, device: string): Entry[] => {
  const entries: Entry[] = [];
  const zones = Array.from({ length: 400 }, () => nameOf.zone(draw.id(1_780_000_000_000)));
  const line: Entry[] = [];
  while (entries.length < count) {
    const before = line.length > 0 && draw.next() < 0.3 ? line[draw.below(line.length)] : undefined;
    const zone = zones[draw.below(zones.length)] as string;
    const round = nameOf.round(draw.id(1_780_000_000_000));
    const id = draw.id(1_780_000_000_000 + draw.below(1_000_000_000));
    const made: Entry = {
      id,
      thing: before?.thing ?? nameOf.finding(round, zone, 'green-spots', 'metal'),
      kind: 'finding',
      within: sculpture,
      v: 1,
      at: '2026-05-12T10:41:07.120+01:00',
      by: '',
      device,
      n: entries.length + 1,
      deed: draw.id(1_780_000_000_000),
      replaces: before ? [before.id] : [],
      body: before?.body ?? { ...bodies.finding({ zone, round }), note: `seen ${entries.length}` },
    };
    entries.push(made);
    line[draw.below(1000)] = made;
  }
  return entries.filter((entry) => entry !== undefined);
};

it('two surveys of 100,000 entries join to the same bytes whoever meets whom, erasures heeded, each in seconds', () => {
  const draw = seeded(41);
  const shared = manyEntries(60_000, draw, 'tablet-1');
  const a = [...shared, ...manyEntries(40_000, draw, 'tablet-1b')];
  const gone = shared.slice(0, 500).map((e) => e.id);
  const b = [...shared, ...manyEntries(39_999, draw, 'tablet-2'), erasure(900, { entries: gone })];
  expect([a.length, b.length]).toEqual([100_000, 100_000]);
  const joined = (one: readonly Entry[], two: readonly Entry[]) => {
    const started = performance.now();
    const united = unite(one, two);
    expect(performance.now() - started).toBeLessThan(5000);
    if (!united.ok) throw new Error('not united');
    return united.entries;
  };
  const both = joined(a, b);
  expect(both.length).toBe(140_000 - 500);
  const bytes = writeSurvey(collection, both);
  const same = (entries: readonly Entry[]) => Buffer.from(writeSurvey(collection, entries)).equals(bytes);
  expect(same(joined(b, a))).toBe(true);
  expect(same(joined(both, a))).toBe(true);
  const back = readSurvey(bytes);
  if (!back.ok) throw new Error(JSON.stringify(back.problems));
  expect(back.entries.length).toBe(both.length);
  expect([...assemble(back.entries).values()].length).toBe(new Set(both.map((e) => e.thing)).size);
  const preview = previewImport({ collection, entries: a }, { collection, entries: b });
  expect(preview).toMatchObject({ ok: true, erased: { entries: 500 } });
  if (preview.ok) expect(preview.entries.length).toBe(40_000);
}, 120_000);
