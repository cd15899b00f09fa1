import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { describe, expect, it } from 'vitest';
import {
  fitNumbers,
  fitPhotos,
  isRefused,
  type Pair,
  type PhotoFit,
  type PhotoFitKind,
  type Point,
} from '../../src/engine/photo';
import { aslant, aspect, type Known, ontoSize, pairsOf, sheared, similar, size, truly } from './knownPairs';

const laid = (pairs: readonly Pair[], kind: PhotoFitKind, from = size, onto = ontoSize): PhotoFit => {
  const came = fitPhotos(pairs, from, onto, kind);
  if (isRefused(came)) throw new Error(came.refused.map(({ code }) => code).join('; '));
  return came;
};
const refusals = (pairs: readonly Pair[], kind: PhotoFitKind): readonly string[] => {
  const came = fitPhotos(pairs, size, ontoSize, kind);
  return isRefused(came) ? came.refused.map(({ code }) => code) : [];
};
const apart = (one: Point, other: Point, onto = ontoSize): number =>
  Math.hypot(one[0] - other[0], (one[1] - other[1]) * aspect(onto));
const grid: readonly Point[] = [0, 0.25, 0.5, 0.75, 1].flatMap((x) => [0, 0.3, 0.6, 1].map((y): Point => [x, y]));

const cases: readonly [PhotoFitKind, Known, number][] = [
  ['similarity', similar, 4],
  ['affine', sheared, 5],
  ['homography', aslant, 6],
];

describe('a known way from one picture onto another', () => {
  it.each(cases)('is found again by the fewest pairs of a %s to a billionth of the width', (kind, known, fewest) => {
    const found = laid(pairsOf(known, fewest), kind);
    for (const at of grid) expect(apart(found.through(at), truly(known, at))).toBeLessThan(1e-9);
    expect(found.residual.share).toBeLessThan(1e-9);
    expect(found.verdict).toBe('same');
  });

  it.each(cases)('leads back as it led there, by a %s', (kind, known, fewest) => {
    const found = laid(pairsOf(known, fewest + 3, 0.004), kind);
    for (const at of grid) expect(apart(found.back(found.through(at)), at, size)).toBeLessThan(1e-9);
  });

  it.each(cases)('is missed by about the hand’s error, not more, by a %s of ten pairs', (kind, known) => {
    const noise = 0.004;
    for (let seed = 1; seed <= 20; seed++) {
      const found = laid(pairsOf(known, 10, noise, seed), kind);
      expect(apart(found.through([0.5, 0.5]), truly(known, [0.5, 0.5]))).toBeLessThan(4 * noise);
    }
  });

  it('is told the same whichever way round the pictures are held, as nearly as noise lets it', () => {
    const pairs = pairsOf(similar, 8, 0.002);
    const there = laid(pairs, 'similarity');
    const back = laid(
      pairs.map(({ from, onto }) => ({ from: onto, onto: from })),
      'similarity',
      ontoSize,
      size,
    );
    for (const at of grid) expect(apart(back.back(at), there.through(at))).toBeLessThan(0.002);
  });
});

/** Model values of both coordinates of every pair, for the independent solver: it knows one number in, one out. */
const model =
  (kind: PhotoFitKind, pairs: readonly Pair[]) =>
  (p: readonly number[]) =>
  (i: number): number => {
    const [x, y] = pairs[i >> 1]!.from;
    const v = y * aspect(size);
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = p;
    if (kind === 'similarity') return i % 2 === 0 ? a * x - b * v + c : b * x + a * v + d;
    const w = kind === 'homography' ? g * x + h * v + 1 : 1;
    return i % 2 === 0 ? (a * x + b * v + c) / w : (d * x + e * v + f) / w;
  };
const starts = { similarity: [1, 0, 0, 0], affine: [1, 0, 0, 0, 1, 0], homography: [1, 0, 0, 0, 1, 0, 0, 0] } as const;

