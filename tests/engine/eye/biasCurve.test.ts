import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import { fromLogit, logit } from '../../../src/engine/condition';
import { type BiasCurve, biasCurve, likelyTrue, saidAt } from '../../../src/engine/eye';
import { checked, onLadder, seenBy } from './drawnEyes';

const curveOf = (eye: Parameters<typeof checked>[0], checks: number, seed: number): BiasCurve =>
  biasCurve(checked(eye, checks, seed).flatMap(({ patches }) => patches)) as BiasCurve;

describe('The curve of what an eye says', () => {
  it('finds the bias an eye was invented with, on the mean of many checks', () => {
    const lines = Array.from({ length: 80 }, (_, i) => curveOf({ sd: 0.3, intercept: 0.4, slope: 0.8 }, 2, i + 1).line);
    const mean = (of: (line: BiasCurve['line']) => number) => lines.reduce((sum, l) => sum + of(l), 0) / lines.length;
    expect(mean(({ intercept }) => intercept)).toBeCloseTo(0.4, 1);
    expect(mean(({ slope }) => slope)).toBeCloseTo(0.8, 1);
  });

  it('says that a bias is shown where there is one, and seldom where there is none', () => {
    const shown = (eye: Parameters<typeof checked>[0]) =>
      Array.from({ length: 200 }, (_, i) => curveOf(eye, 1, i + 1)).filter((curve) => curve.shown).length / 200;
    expect(shown({ sd: 0.25, intercept: 0.7 })).toBeGreaterThan(0.95);
    // The ladder's values do not stand in the middle of their bins, so that it is somewhat over the 5 % of the test itself.
    expect(shown({ sd: 0.3 })).toBeLessThan(0.12);
  });

  it('is not drawn through a few patches, nor through patches that are all alike', () => {
    const patches = checked({ sd: 0.3 }, 1, 1)[0]?.patches ?? [];
    expect(biasCurve(patches.slice(0, 5))).toBeUndefined();
    expect(biasCurve(patches.map(({ said }) => ({ truth: 0.2, said })))).toBeUndefined();
  });

  it('holds what the eye says on average within its 90 % range in about nine cases of ten', () => {
    let held = 0;
    for (let seed = 1; seed <= 300; seed++) {
      const { low, high } = saidAt(curveOf({ sd: 0.5, intercept: 0.3, slope: 0.9 }, 1, seed), 0.2);
      const said = fromLogit(0.3 + 0.9 * logit(0.2));
      if (low <= said && said <= high) held++;
    }
    expect(held / 300).toBeGreaterThan(0.83);
    expect(held / 300).toBeLessThan(0.97);
  });
});

describe('What is likely true where an eye said a coverage', () => {
  it('lies under what is said by an eye that sees too much, within a range that holds the truth nine times of ten', () => {
    const eye = { sd: 0.35, intercept: 0.6, slope: 0.95 };
    const curve = curveOf(eye, 4, 3);
    const drawn = drawnFrom(8);
    let held = 0;
    for (let i = 0; i < 1000; i++) {
      const truth = fromLogit(-3 + 2.8 * drawn.uniform());
      const { value, low, high } = likelyTrue(seenBy(eye, truth, drawn), eye.sd, curve);
      expect(low).toBeLessThanOrEqual(value);
      expect(high).toBeGreaterThanOrEqual(value);
      if (low <= truth && truth <= high) held++;
    }
    expect(held / 1000).toBeGreaterThan(0.85);
    expect(held / 1000).toBeLessThan(0.97);
    expect(likelyTrue(onLadder(0.2), eye.sd, curve).value).toBeLessThan(0.15);
  });

  it('stays at what was said where no bias is shown, or none was measured, and says so', () => {
    const bare = likelyTrue(onLadder(0.2), 0.3);
    expect(bare.value).toBeCloseTo(0.2, 12);
    expect(bare.reasons.map(({ code }) => code)).toEqual(['eye: no curve yet']);
    const curve = { ...curveOf({ sd: 0.3 }, 1, 2), shown: false };
    expect(likelyTrue(onLadder(0.2), 0.3, curve).reasons.map(({ code }) => code)).toEqual(['eye: bias not shown']);
  });

  it('does not turn a curve around that hardly rises', () => {
    const patches = (checked({ sd: 0.3 }, 1, 1)[0]?.patches ?? []).map(({ truth }) => ({ truth, said: onLadder(0.2) }));
    const curve = biasCurve(patches) as BiasCurve;
    const { value, low, high, reasons } = likelyTrue(onLadder(0.5), 0.3, curve);
    expect([value, low, high].every(Number.isFinite)).toBe(true);
    expect(reasons.map(({ code }) => code)).toEqual(['eye: curve too flat']);
  });
});
