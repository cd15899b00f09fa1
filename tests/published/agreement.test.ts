import { describe, expect, it } from 'vitest';
import { cohensKappa, icc, weightedKappa } from '../../src/engine/agreement';

/** Recomputed from the tables printed in the sources; the original pages were not seen. */
describe('Cohen 1960 and 1968 (recomputed)', () => {
  const table = [
    [0.44, 0.07, 0.09],
    [0.05, 0.2, 0.05],
    [0.01, 0.03, 0.06],
  ].map((row) => row.map((share) => Math.round(share * 200)));
  const apart = [
    [0, 1, 3],
    [1, 0, 6],
    [3, 6, 0],
  ];

  it('kappa 0.492 = 29/59 from 0.70 observed and 0.41 by chance', () => {
    const found = cohensKappa(table);
    expect(found.observed).toBeCloseTo(0.7, 12);
    expect(found.byChance).toBeCloseTo(0.41, 12);
    expect(found.kappa?.value).toBeCloseTo(29 / 59, 12);
  });

  it('weighted kappa 0.348 = 8/23', () => {
    const found = weightedKappa(table, (i, j) => apart[i]?.[j] ?? 0);
    expect(found.kappa?.value).toBeCloseTo(8 / 23, 12);
    // Weighted disagreement 0.90 observed and 1.38 by chance, of 6 at most.
    expect(6 * (1 - found.observed)).toBeCloseTo(0.9, 12);
    expect(6 * (1 - found.byChance)).toBeCloseTo(1.38, 12);
  });

  it('standard errors by Fleiss, Cohen and Everitt 1969 at N 200 (computed)', () => {
    expect(cohensKappa(table).se).toBeCloseTo(0.051002, 6);
    expect(weightedKappa(table, (i, j) => apart[i]?.[j] ?? 0).se).toBeCloseTo(0.075504, 6);
  });
});

it.each([
  [[20, 5], [10, 15], 0.4],
  [[45, 15], [25, 15], 0.1304],
  [[25, 35], [5, 35], 0.2593],
])('two by two %j %j: kappa %f (teaching tables, recomputed)', (first, second, kappa) => {
  expect(cohensKappa([first, second]).kappa?.value).toBeCloseTo(kappa, 4);
});

describe('Shrout and Fleiss 1979, six targets and four judges', () => {
  const ratings = [
    [9, 2, 5, 8],
    [6, 1, 3, 2],
    [8, 4, 6, 8],
    [7, 1, 2, 6],
    [10, 5, 6, 9],
    [6, 2, 4, 7],
  ];

  it('mean squares 11.24, 6.26, 32.49, 1.02 (recomputed)', () => {
    const { meanSquares } = icc(ratings);
    expect(meanSquares?.between).toBeCloseTo(11.241667, 6);
    expect(meanSquares?.within).toBeCloseTo(6.263889, 6);
    expect(meanSquares?.judges).toBeCloseTo(32.486111, 6);
    expect(meanSquares?.error).toBeCloseTo(1.019444, 6);
  });

  it.each([
    ['(1,1)', 0.17, 0.1657417684],
    ['(2,1)', 0.29, 0.2897637795],
    ['(3,1)', 0.71, 0.7148407148],
    ['(1,k)', 0.44, 0.4427971337],
    ['(2,k)', 0.62, 0.6200505476],
    ['(3,k)', 0.91, 0.9093155424],
  ] as const)('ICC%s is %f as published, %f in full (recomputed)', (form, published, full) => {
    const value = icc(ratings).forms?.[form].value ?? Number.NaN;
    expect(Math.round(value * 100) / 100).toBe(published);
    expect(value).toBeCloseTo(full, 9);
  });

  // The 95 % limits a widely used R package prints in its help for this very table: FROM MEMORY.
  it.each([
    ['(1,1)', -0.133, 0.72],
    ['(2,1)', 0.019, 0.76],
    ['(3,1)', 0.342, 0.95],
    ['(1,k)', -0.884, 0.91],
    ['(2,k)', 0.071, 0.93],
    ['(3,k)', 0.676, 0.99],
  ] as const)('ICC%s has 95 %% limits %f and %f (from memory)', (form, low, high) => {
    const found = icc(ratings, 0.95).forms?.[form];
    expect(found?.low).toBeCloseTo(low, 2);
    expect(found?.high).toBeCloseTo(high, 2);
  });
});

describe('What cannot be told', () => {
  it.each([
    [
      'nobody judged anything',
      [
        [0, 0],
        [0, 0],
      ],
    ],
    [
      'one case',
      [
        [1, 0],
        [0, 0],
      ],
    ],
    [
      'both gave one answer throughout',
      [
        [9, 0],
        [0, 0],
      ],
    ],
  ])('kappa is null with a reason: %s', (_, table) => {
    const found = cohensKappa(table);
    expect(found.kappa).toBeNull();
    expect(found.reasons).toHaveLength(1);
  });

  it('ICC is null with a reason for too few targets and where all ratings are the same', () => {
    for (const ratings of [
      [],
      [[1, 2]],
      [
        [1, 2],
        [2, 3],
      ],
      [
        [3, 3],
        [3, 3],
        [3, 3],
      ],
    ]) {
      expect(icc(ratings).forms).toBeNull();
      expect(icc(ratings).reasons).toHaveLength(1);
    }
  });

  it('ICC of judges who differ by the same shift throughout has no NaN', () => {
    const found = icc([
      [1, 2],
      [4, 5],
      [9, 10],
    ]).forms;
    for (const { value, low, high } of Object.values(found ?? {})) {
      expect([value, low, high].every(Number.isFinite)).toBe(true);
    }
    expect(found?.['(3,1)'].value).toBe(1);
    expect(found?.['(2,1)'].value).toBeLessThan(1);
  });
});
