import { describe, expect, it } from 'vitest';
import { insertsUnprotected, linesOf, type QuantityLine, scheduleStanding } from '../../../src/engine/campaign';
import { nameOf } from '../../../src/engine/record';
import { areaVersion, codes, invented } from '../change/invented';
import { insert, sculpture, thing, today, work, zone } from './drawnUp';

const both = [zone('A'), zone('B')];
const asked = (tasks: readonly string[], zones: readonly string[] = both) => ({ zones, tasks, photos: [], today });
const lines = (tasks: readonly string[], record = work()): readonly QuantityLine[] =>
  linesOf(record, [], asked(tasks)).map(({ line }) => line);

describe('The schedule of quantities', () => {
  it('makes a line a zone and task, with the area, its range and the reach', () => {
    expect(lines(['strip and repatinate'])).toMatchObject([
      { id: 'i1', zone: zone('A'), task: 'strip and repatinate', unit: 'm2', amount: 2, low: 1.8, high: 2.2 },
      { id: 'i2', zone: zone('B'), amount: 1 },
    ]);
  });

  it('never gives an area a narrower range than bidders reckon with, and keeps a wider one', () => {
    const versions = [
      { ...areaVersion(1, '2020-01-01', 2), area: { m2: 2, low: 2, high: 2, method: 'typed' as const } },
    ];
    const exact = invented({ zones: { A: { versions } }, rounds: [] });
    expect(lines(['clean down'], exact)[0]).toMatchObject({ amount: 2, low: 1.8, high: 2.2 });
    const wide = { m2: 2, low: 1.5, high: 2.5, method: 'outline' as const };
    const outlined = invented({
      zones: { A: { versions: [{ ...areaVersion(1, '2020-01-01', 2), area: wide }] } },
      rounds: [],
    });
    expect(lines(['clean down'], outlined)[0]).toMatchObject({ low: 1.5, high: 2.5 });
  });

  it('tells what the last round saw there, and that nothing was found is not the same as not looked', () => {
    const made = linesOf(work(), [], asked(['clean down']));
    expect(made[0]?.seen).toMatchObject({
      date: '2026-05-12',
      state: 'found',
      findings: [{ kind: 'even-green-film' }],
    });
    expect(made[1]?.seen).toMatchObject({ state: 'nothing', findings: [] });
    const unseen = invented({ zones: { A: { m2: 2 } }, rounds: [] });
    expect(linesOf(unseen, [], asked(['clean down']))[0]?.seen).toBeUndefined();
  });

  it('puts the inserts of a zone and its latest photo on its line', () => {
    const record = work({ inserts: [insert('L1', { zone: zone('A') })] });
    const photo = (sha: string, taken: string) =>
      thing<'photo'>(nameOf.photo(sha), {
        sculpture,
        sha256: sha,
        mime: 'image/webp',
        bytes: 1,
        role: 'zone',
        zone: zone('A'),
        taken,
      });
    const photos = [photo('b', '2026-05-12T10:00:00'), photo('a', '2025-05-12T10:00:00')];
    const [a, b] = linesOf(record, [], { ...asked(['clean down']), photos });
    expect(a?.line).toMatchObject({ inserts: [nameOf.insert('L1')], photo: nameOf.photo('b') });
    expect(b?.line.inserts).toBeUndefined();
    expect(b?.line.photo).toBeUndefined();
  });

  it('counts the pieces of an insert, and asks for what is done once only once', () => {
    const record = work({ inserts: [insert('L1', { count: 5, zone: zone('A') })] });
    expect(lines(['shield and watch', 'report'], record)).toMatchObject([
      { insert: nameOf.insert('L1'), unit: 'piece', amount: 5, name: 'A: cast glass' },
      { task: 'report', unit: 'sum', amount: 1 },
    ]);
  });

  it('puts nothing down twice and takes no number twice', () => {
    const there = lines(['clean down']).slice(1);
    const more = linesOf(work(), there, asked(['clean down', 'patinate']));
    expect(more.map(({ line }) => [line.id, line.zone, line.task])).toEqual([
      ['i3', zone('A'), 'clean down'],
      ['i4', zone('A'), 'patinate'],
      ['i5', zone('B'), 'patinate'],
    ]);
  });
});

describe('The schedule against the record', () => {
  it('says that there is none', () => {
    expect(codes(scheduleStanding(work(), [], today))).toEqual(['campaign: no schedule']);
  });

  it('names zones that no line treats and areas that have changed since', () => {
    const old = lines(['clean down'])
      .slice(0, 1)
      .map((line) => ({ ...line, amount: 1.9 }));
    expect(scheduleStanding(work(), old, today)).toEqual([
      { code: 'campaign: zones without a line', params: { zones: 'B' } },
      { code: 'campaign: area changed since', params: { letter: 'A', before: 1.9, now: 2 } },
    ]);
  });

  it('names a zone that is no more', () => {
    const record = invented({
      zones: { A: { m2: 2, split: { on: '2026-06-01', into: [{ zone: zone('B'), share: 1 }] } }, B: { m2: 2 } },
      rounds: [],
    });
    const old = [{ id: 'i1', zone: zone('A'), name: 'A', task: 'clean down', unit: 'm2' as const, amount: 2 }];
    expect(codes(scheduleStanding(record, old, today))).toContain('campaign: zone ended');
  });

  it('finds each insert of a treated zone that no line protects: harm to glass is not for ever put right', () => {
    const record = work({
      inserts: [insert('L1', { zone: zone('A') }), insert('L2', { zone: zone('B') }), insert('plaque')],
    });
    const treated = linesOf(record, [], asked(['clean down'], [zone('A')])).map(({ line }) => line);
    const names = (all: readonly QuantityLine[]) => insertsUnprotected(record, all).map((one) => one.thing);
    expect(names(treated)).toEqual([nameOf.insert('L1'), nameOf.insert('plaque')]);
    const guarded = [...treated, ...linesOf(record, treated, asked(['shield and watch'])).map(({ line }) => line)];
    expect(names(guarded)).toEqual([]);
  });
});
