import { describe, expect, it } from 'vitest';
import { coverageSd, type EyeError, fromLogit, logit, scoreRound, scoreZone } from '../../src/engine/condition';
import type { BodyOf, KnownEye, Thing } from '../../src/engine/record';
import { kinds, ladder, scaleOf, severities } from '../../src/engine/trade';
import {
  findingBody,
  findingThings,
  type Made,
  recordOf,
  roundName,
  visitThing,
  zoneName,
  zoneThing,
} from '../engine/condition/madeUp';
import { type Seeded, seeded } from '../files/seeded';

type Finding = BodyOf<'finding'>;

const scale = scaleOf(null);
const areaKinds = kinds.filter(({ measure }) => measure === 'area').map(({ id }) => id);
const steps = ladder.filter(({ value }) => value > 0);

const normal = (draw: Seeded): number =>
  Math.sqrt(-2 * Math.log(1 - draw.next())) * Math.cos(2 * Math.PI * draw.next());

const randomFindings = (draw: Seeded, most: number): Finding[] => {
  const names = new Set(Array.from({ length: 1 + draw.below(most) }, () => draw.pick(areaKinds)));
  return [...names].map((kind) => {
    const { value, low, high } = draw.pick(steps);
    return findingBody(kind, {
      severity: draw.pick(severities).id,
      activity: draw.pick(['active', 'unclear', 'stable']),
      coverage: { value, low, high, method: 'ladder' },
    });
  });
};

/** The findings as they might truly be: coverages drawn on the logit with their own error, and a shift they share. */
const redrawn = (list: readonly Finding[], draw: Seeded, shared: number, error: EyeError = {}): Finding[] =>
  list.map((one) => {
    if (!one.coverage) return one;
    const share = fromLogit(logit(one.coverage.value) + coverageSd(one.coverage, error) * normal(draw) + shared);
    return { ...one, coverage: { ...one.coverage, value: share } };
  });

const indexOf = (list: readonly Finding[], zone: Thing<'zone'>, eye?: KnownEye) => {
  const made: Made = { zone: 'A', findings: list };
  const seen = { visit: visitThing(made), findings: findingThings(made), zone, day: '2026-05-12' };
  const score = scoreZone(eye ? { ...seen, eye } : seen, scale);
  if (!score) throw new Error('a zone that was looked at has an index');
  return score;
};

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN;

interface Check {
  readonly formula: { readonly low: number; readonly high: number };
  readonly drawn: readonly number[];
}

const held = ({ formula, drawn }: Check): number =>
  drawn.filter((z) => z >= formula.low && z <= formula.high).length / drawn.length;
const offEnds = ({ formula, drawn }: Check): number =>
  Math.max(Math.abs(formula.low - at(drawn, 0.05)), Math.abs(formula.high - at(drawn, 0.95)));

const report = (checks: readonly Check[]): string => {
  const shares = checks.map(held);
  const off = checks.map(offEnds).sort((a, b) => a - b);
  const mean = shares.reduce((a, b) => a + b, 0) / shares.length;
  return [
    `share held: mean ${mean.toFixed(3)}, least ${Math.min(...shares).toFixed(3)}, most ${Math.max(...shares).toFixed(3)}`,
    `ends off by: median ${at(off, 0.5).toFixed(2)}, 95 % ${at(off, 0.95).toFixed(2)}, most ${at(off, 1).toFixed(2)} points`,
  ].join('; ');
};

