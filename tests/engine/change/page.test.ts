import { describe, expect, test } from 'vitest';
import { clearlyWorseGreen, thenAndNow } from '../../../src/engine/change';
import { codes, type InventedVisit, invented, roundName, zoneName } from './invented';

/** Many zones, all alike but the first few. */
const page = (first: readonly (readonly [number, number])[], quiet: number) => {
  const pairs = [...first, ...Array.from({ length: quiet }, () => [0.2, 0.2] as const)];
  const letter = (i: number) => `Z${i}`;
  const saw = (side: 0 | 1): Record<string, InventedVisit> =>
    Object.fromEntries(pairs.map((pair, i) => [letter(i), [{ cover: pair[side] }]]));
  return thenAndNow(
    invented({
      zones: Object.fromEntries(pairs.map((_, i) => [letter(i), {}])),
      rounds: [
        { date: '2025-05-10', saw: saw(0) },
        { date: '2026-05-10', saw: saw(1) },
      ],
    }),
    roundName(0),
    roundName(1),
  );
};

describe('a page of many comparisons', () => {
  test('prints how many would look changed though nothing did: one in twenty', () => {
    const t = page([], 29);
    // 29 findings, 29 zones, the index and the active green; bare metal and scale have nothing to compare.
    expect(t.comparisons).toBe(60);
    expect(t.expectedByChance).toBeCloseTo(3, 10);
  });

  test('one change just over the line among sixty could be chance, and does not escalate', () => {
    const t = page([[0.2, 0.5]], 28);
    expect(t.findings[0]).toMatchObject({
      verdict: 'worse',
      clearly: false,
      aloneCouldBeChance: true,
      clearlyWorse: false,
    });
    expect(t.findings[0]?.reasons.at(-1)).toEqual({
      code: 'change: alone, could be chance',
      params: { comparisons: 60, expected: expect.closeTo(3, 10) },
    });
  });

  test('a clear one stands alone, and escalates', () => {
    const t = page([[0.1, 0.7]], 28);
    expect(t.findings[0]).toMatchObject({
      verdict: 'worse',
      clearly: true,
      aloneCouldBeChance: false,
      clearlyWorse: true,
    });
  });

  test('the same change in ten zones of sixty holds the others up', () => {
    const t = page(
      Array.from({ length: 10 }, () => [0.2, 0.5] as const),
      19,
    );
    expect(t.findings[0]).toMatchObject({ clearly: false, aloneCouldBeChance: false, clearlyWorse: true });
  });

  test('a verdict without change is never marked as chance', () => {
    const t = page([[0.2, 0.3]], 28);
    expect(t.findings[0]).toMatchObject({ verdict: 'no sure change', aloneCouldBeChance: false });
    expect(codes(t.findings[0]?.reasons ?? [])).toEqual([]);
  });
});

describe('green in the metal, clearly worse', () => {
  const worseIn = (finding: { kind?: string; origin?: 'dirt' | 'stain' | 'metal' }) =>
    clearlyWorseGreen(
      thenAndNow(
        invented({
          zones: { A: {}, B: {} },
          rounds: [
            { date: '2025-05-10', saw: { A: [{ ...finding, cover: 0.05 }], B: [{ cover: 0.2 }] } },
            { date: '2026-05-10', saw: { A: [{ ...finding, cover: 0.7 }], B: [{ cover: 0.2 }] } },
          ],
        }),
        roundName(0),
        roundName(1),
      ),
    );

  test('names the zone for the urgency rules', () => {
    expect([...worseIn({})]).toEqual([zoneName('A')]);
  });

  test('a stain from above, dirt and other kinds do not', () => {
    expect([...worseIn({ origin: 'stain' })]).toEqual([]);
    expect([...worseIn({ origin: 'dirt' })]).toEqual([]);
    expect([...worseIn({ kind: 'lichen' })]).toEqual([]);
  });
});
