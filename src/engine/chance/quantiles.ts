/** Logarithm of the gamma function for x > 0; Lanczos, g = 7, nine terms; relative error under 1e-13. */
export const logGamma = (x: number): number => {
  const terms = [
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
  ];
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const at = x - 1;
  const t = at + 7.5;
  const sum = terms.reduce((all, term, i) => (i === 0 ? term : all + term / (at + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (at + 0.5) * Math.log(t) - t + Math.log(sum);
};

/** Continued fraction of the incomplete beta function (Lentz). */
const betaFraction = (x: number, a: number, b: number): number => {
  const tiny = 1e-300;
  const away = (v: number): number => (Math.abs(v) < tiny ? tiny : v);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m <= 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return h;
};

/** Regularised incomplete beta function I_x(a, b), 0 to 1, for a, b > 0. */
export const incompleteBeta = (x: number, a: number, b: number): number => {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(x, a, b)) / a : 1 - (front * betaFraction(1 - x, b, a)) / b;
};

/** The point of (0, 1) where a rising function reaches p. */
const whereReaches = (rising: (x: number) => number, p: number): number => {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 200 && high - low > 1e-16; i++) {
    const middle = (low + high) / 2;
    if (rising(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Quantile of the F distribution; p in (0, 1), degrees of freedom > 0. */
export const fQuantile = (p: number, above: number, below: number): number => {
  const x = whereReaches((at) => incompleteBeta(at, above / 2, below / 2), p);
  return (below * x) / (above * (1 - x));
};

/** Quantile of Student's t; p in (0, 1), degrees of freedom > 0. */
export const tQuantile = (p: number, degrees: number): number => {
  if (p === 0.5) return 0;
  if (p < 0.5) return -tQuantile(1 - p, degrees);
  return Math.sqrt(fQuantile(2 * p - 1, 1, degrees));
};