describe('the range of a zone against our own Monte Carlo, 150 zones of 1 to 5 findings, 4,000 draws each', () => {
  const draw = seeded(4711);
  const zone = zoneThing('A', 1);
  const checks: Check[] = Array.from({ length: 150 }, () => {
    const list = randomFindings(draw, 5);
    const drawn = Array.from({ length: 4000 }, () => indexOf(redrawn(list, draw, 0), zone).value).sort((a, b) => a - b);
    return { formula: indexOf(list, zone), drawn };
  });
  const said = report(checks);

  it('holds 90 % of the draws, give or take 1, on the mean', () => {
    const mean = checks.map(held).reduce((a, b) => a + b, 0) / checks.length;
    expect(Math.abs(mean - 0.9), said).toBeLessThan(0.01);
  });

  it('holds between 87 and 93 % of the draws of every single zone', () => {
    expect(Math.min(...checks.map(held)), said).toBeGreaterThan(0.87);
    expect(Math.max(...checks.map(held)), said).toBeLessThan(0.93);
  });

  it('has its ends within 0.5 index points of the drawn ones', () => {
    expect(Math.max(...checks.map(offEnds)), said).toBeLessThan(0.5);
  });

  it('holds the middle half of the draws inside it, always', () => {
    for (const { formula, drawn } of checks) {
      expect(formula.low, said).toBeLessThan(at(drawn, 0.25));
      expect(formula.high, said).toBeGreaterThan(at(drawn, 0.75));
    }
  });
});

describe('the range of a zone seen by an eye that is known, 60 zones of 1 to 5 findings, 2,000 draws each', () => {
  it.each([
    [0.2, 0.01],
    [0.55, 0.01],
  ])('holds nine draws of ten of an eye of %f, give or take %f', (sd, slack) => {
    const draw = seeded(77);
    const zone = zoneThing('A', 1);
    const checks = Array.from({ length: 60 }, (): Check => {
      const list = randomFindings(draw, 5);
      const drawn = Array.from({ length: 2000 }, () => indexOf(redrawn(list, draw, 0, { sd }), zone).value);
      return { formula: indexOf(list, zone, { sd, pairs: 30 }), drawn: drawn.sort((a, b) => a - b) };
    });
    const mean = checks.map(held).reduce((a, b) => a + b, 0) / checks.length;
    expect(Math.abs(mean - 0.9), report(checks)).toBeLessThan(slack);
  });
});

describe('the range of a sculpture against Monte Carlo with one shared day, 40 works of 3 to 12 zones, 2,000 draws each', () => {
  const draw = seeded(1912);
  const daySd = 0.15;
  const letters = 'ABCDEFGHIJKL';
  const checks: Check[] = Array.from({ length: 40 }, () => {
    const zones = Array.from({ length: 3 + draw.below(10) }, (_, i) =>
      zoneThing(letters.charAt(i), 0.3 + 2 * draw.next(), draw.pick([1, 1, 2])),
    );
    const lists = zones.map(() => randomFindings(draw, 3));
    const meanOf = (drawnLists: readonly Finding[][]): number => {
      const parts = zones.map((zone, i) => {
        const weight = (zone.body.versions[0]?.area.m2 ?? 0) * zone.body.significance;
        return [weight, indexOf(drawnLists[i] ?? [], zone).value] as const;
      });
      return parts.reduce((sum, [weight, z]) => sum + weight * z, 0) / parts.reduce((sum, [weight]) => sum + weight, 0);
    };
    const drawn = Array.from({ length: 2000 }, () => {
      const day = daySd * normal(draw);
      return meanOf(lists.map((list) => redrawn(list, draw, day)));
    }).sort((a, b) => a - b);
    const made = zones.map((zone, i): Made => ({ zone: zone.body.letter, findings: lists[i] ?? [] }));
    const score = scoreRound(recordOf(zones, made), roundName(2026));
    expect(score.zones[0]?.zone).toBe(zoneName('A'));
    return { formula: { low: score.low ?? Number.NaN, high: score.high ?? Number.NaN }, drawn };
  });
  const said = report(checks);

  it('holds 90 % of the draws, give or take 1, on the mean', () => {
    const mean = checks.map(held).reduce((a, b) => a + b, 0) / checks.length;
    expect(Math.abs(mean - 0.9), said).toBeLessThan(0.01);
  });

  it('has its ends within 0.4 index points of the drawn ones', () => {
    expect(Math.max(...checks.map(offEnds)), said).toBeLessThan(0.4);
  });
});
