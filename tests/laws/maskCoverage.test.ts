import { beforeAll, describe, expect, it } from 'vitest';
import { type MaskRow, maskCases, maskRow } from '../files/coverageCases';
import type { Drawing } from '../files/drawnPhotos';

const mean = (of: readonly number[]): number => of.reduce((sum, one) => sum + one, 0) / of.length;
const checks = 20;

describe('A mask with 30 check dots on drawn photos of known coverage, one judgement in twenty a slip', () => {
  const rows: MaskRow[] = [];
  let told: MaskRow[] = [];
  const steady: MaskRow[] = [];
  const lookedAgain: MaskRow[] = [];
  beforeAll(async () => {
    for (const made of maskCases) rows.push(await maskRow(made, checks));
    told = rows.filter(({ runs }) => runs > 0);
    for (const made of maskCases.filter((_, i) => i % 5 === 0)) {
      steady.push(await maskRow(made, checks, { slips: 0 }));
      lookedAgain.push(await maskRow(made, checks, { again: true }));
    }
  }, 120_000);

  it('goes through every coverage, JPEG quality from 60 to 95, turns to 5 degrees, light across, noise and glare', () => {
    const ends = (of: (row: (typeof maskCases)[number]) => number | undefined) => {
      const all = maskCases.map((made) => of(made) ?? 0);
      return [Math.min(...all), Math.max(...all)];
    };
    expect(ends((made) => made.coverage)).toEqual([0.005, 0.9]);
    expect(ends((made) => made.quality)).toEqual([60, 95]);
    expect(ends((made) => made.turn)).toEqual([0, 5]);
    expect(ends((made) => made.light)).toEqual([0, 1.6]);
    expect(ends((made) => made.noise)).toEqual([1, 6]);
    expect(ends((made) => made.glare)).toEqual([0, 0.045]);
    for (const row of rows) expect(Math.abs(row.share - row.case.coverage)).toBeLessThan(0.005);
  });

  it('holds the truth in its 95 % interval in at least 90 of 100 checks over all cases, and in 80 of 100 in each', () => {
    expect(mean(told.map(({ holds }) => holds))).toBeGreaterThanOrEqual(0.9);
    for (const row of told) expect(row.holds, JSON.stringify(row.case)).toBeGreaterThanOrEqual(0.8);
  });

  it('holds it in the 90 % range that is scored with in at least 85 of 100', () => {
    expect(mean(told.map(({ scoredHolds }) => scoredHolds))).toBeGreaterThanOrEqual(0.85);
  });

  it('sees what the pixels took for the wrong thing: where the mask alone is off by more than 5 points, it holds as well', () => {
    const misled = told.filter(({ maskError }) => Math.abs(maskError) > 0.05);
    expect(misled.length).toBeGreaterThanOrEqual(5);
    expect(mean(misled.map(({ holds }) => holds))).toBeGreaterThanOrEqual(0.9);
    for (const { error, maskError } of misled.filter((row) => Math.abs(row.maskError) > 0.1)) {
      expect(error).toBeLessThan(Math.abs(maskError));
    }
  });

  it('stays within 8 points on the average of its checks, and never tells the whole range', () => {
    for (const row of told) {
      expect(row.error, JSON.stringify(row.case)).toBeLessThan(0.08);
      expect(row.width, JSON.stringify(row.case)).toBeLessThan(0.4);
    }
  });

  it('holds for a steady judge too, and comes nearer', () => {
    const told = steady.filter(({ runs }) => runs > 0);
    expect(mean(told.map(({ holds }) => holds))).toBeGreaterThanOrEqual(0.95);
    expect(mean(told.map(({ error }) => error))).toBeLessThan(
      mean(rows.filter(({ runs }) => runs > 0).map(({ error }) => error)),
    );
  });

  it('comes nearer, and still holds, where dots that contradict the mask are looked at again', () => {
    const told = lookedAgain.filter(({ runs }) => runs > 0);
    const same = rows.filter((row, i) => i % 5 === 0 && row.runs > 0);
    expect(mean(told.map(({ holds }) => holds))).toBeGreaterThanOrEqual(0.9);
    expect(mean(told.map(({ error }) => error))).toBeLessThan(0.8 * mean(same.map(({ error }) => error)));
  });

  it('refuses at most a fifth of the cases between 1 and 70 %, and says why', () => {
    const middle = rows.filter((row) => row.case.coverage >= 0.01 && row.case.coverage <= 0.7);
    const refused = middle.filter(({ runs }) => runs === 0);
    expect(middle.length).toBeGreaterThanOrEqual(40);
    expect(refused.length / middle.length).toBeLessThanOrEqual(0.2);
    for (const { refused: why } of refused) expect(why).toBe('coverage: green and sound too alike');
  });
});

describe('A drawn photo that cannot tell', () => {
  const drawing = { seed: 4, coverage: 0.2, pattern: 'ragged' as const, width: 480, noise: 2 };
  const why = async (more: Partial<Drawing>) =>
    (await maskRow({ name: 'refused', quality: 85, ...drawing, ...more }, 1)).refused;

  it('tells where it is lit as it should be', async () => {
    expect(await why({})).toBe('');
  });

  it('refuses in deep shade and in blown light: there is no spot to tap', async () => {
    expect(await why({ exposure: 0.03 })).toContain('coverage: too few spots tapped');
    expect(await why({ exposure: 12 })).toContain('coverage: too few spots tapped');
  });

  it('refuses where more than three tenths of the zone lie in deep shade, though the spots tapped were lit', async () => {
    expect(await why({ seed: 5, exposure: 0.05, light: 5 })).toContain('coverage: too dark or too bright');
  });

  it('refuses green that has the colour of the sound surface', async () => {
    expect(await why({ sound: [92, 82, 60], green: [88, 86, 60] })).toBe('coverage: green and sound too alike');
  });

  it('refuses a zone that is a spot on the photo', async () => {
    expect(await why({ width: 120 })).toContain('coverage: zone too small on the photo');
  });
});
