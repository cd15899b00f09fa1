import * as financial from 'financial';
import { describe, expect, it } from 'vitest';
import {
  capitalRecovery,
  compoundAmount,
  equivalentAnnualCost,
  netPresentValue,
  presentWorth,
  realRate,
  seriesCompoundAmount,
  seriesPresentWorth,
  sinkingFund,
} from '../../src/engine/money';

describe('Compound-interest factors, as printed in tables of engineering economics', () => {
  it.each([
    [0.05, 20, 0.080243, 0.030243, 12.46221, 33.065954, 0.376889],
    [0.06, 2, 0.545437, 0.485437, 1.833393, 2.06, 0.889996],
    [0.06, 3, 0.37411, 0.31411, 2.673012, 3.1836, 0.839619],
    [0.08, 10, 0.149029, 0.069029, 6.710081, 14.486562, 0.463193],
    [0.1, 2, 0.57619, 0.47619, 1.735537, 2.1, 0.826446],
    [0.1, 3, 0.402115, 0.302115, 2.486852, 3.31, 0.751315],
    [0.1, 5, 0.263797, 0.163797, 3.790787, 6.1051, 0.620921],
  ])('%d over %d years: A/P, A/F, P/A, F/A and P/F to six decimals', (i, n, ap, af, pa, fa, pf) => {
    expect(capitalRecovery(i, n)).toBeCloseTo(ap, 6);
    expect(sinkingFund(i, n)).toBeCloseTo(af, 6);
    expect(seriesPresentWorth(i, n)).toBeCloseTo(pa, 6);
    expect(seriesCompoundAmount(i, n)).toBeCloseTo(fa, 6);
    expect(presentWorth(i, n)).toBeCloseTo(pf, 6);
  });

  it('agree with a finance library written by others, at each rate and over each span', () => {
    for (const i of [-0.02, 0, 1e-9, 0.02, 0.03, 0.04, 0.1]) {
      for (const n of [1, 2, 7, 20, 50]) {
        expect(capitalRecovery(i, n)).toBeCloseTo(financial.pmt(i, n, -1), i === 1e-9 ? 6 : 10);
        expect(sinkingFund(i, n)).toBeCloseTo(financial.pmt(i, n, 0, -1), i === 1e-9 ? 6 : 10);
        expect(seriesPresentWorth(i, n) / financial.pv(i, n, -1)).toBeCloseTo(1, i === 1e-9 ? 5 : 10);
        expect(seriesCompoundAmount(i, n) / financial.fv(i, n, -1, 0)).toBeCloseTo(1, i === 1e-9 ? 5 : 10);
        expect(compoundAmount(i, n) / financial.fv(i, n, 0, -1)).toBeCloseTo(1, 10);
      }
    }
  });

  it('hold to the identity A/P = A/F + i, and each is one over its fellow', () => {
    for (const i of [0.005, 0.03, 0.08, 0.25]) {
      for (const n of [1, 5, 20, 60]) {
        expect(capitalRecovery(i, n)).toBeCloseTo(sinkingFund(i, n) + i, 12);
        expect(compoundAmount(i, n) * presentWorth(i, n)).toBeCloseTo(1, 12);
      }
    }
  });

  it('a real rate is what interest leaves over the rise of prices', () => {
    expect(realRate(0.0815, 0.05)).toBeCloseTo(0.03, 12);
    expect(realRate(0.05, 0.05)).toBe(0);
  });
});

describe('Worked examples of textbooks', () => {
  it('two machines of unlike lives, chapter 10 of a finance text: 67.62 against 64.30 a year, the longer-lived wins', () => {
    const a = [100, 10, 10];
    const b = [140, 8, 8, 8];
    expect(netPresentValue(a, 0.1)).toBeCloseTo(117.36, 2);
    expect(netPresentValue(b, 0.1)).toBeCloseTo(159.89, 2);
    expect(equivalentAnnualCost(a, 0.1, 2)).toBeCloseTo(67.619048, 6);
    expect(equivalentAnnualCost(b, 0.1, 3)).toBeCloseTo(64.296073, 6);
  });

  it('the same in Brealey and Myers, recomputed: 10.61 against 11.45', () => {
    expect(netPresentValue([15, 5, 5, 5], 0.06)).toBeCloseTo(28.37, 2);
    expect(netPresentValue([10, 6, 6], 0.06)).toBeCloseTo(21, 2);
    expect(equivalentAnnualCost([15, 5, 5, 5], 0.06, 3)).toBeCloseTo(10.611647, 6);
    expect(equivalentAnnualCost([10, 6, 6], 0.06, 2)).toBeCloseTo(11.454369, 6);
  });

  it('a polisher of 10 000 with 20 000 a year for five years at 10 %: 22 637.97 a year', () => {
    const paid = [10_000, 20_000, 20_000, 20_000, 20_000, 20_000];
    expect(equivalentAnnualCost(paid, 0.1, 5)).toBeCloseTo(22_637.97, 2);
    expect(financial.pmt(0.1, 5, -financial.npv(0.1, paid))).toBeCloseTo(22_637.97, 2);
  });
});
