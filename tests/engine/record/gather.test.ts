import { describe, expect, it } from 'vitest';
import { assemble, type Entry, findingsOf, gather, idPart, nameOf, visitOf } from '../../../src/engine/record';
import { bodies, entry, first, round, sculpture, uuid, zoneA, zoneB } from '../../files/entries';

const later = nameOf.round(uuid(5));
const base: Entry[] = [
  first(1, sculpture, 'sculpture', bodies.sculpture),
  first(3, zoneB, 'zone', bodies.zone({ letter: 'B', order: 2 })),
  first(2, zoneA, 'zone', bodies.zone()),
  first(5, later, 'round', bodies.round({ date: '2026-05-14' }), { device: 'tablet-2' }),
  first(4, round, 'round', bodies.round()),
];
const visit = (n: number, r = round, z = zoneA, over: Partial<Entry> = {}) =>
  first(n, nameOf.visit(r, z), 'visit', bodies.visit({ round: r, zone: z }), over);
const finding = (n: number, r = round, z = zoneA, over: Partial<Entry> = {}) =>
  first(n, nameOf.finding(r, z, 'green-spots', 'metal'), 'finding', bodies.finding({ round: r, zone: z }), over);
const gathered = (...entries: Entry[]) => {
  const record = gather(assemble([...base, ...entries]).values());
  if (!record) throw new Error('no sculpture');
  return record;
};
const names = (things: readonly { readonly thing: string }[]) => things.map((t) => t.thing);

describe('The record of a sculpture', () => {
  it('has zones in walking order and rounds in order of date', () => {
    const record = gathered();
    expect(names(record.zones)).toEqual([zoneA, zoneB]);
    expect(names(record.rounds)).toEqual([round, later]);
  });

  it('leaves out what was taken away', () => {
    const record = gathered(finding(20), finding(21, round, zoneA, { replaces: [uuid(20)], gone: true }));
    expect(record.findings).toEqual([]);
    expect(record.unsettled).toEqual([]);
  });

  it('names what two people spoke of without seeing each other', () => {
    const record = gathered(visit(19), finding(20), finding(21, round, zoneA, { device: 'tablet-2' }));
    expect(record.findings).toHaveLength(1);
    expect(record.unsettled).toEqual([nameOf.finding(round, zoneA, 'green-spots', 'metal')]);
  });

  it('names what it does not know: a new kind of thing, and a known one written by a newer version', () => {
    const record = gathered(entry(30, { thing: 'lantern/x' }), finding(31, round, zoneA, { v: 2 }));
    expect(record.findings).toEqual([]);
    expect(record.unknown.map((u) => u.kind)).toEqual(['finding', 'lantern']);
  });

  it('keeps findings of a round that was taken away out of every sum, and names them', () => {
    const record = gathered(finding(20), entry(21, { thing: round, replaces: [uuid(4)], gone: true }));
    expect(record.findings).toEqual([]);
    expect(record.adrift).toEqual([nameOf.finding(round, zoneA, 'green-spots', 'metal')]);
  });

  it('is not there where the sculpture is not', () => {
    expect(gather(assemble(base.slice(1)).values())).toBeUndefined();
  });

  it('answers for one zone of one round', () => {
    const record = gathered(visit(20), finding(21), finding(22, later), visit(23, later));
    expect(visitOf(record, round, zoneA)?.lead.id).toBe(uuid(20));
    expect(names(findingsOf(record, round, zoneA))).toEqual([nameOf.finding(round, zoneA, 'green-spots', 'metal')]);
    expect(visitOf(record, round, zoneB)).toBeUndefined();
    expect(findingsOf(record, round, zoneB)).toEqual([]);
  });
});

describe('Two rounds said to be one', () => {
  const partOf = first(40, later, 'round', bodies.round({ date: '2026-05-14', partOf: round }), {
    replaces: [uuid(5)],
  });

  it('count as one, with the zones of both', () => {
    const record = gathered(partOf, visit(20), finding(21), visit(22, later, zoneB), finding(23, later, zoneB));
    expect(names(record.rounds)).toEqual([round]);
    expect(record.visits.map((v) => [v.body.round, v.body.zone])).toEqual([
      [round, zoneA],
      [round, zoneB],
    ]);
    expect(findingsOf(record, round, zoneB)).toHaveLength(1);
    expect(record.unsettled).toEqual([]);
  });

  it('make of what both saw one finding with two versions, never two that count twice', () => {
    const milder = finding(21);
    const worse = first(23, nameOf.finding(later, zoneA, 'green-spots', 'metal'), 'finding', {
      ...bodies.finding({ round: later, severity: 'severe' }),
    });
    const record = gathered(partOf, visit(20), visit(22, later), milder, worse);
    const both = findingsOf(record, round, zoneA);
    expect(both).toHaveLength(1);
    expect(both[0]?.body.severity).toBe('severe');
    expect(both[0]?.heads).toEqual([worse.id, milder.id]);
    expect(record.unsettled).toContain(nameOf.finding(round, zoneA, 'green-spots', 'metal'));
  });

  it('are settled where one of the doubles was taken away', () => {
    const record = gathered(
      partOf,
      finding(21),
      finding(23, later),
      finding(24, later, zoneA, { replaces: [uuid(23)], gone: true }),
    );
    expect(findingsOf(record, round, zoneA)[0]?.heads).toEqual([uuid(21)]);
    expect(record.unsettled).toEqual([]);
  });

  it('said to be one from both sides at once still count once', () => {
    const other = first(41, round, 'round', bodies.round({ partOf: later }), { replaces: [uuid(4)] });
    expect(names(gathered(partOf, other).rounds)).toHaveLength(1);
  });

  it('carry the person check of a finding with them', () => {
    const check = first(50, 'personCheck/x', 'personCheck', {
      sculpture,
      what: 'a loose edge',
      opened: '2026-05-14',
      finding: nameOf.finding(later, zoneA, 'green-spots', 'metal'),
    });
    expect(gathered(partOf, finding(23, later), check).personChecks[0]?.body.finding).toBe(
      `finding/${idPart(round)}/${idPart(zoneA)}/green-spots/metal`,
    );
  });

  it('answers carried over from one of them are carried from the one they count as', () => {
    const next = nameOf.round(uuid(6));
    const record = gathered(
      partOf,
      first(6, next, 'round', bodies.round({ date: '2027-05-12' })),
      first(
        60,
        nameOf.visit(next, zoneA),
        'visit',
        bodies.visit({ round: next, state: 'carried', carriedFrom: later }),
      ),
    );
    expect(visitOf(record, next, zoneA)?.body.carriedFrom).toBe(round);
  });

  it('are two again where the one they were part of was taken away', () => {
    expect(names(gathered(partOf, entry(41, { thing: round, replaces: [uuid(4)], gone: true })).rounds)).toEqual([
      later,
    ]);
  });
});
