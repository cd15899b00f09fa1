import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Interval, turnbull, weibull } from '../../src/engine/life';

/**
 * Breast cosmesis, months to retraction: Finkelstein & Wolfe 1985, Biometrics 41:933-945; Klein & Moeschberger, Survival Analysis,
 * 1997; read from the data set `bcdeter` of the R package KMsurv 0.1-5. The answers were worked out with independent reference
 * software: R 4.2.2, survival 3.5-3 (survreg, type interval2), npsurv 0.5-0; profile likelihoods in R from the likelihood itself.
 * The masses of the first group agree with those printed in the literature.
 */
const group = (name: string): Interval[] =>
  readFileSync(join(import.meta.dirname, '../files/cosmesis.csv'), 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => line.split(','))
    .filter(([, , of]) => of === name)
    .map(([lower, upper]) => ({
      lower: Number(lower),
      upper: upper === '' ? Number.POSITIVE_INFINITY : Number(upper),
    }));

const published = [
  {
    name: '1',
    n: 46,
    masses: [
      [4, 5, 0.046347],
      [6, 7, 0.033363],
      [7, 8, 0.088667],
      [11, 12, 0.070753],
      [24, 25, 0.092646],
      [33, 34, 0.081786],
      [38, 40, 0.12088],
      [46, 48, 0.465558],
    ],
    turnbullLogLikelihood: -58.06002195,
    shape: 1.120410137,
    scale: 57.52453329,
    median: 41.4748672,
    logLikelihood: -64.59213928,
    shapeLimits: [0.76795, 1.55728],
    medianLimits: [30.5921, 61.6564],
  },
  {
    name: '2',
    n: 49,
    masses: [
      [4, 5, 0.042419],
      [5, 8, 0.042419],
      [11, 12, 0.067331],
      [16, 17, 0.14527],
      [18, 19, 0.113781],
      [19, 20, 0.128805],
      [24, 25, 0.130246],
      [34, 34, 0.100651],
      [35, 36, 0.121475],
      [48, 48, 0.107602],
    ],
    turnbullLogLikelihood: -67.08766172,
    shape: 2.144986764,
    scale: 27.92517898,
    median: 23.53901378,
    logLikelihood: -81.60920295,
    shapeLimits: [1.69401, 2.65518],
    medianLimits: [20.3198, 26.9925],
  },
] as const;

const relative = (found: number, known: number): number => Math.abs(found / known - 1);

describe.each(published)('Group $name of the cosmesis data', (known) => {
  const intervals = group(known.name);
  const steps = turnbull(intervals);
  const fit = weibull(intervals);
  if (!fit.ok) throw new Error(fit.reason.code);

  it('has the rows it is published with', () => {
    expect(intervals).toHaveLength(known.n);
  });

  it("gives Turnbull's masses to 1e-5, where the literature has them", () => {
    expect(steps.masses.map(({ left, right }) => [left, right])).toEqual(
      known.masses.map(([left, right]) => [left, right]),
    );
    steps.masses.forEach(({ mass }, i) => {
      expect(Math.abs(mass - (known.masses[i]?.[2] ?? Number.NaN))).toBeLessThan(1e-5);
    });
    expect(steps.logLikelihood).toBeCloseTo(known.turnbullLogLikelihood, 7);
  });

  it('gives shape, scale and median of the Weibull fit to 1e-5 of their value', () => {
    expect(relative(fit.shape.value, known.shape)).toBeLessThan(1e-5);
    expect(relative(fit.scale.value, known.scale)).toBeLessThan(1e-5);
    expect(relative(fit.median.value, known.median)).toBeLessThan(1e-5);
    expect(fit.logLikelihood).toBeCloseTo(known.logLikelihood, 6);
  });

  it('gives the 90 % profile-likelihood limits to 1e-3', () => {
    expect(fit.shape.low).toBeCloseTo(known.shapeLimits[0], 3);
    expect(fit.shape.high).toBeCloseTo(known.shapeLimits[1], 3);
    expect(fit.median.low).toBeCloseTo(known.medianLimits[0], 3);
    expect(fit.median.high).toBeCloseTo(known.medianLimits[1], 3);
  });
});

/** Worked out here in R 4.2.2 with survival 3.5-3 (survreg, type interval2), for few and far-apart data. */
it.each([
  ['two exact times', [4, 5], [4, 5], 10.75252798782, 4.72588629854, -1.43229266526],
  [
    'one end and one still lasting',
    [1, 2.5],
    [2, Number.POSITIVE_INFINITY],
    2.55187522932,
    2.78506930582,
    -2.0372364238,
  ],
  ['ends a million apart', [1, 1e6], [2, 2e6], 0.173671418009, 43040.33965769218, -7.421418113884],
] as const)('%s: as the R package survival has it', (_, lowers, uppers, shape, scale, logLikelihood) => {
  const fit = weibull(lowers.map((lower, i) => ({ lower, upper: uppers[i] as number })));
  if (!fit.ok) throw new Error(fit.reason.code);
  expect(relative(fit.shape.value, shape)).toBeLessThan(1e-5);
  expect(relative(fit.scale.value, scale)).toBeLessThan(1e-5);
  expect(fit.logLikelihood).toBeCloseTo(logLikelihood, 8);
});
