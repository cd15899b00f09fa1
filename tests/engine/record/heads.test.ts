import { describe, expect, it } from 'vitest';
import { assemble, currentOf, type Entry, headsOf } from '../../../src/engine/record';
import { bodies, entry, round, uuid, zoneA, zoneB } from '../../files/entries';

const thing = `finding/${round.slice(6)}/${zoneA.slice(5)}/green-spots/metal`;
const one = (n: number, over: Partial<Entry> = {}) => entry(n, { thing, body: bodies.finding(), ...over });
const ids = (entries: readonly Entry[]) => entries.map((e) => e.id);

describe('The present state of a thing', () => {
  it('is its only entry', () => {
    const only = one(10);
    expect(currentOf([only])).toEqual({
      thing,
      kind: 'finding',
      within: only.within,
      lead: only,
      line: 1,
      heads: [only.id],
      gone: false,
    });
  });

  it('is the last of a line of corrections, whatever order the entries come in', () => {
    const line = [one(10), one(11, { replaces: [uuid(10)] }), one(12, { replaces: [uuid(11)] })];
    for (const order of [line, [...line].reverse(), [line[1]!, line[0]!, line[2]!, line[1]!]]) {
      expect(currentOf(order)).toMatchObject({ heads: [uuid(12)], line: 3, gone: false });
    }
  });

  it('is one again after somebody settled two versions', () => {
    const two = [one(10), one(11, { replaces: [uuid(10)] }), one(12, { replaces: [uuid(10)], device: 'tablet-2' })];
    expect(headsOf(two)).toHaveLength(2);
    expect(ids(headsOf([...two, one(13, { replaces: [uuid(11), uuid(12)] })]))).toEqual([uuid(13)]);
  });

  it('is not asked for where there is no entry at all', () => {
    expect(() => currentOf([])).toThrow(RangeError);
  });
});

describe('Which of two versions leads', () => {
  it('a living one before one that was taken away, even on a shorter line', () => {
    const entries = [one(10), one(11), one(12, { replaces: [uuid(10)], gone: true })];
    expect(currentOf(entries)).toMatchObject({ heads: [uuid(11), uuid(12)], gone: false });
  });

  it('the longer line of replacement before a worse finding', () => {
    const severe = one(10, { body: bodies.finding({ severity: 'severe' }) });
    expect(ids(headsOf([severe, one(11), one(12, { replaces: [uuid(11)] })]))).toEqual([uuid(12), uuid(10)]);
  });

  it.each([
    ['severity', { severity: 'moderate' }, { severity: 'slight', activity: 'active' }],
    ['activity', { activity: 'active' }, { activity: 'unclear' }],
    ['coverage', { coverage: { value: 0.1, low: 0.1, high: 0.1, method: 'dots' } }, {}],
    ['count', { coverage: undefined, count: 'more' }, { coverage: undefined, count: 'two to five' }],
    ['still there', { severity: 'slight' }, { severity: 'severe', cleared: true }],
  ] as const)('the worse finding before the id: %s', (_, worse, milder) => {
    const a = one(20, { body: bodies.finding(worse) });
    const b = one(10, { body: bodies.finding(milder) });
    expect(ids(headsOf([a, b]))).toEqual([a.id, b.id]);
    expect(ids(headsOf([b, a]))).toEqual([a.id, b.id]);
  });

  it('never the one whose clock was ahead: the part of the id that is chance decides, not the part that is time', () => {
    const early = { ...one(20), id: uuid(20, Date.UTC(1970, 1)) };
    const late = { ...one(10), id: uuid(10, Date.UTC(2099, 1)) };
    expect(ids(headsOf([early, late]))).toEqual([late.id, early.id]);
    const swapped = [
      { ...early, id: uuid(20, Date.UTC(2099, 1)) },
      { ...late, id: uuid(10, Date.UTC(1970, 1)) },
    ];
    expect(ids(headsOf(swapped)).map((id) => id.slice(24))).toEqual([uuid(10), uuid(20)].map((id) => id.slice(24)));
  });

  it('an open person check before a closed one', () => {
    const check = 'personCheck/x';
    const open = entry(20, { thing: check, body: { what: 'leans' } });
    const closed = entry(10, {
      thing: check,
      body: { what: 'leans', closed: { on: '2026-05-12', by: 'R. Invented' } },
    });
    expect(ids(headsOf([closed, open]))).toEqual([open.id, closed.id]);
  });
});

describe('Entries that make no sense', () => {
  it('that replace each other in a circle all stay, and the count comes to an end', () => {
    const circle = [
      one(10, { replaces: [uuid(12)] }),
      one(11, { replaces: [uuid(10)] }),
      one(12, { replaces: [uuid(11)] }),
    ];
    expect(new Set(ids(headsOf(circle)))).toEqual(new Set(ids(circle)));
  });

  it('that replace themselves are heads all the same', () => {
    expect(ids(headsOf([one(10, { replaces: [uuid(10)] }), one(11, { replaces: [uuid(10)] })]))).toEqual([uuid(11)]);
    expect(ids(headsOf([one(10, { replaces: [uuid(10)] })]))).toEqual([uuid(10)]);
  });

  it('that replace or restore what is not here are heads', () => {
    expect(ids(headsOf([one(10, { replaces: [uuid(99)], restores: uuid(98) })]))).toEqual([uuid(10)]);
  });

  it('a line of 100,000 corrections does not break the stack', () => {
    const line = Array.from({ length: 100_000 }, (_, i) => one(i, { replaces: i === 0 ? [] : [uuid(i - 1)] }));
    expect(currentOf(line)).toMatchObject({ heads: [uuid(99_999)], line: 100_000 });
  });
});

describe('Everything at once', () => {
  it('is told thing by thing', () => {
    const other = entry(11, { thing: zoneB, body: bodies.zone() });
    const currents = assemble([one(10), other, one(12, { replaces: [uuid(10)] })]);
    expect([...currents.keys()]).toEqual([thing, zoneB]);
    expect(currents.get(thing)?.lead.id).toBe(uuid(12));
  });
});