describe('least squares, against the solver of ml-levenberg-marquardt 5.1.0', () => {
  it.each(cases)('a %s of noisy pairs leaves no more between them than that solver finds', (kind, known) => {
    for (let seed = 1; seed <= 12; seed++) {
      const pairs = pairsOf(known, 9, 0.01, seed);
      const observed = pairs.flatMap(({ onto: [x, y] }) => [x, y * aspect(ontoSize)]);
      const came = levenbergMarquardt({ x: observed.map((_, i) => i), y: observed }, model(kind, pairs), {
        initialValues: starts[kind],
        centralDifference: true,
        gradientDifference: 1e-5,
        damping: 1e-6,
        improvementThreshold: 1e-14,
        errorTolerance: 0,
        maxIterations: 400,
      });
      const theirs = observed.map((_, i) => model(kind, pairs)(came.parameterValues)(i));
      const found = laid(pairs, kind);
      const ours = pairs.flatMap(({ from }) => {
        const [x, y] = found.through(from);
        return [x, y * aspect(ontoSize)];
      });
      const left = (of: readonly number[]) => of.reduce((sum, value, i) => sum + (value - observed[i]!) ** 2, 0);
      expect(left(ours)).toBeLessThanOrEqual(left(theirs) * (1 + 1e-9));
      ours.forEach((value, i) => {
        expect(Math.abs(value - theirs[i]!)).toBeLessThan(1e-6);
      });
    }
  });
});

describe('the residual: how far each pair lies from where the others put it', () => {
  it('of an affine fit is that of Allen 1974 (PRESS): what is left at a pair over one less its leverage', () => {
    const pairs = pairsOf(sheared, 7, 0.01, 3);
    const found = laid(pairs, 'affine');
    const rows = pairs.map(({ from: [x, y] }) => [1, x, y * aspect(size)] as const);
    const leverages = leverageOf(rows);
    pairs.forEach(({ from, onto }, i) => {
      const left = apart(found.through(from), onto);
      expect(found.perPair[i]!.fitted).toBeCloseTo(left, 12);
      expect(found.perPair[i]!.leftOut).toBeCloseTo(left / (1 - leverages[i]!), 10);
    });
    const rms = Math.sqrt(found.perPair.reduce((sum, { leftOut }) => sum + leftOut ** 2, 0) / pairs.length);
    expect(found.residual.share).toBeCloseTo(rms, 12);
    expect(found.residual.px).toBeCloseTo(rms * ontoSize.width, 9);
  });

  it('of three pairs that an affine fit meets exactly is not told: there is nothing left over to tell it from', () => {
    expect(refusals(pairsOf(sheared, 4), 'affine')).toEqual(['fit: too few pairs']);
    expect(refusals(pairsOf(similar, 3), 'similarity')).toEqual(['fit: too few pairs']);
    expect(refusals(pairsOf(aslant, 5), 'homography')).toEqual(['fit: too few pairs']);
  });

  it('tells how good the hand is: about its error over many pairs', () => {
    const found = laid(pairsOf(similar, 40, 0.005, 7), 'similarity');
    expect(found.residual.share / (0.005 * Math.SQRT2)).toBeGreaterThan(0.8);
    expect(found.residual.share / (0.005 * Math.SQRT2)).toBeLessThan(1.3);
  });

  it('names the pair that is off, and how well the others agree without it', () => {
    const pairs = pairsOf(similar, 6).map((pair, i) =>
      i === 2 ? { ...pair, onto: [pair.onto[0] + 0.06, pair.onto[1]] as const } : pair,
    );
    const found = laid(pairs, 'similarity');
    const [worst] = found.reasons.filter(({ code }) => code === 'fit: one pair stands out');
    expect(worst?.params.pair).toBe(3);
    expect(worst?.params.percent).toBeLessThan(1e-9);
  });
});

describe('what the residual allows', () => {
  const offBy = (share: number) => {
    const pairs = pairsOf(similar, 4);
    return laid(
      pairs.map((pair, i) =>
        // Pushed apart along the ring by turns: no similarity can follow.
        ({ ...pair, onto: [pair.onto[0] + (i % 2 === 0 ? share : -share), pair.onto[1]] as const }),
      ),
      'similarity',
    );
  };

  it('up to 1 % of the width the two are laid on each other pixel by pixel', () => {
    expect(fitNumbers.differenceUpTo.value).toBe(0.01);
    const found = offBy(0.002);
    expect(found.residual.share).toBeLessThan(0.01);
    expect(found.verdict).toBe('same');
  });

  it('over 1 % they can be looked at in turn but no change map is drawn', () => {
    const found = offBy(0.007);
    expect(found.residual.share).toBeGreaterThan(0.01);
    expect(found.residual.share).toBeLessThan(0.03);
    expect(found.verdict).toBe('blink only');
    expect(found.reasons.map(({ code }) => code)).toContain('fit: blink only');
  });

  it('over 3 % they are not of the same station', () => {
    expect(fitNumbers.sameStationUpTo.value).toBe(0.03);
    const found = offBy(0.04);
    expect(found.residual.share).toBeGreaterThan(0.03);
    expect(found.verdict).toBe('not the same station');
    expect(found.reasons.map(({ code }) => code)).toContain('fit: not the same station');
  });
});

