import { describe, expect, it } from 'vitest';
import { tracedRows } from '../files/coverageCases';

describe('Tracing on drawn photos of known coverage, corners off by half a percent of the width', () => {
  const rows = tracedRows(6, 10);

  it.each(rows)('comes within 2 points of $share, every time', ({ worst, runs }) => {
    expect(runs).toBe(60);
    expect(worst).toBeLessThan(0.02);
    expect(worst).toBeGreaterThan(0);
  });

  it.each(rows)('holds $share in its 95 % interval, and in the range it is scored with', ({ holds, scoredHolds }) => {
    expect(holds).toBeGreaterThanOrEqual(0.95);
    expect(scoredHolds).toBeGreaterThanOrEqual(0.9);
  });
});
