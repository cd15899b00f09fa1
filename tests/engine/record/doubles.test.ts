import { describe, expect, it } from 'vitest';
import {
  assemble,
  doublesIn,
  type Entry,
  findingsOf,
  gather,
  nameOf,
  settlingDouble,
} from '../../../src/engine/record';
import { bodies, entry, first, round, sculpture, uuid, zoneA, zoneB } from '../../files/entries';

const later = nameOf.round(uuid(5));
const nameIn = (r: string, z = zoneA) => nameOf.finding(r, z, 'green-spots', 'metal');
const finding = (n: number, r: string, over: Partial<Entry> = {}, z = zoneA) =>
  first(n, nameIn(r, z), 'finding', bodies.finding({ round: r, zone: z }), over);
const base = [
  first(1, sculpture, 'sculpture', bodies.sculpture),
  first(2, zoneA, 'zone', bodies.zone()),
  first(3, zoneB, 'zone', bodies.zone({ letter: 'B', order: 2 })),
  first(4, round, 'round', bodies.round()),
  first(5, later, 'round', bodies.round({ partOf: round }), { device: 'tablet-2' }),
];
const doubles = (...entries: Entry[]) => doublesIn(assemble([...base, ...entries]).values());

describe('What two rounds said to be one both recorded', () => {
  it('is named once, with the heads of both', () => {
    const [one, ...none] = doubles(finding(20, round), finding(21, later), finding(22, later, {}, zoneB));
    expect(none).toEqual([]);
    expect(one?.thing).toBe(nameIn(round));
    expect(new Set(one?.current.heads)).toEqual(new Set([uuid(20), uuid(21)]));
    expect(one?.recordedAs.map((c) => c.thing).sort()).toEqual([nameIn(round), nameIn(later)].sort());
  });

  it('is no double where one side was taken away, or where the rounds are two', () => {
    const gone = finding(23, later, { replaces: [uuid(21)], gone: true });
    expect(doubles(finding(20, round), finding(21, later), gone)).toEqual([]);
    const apart = first(6, later, 'round', bodies.round(), { replaces: [uuid(5)] });
    expect(doubles(finding(20, round), finding(21, later), apart)).toEqual([]);
  });

  it('is settled for good by what settling writes: one finding, one head, each entry about its own thing', () => {
    const before = [...base, finding(20, round), finding(21, later), finding(22, later, { device: 'tablet-3' })];
    const [double] = doublesIn(assemble(before).values());
    if (!double) throw new Error('no double');
    const written = settlingDouble(double, bodies.finding({ round: later, severity: 'severe' }));
    const made = written.map((w, i) => entry(100 + i, { ...w }));
    const all = [...before, ...made];
    const thingOf = new Map(all.map((e) => [e.id, e.thing]));
    for (const e of made) for (const id of e.replaces) expect(thingOf.get(id)).toBe(e.thing);
    const record = gather(assemble(all).values());
    if (!record) throw new Error('no record');
    const [held, ...others] = findingsOf(record, round, zoneA);
    expect(others).toEqual([]);
    expect(held).toMatchObject({ body: { round, severity: 'severe' }, heads: [uuid(100)] });
    expect(record.unsettled).toEqual([]);
    expect(doublesIn(assemble(all).values())).toEqual([]);
  });

  it('may be recorded in two later rounds only: then the name in the first is made anew', () => {
    const third = nameOf.round(uuid(7));
    const rounds = [...base, first(7, third, 'round', bodies.round({ partOf: round }))];
    const [double] = doublesIn(assemble([...rounds, finding(20, later), finding(21, third)]).values());
    if (!double) throw new Error('no double');
    const [kept, ...taken] = settlingDouble(double, bodies.finding());
    expect(kept).toMatchObject({ thing: nameIn(round), replaces: [], body: { round } });
    const removed = finding(30, round, { gone: true });
    const [again] = doublesIn(assemble([...rounds, finding(20, later), finding(21, third), removed]).values());
    expect(again && settlingDouble(again, bodies.finding())[0]?.replaces).toEqual([uuid(30)]);
    expect(taken.map((w) => [w.thing, w.gone])).toEqual([
      [nameIn(later), true],
      [nameIn(third), true],
    ]);
  });
});
