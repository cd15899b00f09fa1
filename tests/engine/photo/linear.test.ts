import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';
import { expect, it } from 'vitest';
import { leastDirection, normalOf, solved, timesColumn } from '../../../src/engine/photo/linear';
import { type Seeded, seeded } from '../../files/seeded';

const rowsOf = (draw: Seeded, high: number, wide: number) =>
  Array.from({ length: high }, () => Array.from({ length: wide }, () => draw.below(1_000_001) / 500_000 - 1));

it('solves what ml-matrix solves, to 1e-9, over 300 drawn sets of 2 to 9 unknowns', () => {
  const draw = seeded(11);
  for (let i = 0; i < 300; i++) {
    const n = 2 + (i % 8);
    const rows = rowsOf(draw, n + 6, n);
    const right = rowsOf(draw, n + 6, 1).flat();
    const ours = solved(normalOf(rows), timesColumn(rows, right)) ?? [];
    const theirs = solve(new Matrix(rows), Matrix.columnVector(right)).getColumn(0);
    for (const [j, value] of ours.entries()) expect(value).toBeCloseTo(theirs[j] as number, 9);
  }
});

it('says so where the equations do not tell the unknowns apart', () => {
  expect(
    solved(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 2],
    ),
  ).toBeUndefined();
  expect(
    solved(
      [
        [0, 0],
        [0, 0],
      ],
      [0, 0],
    ),
  ).toBeUndefined();
});

it('finds the least direction ml-matrix finds, to 1e-9, over 300 drawn sets of nine', () => {
  const draw = seeded(12);
  for (let i = 0; i < 300; i++) {
    const square = normalOf(rowsOf(draw, 8 + (i % 20), 9));
    const ours = leastDirection(square);
    expect(Math.hypot(...ours)).toBeCloseTo(1, 12);
    const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(new Matrix(square), {
      assumeSymmetric: true,
    });
    const theirs = eigenvectorMatrix.getColumn(realEigenvalues.indexOf(Math.min(...realEigenvalues)));
    const along = ours.reduce((sum, value, j) => sum + value * (theirs[j] as number), 0);
    expect(Math.abs(along)).toBeCloseTo(1, 9);
  }
});
