import { describe, expect, it } from 'vitest';
import { rustGradeOf, rustGrades, rustPictures } from '../../src/engine/trade';

describe('ASTM D610-08(2012), table 1', () => {
  it.each([
    [0.01, 10],
    [0.0101, 9],
    [0.03, 9],
    [0.1, 8],
    [0.3, 7],
    [1.0, 6],
    [1.01, 5],
    [3, 5],
    [10, 4],
    [10.1, 3],
    [16, 3],
    [33, 2],
    [50, 1],
    [50.1, 0],
    [100, 0],
  ])('%d %% of the surface is grade %d', (percent, grade) => {
    expect(rustGradeOf(percent / 100).grade).toBe(grade);
  });

  it('leaves no gap between one grade and the next', () => {
    rustGrades.slice(1).forEach((row, i) => {
      expect(row.above).toBe(rustGrades[i]?.upTo);
    });
  });

  it('refuses a share that is none', () => {
    expect(() => rustGradeOf(1.2)).toThrow(/from 0 to 1/);
    expect(() => rustGradeOf(-0.1)).toThrow(/from 0 to 1/);
  });
});

describe('ISO 4628-3:2016, nominal values as a coatings reference page sets them beside ASTM D610', () => {
  it('holds the nominal percent of Ri 0 to 5', () => {
    expect(rustPictures.map((row) => row.share * 100)).toEqual([0, 0.05, 0.5, 1, 8, 40]);
    expect((rustPictures[5]?.shareTo ?? 0) * 100).toBe(50);
  });

  it('pairs each with the D610 grade its nominal value falls in, two of them with grade 6', () => {
    for (const row of rustPictures) expect(rustGradeOf(row.shareTo).grade).toBe(row.pairedWith);
    expect(rustPictures.filter((row) => row.pairedWith === 6)).toHaveLength(2);
  });
});
