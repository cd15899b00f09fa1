import { describe, expect, it } from 'vitest';
import { checkDotsFor, isRefused, maskCoverage, type Outline } from '../../src/engine/photo';

const zone: Outline = [
  [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ],
];
const size = { width: 1000, height: 1000 };
const dots = (hits: number, of: number): string => 'y'.repeat(hits) + 'n'.repeat(of - hits);

/** Chance of each count from nought to n. */
const binomial = (n: number, p: number): number[] => {
  let ways = 1;
  return Array.from({ length: n + 1 }, (_, x) => {
    const chance = ways * p ** x * (1 - p) ** (n - x);
    ways = (ways * (n - x)) / (x + 1);
    return chance;
  });
};

/** Intervals of all counts there may be at one mask share, so that chances of other truths need not work them out anew. */
const intervalsAt = (share: number, n: number) => {
  const { inMask, outsideMask } = checkDotsFor(share, n);
  return Array.from({ length: inMask + 1 }, (_, x) =>
    Array.from({ length: outsideMask + 1 }, (_, y) => {
      const told = maskCoverage({ share }, dots(x, inMask), dots(y, outsideMask), zone, size);
      if (isRefused(told)) throw new Error('refused');
      return told;
    }),
  );
};

const shares = [0.005, 0.02, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98];
const right = [0.5, 0.7, 0.9, 0.98, 1];
const missed = [0, 0.01, 0.03, 0.1, 0.3];

describe.each([30, 60])('The interval of a mask and %d check dots, over all counts there may be', (n) => {
  it.each([0, 0.02, 0.05])(
    'holds the truth at least 94 times in 100, and what is scored with 86 times, however wrong the mask: slips %d',
    (slips) => {
      for (const share of shares) {
        const told = intervalsAt(share, n);
        for (const inside of right) {
          for (const outside of missed) {
            const truth = share * inside + (1 - share) * outside;
            const seen = (p: number): number => p * (1 - slips) + (1 - p) * slips;
            const a = binomial(told.length - 1, seen(inside));
            const b = binomial((told[0] as unknown[]).length - 1, seen(outside));
            let [holds, scored] = [0, 0];
            told.forEach((row, x) => {
              row.forEach(({ low, high, coverage }, y) => {
                const chance = (a[x] as number) * (b[y] as number);
                if (low <= truth && truth <= high) holds += chance;
                if (coverage.low <= truth && truth <= coverage.high) scored += chance;
              });
            });
            const which = `mask ${share}, right ${inside}, missed ${outside}`;
            expect(holds, which).toBeGreaterThan(0.94);
            expect(scored, which).toBeGreaterThan(0.86);
          }
        }
      }
    },
  );
});
