import { describe, expect, it } from 'vitest';
import {
  areaOn,
  assemble,
  type BodyOf,
  type Entry,
  gather,
  nameOf,
  zonesAt,
  zoneVersionAt,
} from '../../../src/engine/record';
import { bodies, first, round, sculpture, uuid, zoneA, zoneB } from '../../files/entries';

const zoneC = nameOf.zone(uuid(6));
const version = (n: number, since: string, m2 = 1) => ({
  n,
  since,
  substrate: 'bronze',
  area: { m2, low: m2, high: m2, method: 'typed' as const },
});
const zone = (n: number, thing: string, order: number, over: Partial<BodyOf<'zone'>>) =>
  first(n, thing, 'zone', bodies.zone({ order, ...over }));
const letters = (day: string, ...entries: Entry[]) => {
  const record = gather(assemble([first(1, sculpture, 'sculpture', bodies.sculpture), ...entries]).values());
  return record && zonesAt(record, day).map((z) => z.thing);
};
const ended = (n: number, thing: string, date: string) => first(n, thing, 'round', bodies.round({ date, ended: date }));

describe('Zones on a day', () => {
  const split = [
    zone(2, zoneA, 1, {
      versions: [version(1, '2020-01-01')],
      split: {
        on: '2024-03-01',
        into: [
          { zone: zoneB, share: 0.5 },
          { zone: zoneC, share: 0.5 },
        ],
      },
    }),
    zone(3, zoneB, 2, { versions: [version(1, '2024-03-01')] }),
    zone(6, zoneC, 3, { versions: [version(1, '2024-03-01')] }),
  ];

  it('are the undivided one before a split, and the new ones from its day on', () => {
    expect(letters('2024-02-29', ...split)).toEqual([zoneA]);
    expect(letters('2024-03-01', ...split)).toEqual([zoneB, zoneC]);
  });

  it('end when joined to another', () => {
    const joined = [
      zone(2, zoneA, 1, { joined: { on: '2025-01-01', into: zoneC } }),
      zone(6, zoneC, 3, { versions: [version(1, '2025-01-01')] }),
    ];
    expect(letters('2024-12-31', ...joined)).toEqual([zoneA]);
    expect(letters('2025-01-01', ...joined)).toEqual([zoneC]);
  });

  it('do not hold a zone drawn later against a round long finished', () => {
    const entries = [zone(2, zoneA, 1, {}), zone(3, zoneB, 2, { versions: [version(1, '2026-01-01')] })];
    expect(letters('2025-05-01', ...entries, ended(4, round, '2025-05-01'))).toEqual([zoneA]);
  });

  it('are all there for a round of last year typed in before any other was finished', () => {
    const entries = [zone(2, zoneA, 1, { versions: [version(1, '2026-04-01')] })];
    expect(letters('2025-05-01', ...entries, first(4, round, 'round', bodies.round({ date: '2025-05-01' })))).toEqual([
      zoneA,
    ]);
  });

  it('count from the round that visited them, where that was dated before they were drawn', () => {
    const entries = [
      zone(2, zoneA, 1, { versions: [version(1, '2026-04-01')] }),
      ended(4, round, '2025-05-01'),
      first(5, nameOf.visit(round, zoneA), 'visit', bodies.visit()),
    ];
    expect(letters('2025-05-01', ...entries)).toEqual([zoneA]);
    expect(letters('2025-04-30', ...entries)).toEqual([zoneA]);
  });
});

describe('A zone that was redrawn', () => {
  const entry = zone(2, zoneA, 1, { versions: [version(2, '2024-01-01', 2.5), version(1, '2020-01-01', 1)] });
  const thing = { thing: zoneA, body: entry.body as BodyOf<'zone'>, lead: entry, heads: [entry.id] };

  it('has the area it had on the day, and before its first day the first', () => {
    expect([areaOn(thing, '2023-12-31').m2, areaOn(thing, '2024-01-01').m2, areaOn(thing, '2019-01-01').m2]).toEqual([
      1, 2.5, 1,
    ]);
    expect(zoneVersionAt(thing, '2030-01-01').n).toBe(2);
  });
});
