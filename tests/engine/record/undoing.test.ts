import { describe, expect, it } from 'vitest';
import { currentOf, type Entry, undoingEntries } from '../../../src/engine/record';
import { bodies, entry, round, uuid, zoneA } from '../../files/entries';

const thing = `finding/${round.slice(6)}/${zoneA.slice(5)}/green-spots/metal`;
const deed = uuid(500);
const one = (n: number, over: Partial<Entry> = {}) => entry(n, { thing, body: bodies.finding(), ...over });

const undone = (before: Entry[], done: Entry[]) => {
  let next = 700;
  const undo = { deed: uuid(600), at: '2026-06-01T08:00:00+01:00', by: 'surveyor/me', newId: () => uuid(next++) };
  const made = undoingEntries(done, (t) => [...before, ...done].filter((e) => e.thing === t), undo);
  const all = [...before, ...done, ...made.map((e, i) => ({ ...e, device: 'tablet-1', n: 100 + i }))];
  return { made, after: currentOf(all as Entry[]) };
};

describe('Undo', () => {
  it('brings back the state before, with its author and its time', () => {
    const before = one(10, { by: 'surveyor/first', at: '2025-05-01T10:00:00+01:00', body: bodies.finding() });
    const edit = one(11, { replaces: [uuid(10)], deed, body: bodies.finding({ severity: 'severe' }) });
    const { made, after } = undone([before], [edit]);
    expect(made).toHaveLength(1);
    expect(made[0]).toMatchObject({ restores: uuid(10), replaces: [uuid(11)], by: before.by, at: before.at });
    expect(after.lead.body).toEqual(before.body);
  });

  it('takes away what the deed created', () => {
    const { made, after } = undone([], [one(11, { deed }), one(12, { deed, replaces: [uuid(11)] })]);
    expect(made).toHaveLength(1);
    expect(made[0]).toMatchObject({ gone: true, replaces: [uuid(12)], by: 'surveyor/me' });
    expect(after.gone).toBe(true);
  });

  it('brings back what the deed took away, and takes away again what it brought back', () => {
    const taken = undone([one(10)], [one(11, { deed, replaces: [uuid(10)], gone: true })]);
    expect(taken.after.gone).toBe(false);
    const revived = undone(
      [one(9), one(10, { replaces: [uuid(9)], gone: true })],
      [one(11, { deed, replaces: [uuid(10)] })],
    );
    expect(revived.after.gone).toBe(true);
  });

  it('of settling brings back both versions, the same one leading', () => {
    const before = [
      one(10),
      one(11, { replaces: [uuid(10)], body: bodies.finding({ severity: 'slight' }) }),
      one(12, { body: bodies.finding({ severity: 'severe' }), device: 'tablet-2' }),
    ];
    const stood = currentOf(before);
    expect(stood.heads).toEqual([uuid(11), uuid(12)]);
    const { made, after } = undone(before, [one(13, { deed, replaces: [uuid(11), uuid(12)] })]);
    expect(made).toHaveLength(2);
    expect(after.heads).toHaveLength(2);
    expect(after.lead.restores).toBe(uuid(11));
    expect(after.line).toBe(stood.line);
  });

  it('of settling two versions that are alike lets chance decide as it did before', () => {
    for (let n = 0; n < 20; n++) {
      const before = [
        one(30 + n, { body: bodies.finding({ note: 'a' }) }),
        one(49 - n, { body: bodies.finding({ note: 'b' }) }),
      ];
      const stood = currentOf(before);
      const { after } = undone(before, [one(80, { deed, replaces: [...stood.heads].reverse() })]);
      expect(after.lead.body.note).toBe(stood.lead.body.note);
      expect(after.lead.restores).toBe(stood.lead.id);
    }
  });

  it('of an undone undo names the entry whose state it is, not the one in between', () => {
    const before = [one(10), one(11, { replaces: [uuid(10)] }), one(12, { replaces: [uuid(11)], restores: uuid(10) })];
    const { made } = undone(before, [one(13, { deed, replaces: [uuid(12)] })]);
    expect(made[0]).toMatchObject({ restores: uuid(10), replaces: [uuid(13)] });
  });

  it('of one deed after another ends where it began: taken away, and in one version', () => {
    const made = one(10, { deed: uuid(501) });
    const edited = one(11, { deed, replaces: [uuid(10)] });
    const broughtBack = one(12, { replaces: [uuid(11)], restores: uuid(10) });
    const { made: last, after } = undone([edited, broughtBack], [made]);
    expect(last[0]).toMatchObject({ gone: true, replaces: [uuid(12)] });
    expect(after).toMatchObject({ gone: true, heads: [last[0]?.id] });
  });

  it('of what somebody else has gone on from leaves both to be settled', () => {
    const edited = one(11, { deed, replaces: [uuid(10)] });
    const { after } = undone([one(10), one(12, { replaces: [uuid(11)], device: 'tablet-2' })], [edited]);
    expect(after.heads).toHaveLength(2);
  });

  it('goes back behind the whole deed where it wrote a thing twice', () => {
    const { made, after } = undone(
      [one(10)],
      [one(11, { deed, replaces: [uuid(10)] }), one(12, { deed, replaces: [uuid(11)], gone: true })],
    );
    expect(made).toHaveLength(1);
    expect(made[0]).toMatchObject({ restores: uuid(10), replaces: [uuid(12)] });
    expect(after).toMatchObject({ gone: false, heads: [made[0]?.id] });
  });

  it('of a change whose earlier state was erased since leaves the thing as it stands, and never takes it away', () => {
    const edit = one(11, { deed, replaces: [uuid(10)], body: bodies.finding({ severity: 'severe' }) });
    const { made, after } = undone([], [edit]);
    expect(made).toEqual([]);
    expect(after.lead).toEqual(edit);
  });
});
