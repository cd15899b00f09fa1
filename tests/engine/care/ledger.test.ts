import { describe, expect, it } from 'vitest';
import { metalLedger } from '../../../src/engine/care';
import { zoneName } from '../change/invented';
import { tended } from '../hold/garden';

const strip = (date: string, zones?: readonly string[]) => ({ type: 'strip', date, ...(zones ? { zones } : {}) });
const A = zoneName('A');
const B = zoneName('B');

describe('The ledger of metal taken away', () => {
  it('is empty where only wax and water were used', () => {
    const ledger = metalLedger(
      tended({
        treatments: [
          { type: 'wax', date: '2024-05-20' },
          { type: 'wash', date: '2024' },
        ],
      }),
    );
    expect(ledger.lines).toEqual([]);
    expect(ledger.most).toBe(0);
  });

  it('counts zone by zone, a strip of the whole work in each, and says which strip the next would be', () => {
    const record = tended({
      zones: { A: { m2: 2 }, B: { m2: 1 } },
      treatments: [
        strip('2023-09-04'),
        strip('1998', ['A']),
        { type: 'cleaning by media', date: '2010-06', zones: ['B'] },
      ],
    });
    const ledger = metalLedger(record);
    expect(ledger.lines.map(({ treatment }) => treatment.body.date)).toEqual(['1998', '2010-06', '2023-09-04']);
    expect(ledger.ofZones.map(({ zone, times }) => [zone.thing, times])).toEqual([
      [A, 2],
      [B, 2],
    ]);
    expect(ledger.most).toBe(2);
  });

  it('gives the square metres said, or those of the zones with their range', () => {
    const record = tended({
      zones: { A: { m2: 2 }, B: { m2: 1 } },
      treatments: [strip('2023-09-04', ['A']), strip('2024-01-01')],
    });
    const [first, second] = metalLedger(record).lines;
    expect(first?.m2).toMatchObject({ value: 2 });
    expect(first?.m2?.low).toBeLessThan(2);
    expect(first?.m2?.reasons.map(({ code }) => code)).toEqual(['care: area of the zones']);
    expect(second?.m2?.value).toBe(3);
    const said = {
      ...record,
      treatments: record.treatments.map((t) => ({ ...t, body: { ...t.body, takenAway: 0.4 } })),
    };
    expect(metalLedger(said).lines[0]?.m2).toMatchObject({ value: 0.4, low: 0.4, high: 0.4 });
    expect(metalLedger(said).lines[0]?.m2?.reasons.map(({ code }) => code)).toEqual(['care: area said']);
  });

  it('counts the work where no zones were drawn yet', () => {
    const ledger = metalLedger(tended({ zones: {}, treatments: [strip('1998'), strip('2011')] }));
    expect(ledger.most).toBe(2);
    // Nought square metres would be a figure nobody measured.
    expect(ledger.lines.map(({ m2 }) => m2)).toEqual([null, null]);
  });

  it('lists a coating taken off, but does not count it as metal', () => {
    const ledger = metalLedger(tended({ treatments: [{ type: 'coating removed', date: '2015' }] }));
    expect(ledger.lines.map(({ takes }) => takes)).toEqual(['coating']);
    expect(ledger.most).toBe(0);
  });

  it('counts any other work of which metal taken away is written down', () => {
    const record = tended({ treatments: [{ type: 'repair', date: '2015' }] });
    const filed = {
      ...record,
      treatments: record.treatments.map((t) => ({ ...t, body: { ...t.body, takenAway: 0.01 } })),
    };
    expect(metalLedger(filed).most).toBe(1);
  });

  it('does not forget what was stripped before a zone was split', () => {
    const record = tended({
      zones: {
        A: {
          m2: 2,
          split: { on: '2024-01-01', into: [zoneName('C'), zoneName('D')].map((zone) => ({ zone, share: 0.5 })) },
        },
        C: { m2: 1, since: '2024-01-01' },
        D: { m2: 1, since: '2024-01-01' },
      },
      treatments: [strip('2020-01-01', ['A'])],
    });
    expect(metalLedger(record).ofZones.map(({ zone, times }) => [zone.thing, times])).toEqual([
      [zoneName('C'), 1],
      [zoneName('D'), 1],
    ]);
  });
});
