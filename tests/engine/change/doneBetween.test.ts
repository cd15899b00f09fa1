import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../../src/engine/change';
import { codes, type InventedRound, invented, roundName } from './invented';

const treated = (
  treatments: readonly { type: string; date: string; zones?: readonly string[] }[],
  more: Partial<InventedRound> = {},
) =>
  thenAndNow(
    invented({
      zones: { A: {}, B: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.3 }], B: [{ cover: 0.3 }] }, ...more },
        { date: '2026-05-12', saw: { A: [{ cover: 0.05 }], B: [{ cover: 0.3 }] }, ...more },
      ],
      treatments,
    }),
    roundName(0),
    roundName(1),
  );

describe('what was done between stands beside the verdict', () => {
  test('better, and waxed in between: both are told, at the zone it touched', () => {
    const t = treated([{ type: 'wax', date: '2025-05-22', zones: ['A'] }]);
    expect(t.findings[0]).toMatchObject({ verdict: 'better' });
    expect(t.findings[0]?.between).toEqual([
      { treatment: 'treatment/t0', type: 'wax', date: '2025-05-22', sure: true, breaksSeries: false },
    ]);
    expect(codes(t.findings[0]?.reasons ?? [])).toContain('change: done between');
    expect(t.findings[1]?.between).toEqual([]);
    expect(t.between).toHaveLength(1);
  });

  test('a treatment that names no zone touches all', () => {
    const t = treated([{ type: 'wash', date: '2025-06-01' }]);
    expect(t.zones.map((z) => z.between.length)).toEqual([1, 1]);
  });

  test.each([
    ['2025-05-09', false, 'the day before the earlier round'],
    ['2025-05-10', true, 'the day of the earlier round: it looked before the wash'],
    ['2025-05-11', true, 'the day after'],
    ['2026-05-11', true, 'the day before the later round'],
    ['2026-05-12', false, 'the day of the later round: it looked before the wash'],
  ])('dated %s it is between: %s (%s)', (date, is) => {
    expect(treated([{ type: 'wash', date }]).between).toHaveLength(is ? 1 : 0);
  });

  test('rounds made after the wash look after the work of their day', () => {
    expect(treated([{ type: 'wash', date: '2025-05-10' }], { washed: 'after wash' }).between).toHaveLength(0);
    expect(treated([{ type: 'wash', date: '2026-05-12' }], { washed: 'after wash' }).between).toHaveLength(1);
  });

  test.each([
    ['2025', false],
    ['2025-05', false],
    ['2025-06', true],
    ['before 2026', false],
    ['about 2019', undefined],
    ['2024', undefined],
    ['some time', false],
  ])('a treatment dated "%s" lies between for sure: %s (undefined: not at all)', (date, sure) => {
    const [first] = treated([{ type: 'wax', date }]).between;
    expect(first?.sure).toBe(sure);
  });

  test('one that only may lie between is told as perhaps', () => {
    const t = treated([{ type: 'wax', date: '2025' }]);
    expect(codes(t.findings[0]?.reasons ?? [])).toContain('change: perhaps done between');
  });

  test.each(['strip', 'cleaning by media', 'coating removed', 'local colour', 'repatination', 'cause removed'])(
    'across "%s" the verdict stands, and says that the series is broken',
    (type) => {
      const t = treated([{ type, date: '2025-09-04' }]);
      expect(t.findings[0]).toMatchObject({ verdict: 'better', between: [{ breaksSeries: true }] });
      expect(codes(t.findings[0]?.reasons ?? [])).toContain('change: series broken');
    },
  );

  test('a break that only may lie between is told as perhaps', () => {
    const t = treated([{ type: 'strip', date: '2025' }]);
    expect(codes(t.sculpture.index.reasons)).toContain('change: series perhaps broken');
  });

  test('turned around, the same work lies between', () => {
    const record = invented({
      zones: { A: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.3 }] } },
        { date: '2026-05-12', saw: { A: [{ cover: 0.05 }] } },
      ],
      treatments: [{ type: 'wax', date: '2025-06-01' }],
    });
    expect(thenAndNow(record, roundName(1), roundName(0)).between).toHaveLength(1);
  });
});
