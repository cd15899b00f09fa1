import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../../src/engine/change';
import { type InventedVisit, invented, roundName } from './invented';

/**
 * Invented figures of the size a wet work by the water would show: nine zones, 17.8 m2, green rising about five points a year.
 * m2, then coverage in percent each May for six years.
 */
const stair: Readonly<Record<string, readonly [number, ...number[]]>> = {
  A: [1.6, 30, 40, 45, 55, 65, 70],
  B: [1.4, 3, 5, 5, 5, 8, 10],
  C: [2.3, 20, 25, 35, 40, 50, 55],
  D: [2.1, 5, 8, 10, 10, 15, 15],
  E: [2.6, 20, 25, 30, 40, 45, 50],
  F: [2.3, 5, 5, 8, 10, 12, 15],
  G: [0.7, 15, 20, 20, 25, 30, 30],
  H: [3.2, 35, 40, 50, 60, 65, 75],
  I: [1.6, 40, 45, 55, 60, 70, 75],
};

const record = (lastSurveyor: string) =>
  invented({
    zones: Object.fromEntries(Object.entries(stair).map(([letter, [m2]]) => [letter, { m2 }])),
    rounds: [0, 1, 2, 3, 4, 5].map((year) => ({
      date: `${2021 + year}-05-12`,
      surveyor: year === 5 ? lastSurveyor : 'surveyor/steward',
      saw: Object.fromEntries(
        Object.entries(stair).map(([letter, row]): [string, InventedVisit] => [
          letter,
          [{ cover: (row[year + 1] ?? 0) / 100 }],
        ]),
      ),
    })),
  });

const points = (m2: number): number => (m2 / 17.8) * 100;
const same = record('surveyor/steward');

describe('a work by the water', () => {
  test('one year on: 4.6 points more green, and nothing anybody can be sure of', () => {
    const t = thenAndNow(same, roundName(4), roundName(5));
    expect(points(t.sculpture.active.green.difference.value)).toBeCloseTo(4.6, 1);
    expect(t.sculpture.active.green.verdict).toBe('no sure change');
    expect(t.sculpture.index.verdict).toBe('no sure change');
    expect(t.findings.every((f) => f.verdict === 'no sure change')).toBe(true);
  });

  test('six years on: 26 points more, clearly', () => {
    const t = thenAndNow(same, roundName(0), roundName(5));
    expect(points(t.sculpture.active.green.difference.value)).toBeCloseTo(26.4, 1);
    expect(t.sculpture.active.green).toMatchObject({ verdict: 'worse', clearly: true, clearlyWorse: true });
    expect(t.sculpture.index).toMatchObject({ verdict: 'worse', clearly: true });
  });

  test('with another surveyor in the last year six years still show, but no longer clearly on the index', () => {
    const t = thenAndNow(record('surveyor/stand-in'), roundName(0), roundName(5));
    const before = thenAndNow(same, roundName(0), roundName(5));
    expect(t.sculpture.index.verdict).toBe('worse');
    expect(t.sculpture.index.z).toBeLessThan((before.sculpture.index.z ?? 0) * 0.75);
    expect(t.sculpture.index.clearly).toBe(false);
  });

  test('the spray band and the top arc carry the growth: there the square metres are', () => {
    const { contributions } = thenAndNow(same, roundName(0), roundName(5)).sculpture.active.green;
    expect(contributions.slice(0, 2).map(({ zone }) => zone)).toEqual(['zone/H', 'zone/C']);
    expect(contributions[0]?.m2).toBeCloseTo(3.2 * 0.4, 12);
    expect(contributions).toHaveLength(9);
  });
});
