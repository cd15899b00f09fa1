/** What the sums need of chance: seeded draws, a test on the signs of pairs, quantiles. Knows nothing of the trade. */
export { median } from './median';
export { noiseAt } from './noise';
export { type PairSigns, pairSigns } from './pairSigns';
export { fQuantile, incompleteBeta, logGamma, tQuantile } from './quantiles';
export { type Drawn, drawnFrom, seedOf, shuffle } from './seeded';
