const rootTwoPi = Math.sqrt(2 * Math.PI);

/**
 * Two-sided tail of the standard normal: the chance of a |z| at least this large when nothing differs.
 * Power series for the body near 0, continued fraction (Laplace) further out; error under 1e-13 absolute, 1e-10 relative.
 */
export const twoSidedTail = (z: number): number => {
  const x = Math.abs(z);
  if (x === Number.POSITIVE_INFINITY) return 0;
  const density = Math.exp((-x * x) / 2) / rootTwoPi;
  if (x < 2.5) {
    let term = x;
    let sum = x;
    for (let k = 1; term > sum * 1e-17; k++) {
      term *= (x * x) / (2 * k + 1);
      sum += term;
    }
    return 1 - 2 * density * sum;
  }
  let fraction = x;
  for (let k = 120; k >= 1; k--) fraction = x + k / fraction;
  return (2 * density) / fraction;
};
