/** Numbers row by row. */
export type Rows = readonly (readonly number[])[];

/** Sums of products of columns: rows transposed times rows. */
export const normalOf = (rows: Rows): number[][] => {
  const n = rows[0]?.length ?? 0;
  return Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) => rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), 0)),
  );
};

/** Rows transposed times a column. */
export const timesColumn = (rows: Rows, column: readonly number[]): number[] =>
  (rows[0] ?? []).map((_, j) => rows.reduce((sum, row, i) => sum + (row[j] ?? 0) * (column[i] ?? 0), 0));

/**
 * Solves as many equations as unknowns by elimination, the largest number first (partial pivoting; Golub and Van Loan, Matrix
 * Computations, 3.4, from memory). Undefined where they do not tell the unknowns apart. For the few unknowns of a map between two
 * pictures; held against a library in the tests.
 */
export const solved = (square: Rows, right: readonly number[]): number[] | undefined => {
  const n = square.length;
  const rows = square.map((row, i) => [...row, right[i] ?? 0]);
  const at = (i: number, j: number) => rows[i]?.[j] ?? 0;
  const largest = Math.max(...square.flat().map(Math.abs));
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(at(i, k)) > Math.abs(at(pivot, k))) pivot = i;
    if (!(Math.abs(at(pivot, k)) > largest * Number.EPSILON)) return undefined;
    const [low, high] = [rows[k] as number[], rows[pivot] as number[]];
    [rows[k], rows[pivot]] = [high, low];
    for (let i = k + 1; i < n; i++) {
      const by = at(i, k) / at(k, k);
      for (let j = k; j <= n; j++) (rows[i] as number[])[j] = at(i, j) - by * at(k, j);
    }
  }
  const found = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    const rest = found.reduce((sum, value, j) => (j > i ? sum - at(i, j) * value : sum), at(i, n));
    found[i] = rest / at(i, i);
  }
  return found;
};

/**
 * The direction of length 1 a symmetric matrix shrinks most: the eigenvector of its least eigenvalue, by turns in planes until nothing
 * is left beside the diagonal (Jacobi; Golub and Van Loan, 8.5, from memory).
 */
export const leastDirection = (symmetric: Rows): number[] => {
  const n = symmetric.length;
  const a = symmetric.map((row) => [...row]);
  const turned = symmetric.map((_, i) => symmetric.map((_, j) => (i === j ? 1 : 0)));
  const whole = Math.hypot(...a.flat());
  for (let sweep = 0; sweep < mostSweeps && besideDiagonal(a) > whole * 1e-18; sweep++) {
    for (let p = 0; p < n; p++) for (let q = p + 1; q < n; q++) turn(a, turned, p, q);
  }
  const values = a.map((row, i) => row[i] ?? 0);
  const least = values.indexOf(Math.min(...values));
  return turned.map((row) => row[least] ?? 0);
};

const mostSweeps = 60;

const besideDiagonal = (a: Rows): number => Math.hypot(...a.flatMap((row, i) => row.filter((_, j) => i !== j)));

/** Turns the plane of p and q so that nothing is left where they cross. */
const turn = (a: number[][], turned: number[][], p: number, q: number): void => {
  const cross = a[p]?.[q] ?? 0;
  if (cross === 0) return;
  const theta = ((a[q]?.[q] ?? 0) - (a[p]?.[p] ?? 0)) / (2 * cross);
  const tan = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
  const cos = 1 / Math.hypot(tan, 1);
  const sin = tan * cos;
  const columns = (rows: number[][]) => {
    for (const row of rows) {
      const [x, y] = [row[p] ?? 0, row[q] ?? 0];
      row[p] = cos * x - sin * y;
      row[q] = sin * x + cos * y;
    }
  };
  columns(a);
  columns(turned);
  const [up, down] = [a[p] as number[], a[q] as number[]];
  for (let j = 0; j < up.length; j++) {
    const [x, y] = [up[j] ?? 0, down[j] ?? 0];
    up[j] = cos * x - sin * y;
    down[j] = sin * x + cos * y;
  }
};