describe('pairs that show nothing are refused with the reason', () => {
  const close = (around: Point, by: number, n: number): Pair[] =>
    pairsOf(similar, n).map(({ from: [x, y] }) => {
      const from: Point = [around[0] + by * (x - 0.5), around[1] + by * (y - 0.5)];
      return { from, onto: truly(similar, from) };
    });
  const onLine = (n: number, off: number): Pair[] =>
    Array.from({ length: n }, (_, i) => {
      const from: Point = i < off ? [0.2 + 0.5 * i, 0.9 - 0.7 * i] : [0.1 + (0.8 * i) / n, 0.2 + (0.4 * i) / n];
      return { from, onto: truly(aslant, from) };
    });

  it.each(['similarity', 'affine', 'homography'] as const)('all in one place, for a %s', (kind) => {
    expect(refusals(close([0.4, 0.6], 0.05, 8), kind)).toEqual(['fit: pairs in one place']);
  });

  it('all but one in one place: without that one the others cannot say where it lies', () => {
    const pairs = [...close([0.4, 0.6], 0.05, 5), ...pairsOf(similar, 1)];
    expect(refusals(pairs, 'similarity')).toEqual(['fit: pairs in one place']);
  });

  it.each([
    ['similarity', 0],
    ['affine', 0],
    ['affine', 1],
    ['homography', 0],
    ['homography', 1],
    ['homography', 2],
  ] as const)('on one line, for a %s, but for %i', (kind, off) => {
    expect(refusals(onLine(8, off), kind)).toEqual(['fit: pairs on one line']);
  });

  it('on one line on the second picture only, as when one corner was touched for all', () => {
    const pairs = pairsOf(similar, 6).map(({ from }, i) => ({ from, onto: [0.1 + 0.15 * i, 0.5] as const }));
    expect(refusals(pairs, 'affine')).toEqual(['fit: pairs on one line']);
  });

  it.each(cases)('mirrored, for a %s', (kind, known, fewest) => {
    const pairs = pairsOf(known, fewest + 2, 0.003).map(({ from: [x, y], onto }) => ({
      from: [1 - x, y] as const,
      onto,
    }));
    expect(refusals(pairs, kind)).toEqual(['fit: mirrored']);
  });

  it('folded: a homography that sends part of the picture beyond its own horizon', () => {
    const folding: Known = [1, 0, 0, 0, 1, 0, -1.3, 0, 1];
    const pairs = [
      [0.05, 0.1],
      [0.6, 0.15],
      [0.3, 0.5],
      [0.1, 0.8],
      [0.55, 0.9],
      [0.62, 0.5],
      [0.2, 0.3],
    ].map(([x = 0, y = 0]) => ({ from: [x, y] as const, onto: truly(folding, [x, y]) }));
    expect(refusals(pairs, 'homography')).toEqual(['fit: folded']);
  });

  it('but a mistaken pair is no mirror: it is told as a large residual', () => {
    const pairs = pairsOf(similar, 5);
    const swapped = [pairs[1]!, pairs[0]!].map((other, i) => ({ from: pairs[i]!.from, onto: other.onto }));
    const found = laid([...swapped, ...pairs.slice(2)], 'similarity');
    expect(found.verdict).toBe('not the same station');
  });
});

/** Diagonal of X (X'X)^-1 X' by Cramer's rule, for three columns. */
const leverageOf = (rows: readonly (readonly [number, number, number])[]): readonly number[] => {
  const xx = [0, 1, 2].map((i) => [0, 1, 2].map((j) => rows.reduce((sum, row) => sum + row[i]! * row[j]!, 0)));
  const at = (i: number, j: number) => xx[i % 3]![j % 3]!;
  const cofactor = (i: number, j: number) => at(i + 1, j + 1) * at(i + 2, j + 2) - at(i + 1, j + 2) * at(i + 2, j + 1);
  const det = [0, 1, 2].reduce((sum, j) => sum + at(0, j) * cofactor(0, j), 0);
  return rows.map((row) =>
    [0, 1, 2].reduce(
      (sum, i) => sum + [0, 1, 2].reduce((all, j) => all + (row[i]! * row[j]! * cofactor(i, j)) / det, 0),
      0,
    ),
  );
};
