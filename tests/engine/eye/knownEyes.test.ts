import { describe, expect, it } from 'vitest';
import { type EyeKnown, knownEyes, type Rerated } from '../../../src/engine/eye';
import { asked, checked, onLadder } from './drawnEyes';

const a = 'surveyor/a';
const only = (eyes: Readonly<Record<string, EyeKnown>>): EyeKnown => eyes[a] as EyeKnown;
const rootMean = (rows: readonly number[]): number => Math.sqrt(rows.reduce((sum, x) => sum + x * x, 0) / rows.length);
const over = (times: number, of: (seed: number) => EyeKnown): EyeKnown[] =>
  Array.from({ length: times }, (_, i) => of(i + 1));

describe('The spread of an eye, from eyes invented with a known one', () => {
  it.each([0.3, 0.4, 0.5, 0.7])('is found from zones asked again to 15 percent (sd %f)', (sd) => {
    const eyes = over(60, (seed) => only(knownEyes(asked({ sd }, 60, seed), [])));
    const seen = rootMean(eyes.map(({ seen }) => seen ?? 0));
    expect(Math.abs(seen / sd - 1)).toBeLessThan(0.15);
  });

  it.each([0.2, 0.3, 0.5, 0.7])('is found from eye checks to 5 percent, whatever the bias (sd %f)', (sd) => {
    const eyes = over(60, (seed) => only(knownEyes([], checked({ sd, intercept: 0.4, slope: 0.85 }, 5, seed))));
    const seen = rootMean(eyes.map(({ seen }) => seen ?? 0));
    expect(Math.abs(seen / sd - 1)).toBeLessThan(0.05);
  });

  it('is halved from the variance of a difference: taken whole it would come out 1.4 times as wide', () => {
    // Both judgements a logit step apart in every pair, far from the ladder's ends.
    const pair: Rerated = {
      surveyor: a,
      ratings: [{ kind: 'green film', origin: 'metal', first: exact(0.4), coverage: exact(0.5986876601124521) }],
    };
    const { seen } = only(knownEyes(Array(20).fill(pair), []));
    // Difference 0.8055 on the logit; its half square 0.3244, less bin (0.15 / 0.25)^2 / 12 and (0.005 / 0.25)^2 at the step of 50 %.
    expect(seen).toBeCloseTo(Math.sqrt(0.8054652 ** 2 / 2 - 0.6 ** 2 / 12 - 0.0004), 3);
  });

  it('is 0 where every pair agrees, for the bin alone may hide as much, and is never used as steadier than 0.20', () => {
    const same: Rerated = {
      surveyor: a,
      ratings: [{ kind: 'green film', origin: 'metal', first: onLadder(0.2), coverage: onLadder(0.2) }],
    };
    const eye = only(knownEyes(Array(400).fill(same), []));
    expect(eye.seen).toBe(0);
    expect(eye.own).toBe(0.2);
    expect(eye.reasons.map(({ code }) => code)).toContain('eye: not held steadier than');
  });
});

const exact = (value: number) => ({ value, low: 0.35, high: 0.6, method: 'ladder, adjusted' as const });

describe('What is used of it', () => {
  it('moves from the assumed 0.30 to what was seen as pairs come in: (10 x 0.09 + v s2) / (10 + v)', () => {
    for (const pairs of [3, 12, 90]) {
      const { own, worth, seen } = only(knownEyes(asked({ sd: 0.6 }, pairs, 4), []));
      expect(own).toBeCloseTo(Math.sqrt((10 * 0.09 + worth * (seen ?? 0) ** 2) / (10 + worth)), 12);
      expect(worth).toBeLessThan(pairs);
    }
  });

  // Upper 5 % points of Student's t as any printed table has them, and 1.645 of the normal; from memory.
  it.each([
    [20, 1.725],
    [30, 1.697],
    [40, 1.684],
  ])('is widened by the t quantile of %i degrees over the normal one', (degrees, t) => {
    const rated = asked({ sd: 0.5 }, 400, 9);
    let at = 1;
    while (at < rated.length && only(knownEyes(rated.slice(0, at), [])).worth < degrees - 10) at++;
    const { own, sd, worth } = only(knownEyes(rated.slice(0, at), []));
    expect(worth + 10).toBeLessThan(degrees + 1);
    expect(sd / own).toBeCloseTo(t / 1.645, 1);
    expect(Math.abs(sd - (own * t) / 1.645)).toBeLessThan(0.006);
  });

  it('is told in hundredths, so that one more pair seldom makes every figure anew', () => {
    const { sd } = only(knownEyes(asked({ sd: 0.4 }, 7, 2), []));
    expect(sd * 100).toBeCloseTo(Math.round(sd * 100), 9);
  });

  it('counts a pair at "under 1 %" for next to nothing, for there the bin hides the eye', () => {
    const tiny: Rerated = {
      surveyor: a,
      ratings: [{ kind: 'green film', origin: 'metal', first: onLadder(0.005), coverage: onLadder(0.005) }],
    };
    expect(only(knownEyes([tiny], [])).worth).toBeLessThan(0.01);
  });
});

describe('Whose eye it is', () => {
  it('is told by surveyor, each from their own pairs and checks alone', () => {
    const eyes = knownEyes(
      [...asked({ sd: 0.2 }, 80, 1, 'surveyor/a'), ...asked({ sd: 0.7 }, 80, 2, 'surveyor/b')],
      checked({ sd: 0.7 }, 2, 3, 'surveyor/b'),
    );
    expect(Object.keys(eyes)).toEqual(['surveyor/a', 'surveyor/b']);
    expect(eyes['surveyor/a']?.sd).toBeLessThan(0.3);
    expect(eyes['surveyor/b']?.sd).toBeGreaterThan(0.5);
    expect(eyes['surveyor/a']?.patches).toBe(0);
    expect(eyes['surveyor/b']?.patches).toBe(24);
  });

  it('does not come of dots, tracings or photos, nor of rounds where nobody is named', () => {
    const byDots = asked({ sd: 0.5 }, 20, 1).map((row) => ({
      ...row,
      ratings: row.ratings.map((r) => ({ ...r, first: { ...r.first, method: 'dots' as const } })),
    }));
    expect(knownEyes(byDots, [])).toEqual({});
    expect(knownEyes(asked({ sd: 0.5 }, 20, 1, ''), [])).toEqual({});
  });

  it('is the same in whatever order zones were asked', () => {
    const rows = asked({ sd: 0.5 }, 30, 6);
    const [one, turned] = [only(knownEyes(rows, [])), only(knownEyes([...rows].reverse(), []))];
    expect(turned.sd).toBe(one.sd);
    expect(turned.worth).toBeCloseTo(one.worth, 9);
  });

  it('gives finite numbers where a check was answered alike throughout', () => {
    const flat = checked({ sd: 0 }, 1, 1).map(({ surveyor, patches }) => ({
      surveyor,
      patches: patches.map(({ truth }) => ({ truth, said: onLadder(0.2) })),
    }));
    const eye = only(knownEyes([], flat));
    expect(Number.isFinite(eye.sd)).toBe(true);
    expect(eye.curve?.line.slope).toBeCloseTo(0, 9);
    expect(JSON.stringify(eye)).not.toMatch(/null,"slope|NaN/);
  });
});
