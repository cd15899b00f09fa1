import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../src/engine/change';
import { fromLogit, logit } from '../../src/engine/condition';
import { ladderStepOf } from '../../src/engine/trade';
import { type InventedFinding, type InventedVisit, invented, roundName } from '../engine/change/invented';
import { seeded } from '../files/seeded';

/**
 * The same truth looked at twice, with the error the model says an eye has: how often is a change called?
 * 1,000 pages of eight zones a case, seeded. Over twenty other seeds the share of findings lay within 3.5 and 4.9 %, of zones within
 * 4.2 and 6.0 %, of the work's own figures (one a page) within 2.7 and 6.5 %; the bounds below leave little more room than that.
 */
const pages = 1000;
const truths = [0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.7];
const letters = truths.map((_, i) => `Z${i}`);
const areas = [1.6, 1.4, 2.3, 2.1, 2.6, 2.3, 0.7, 3.2];

const drawer = (seed: number) => {
  const { next } = seeded(seed);
  const normal = (sd: number): number => sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  return { next, normal };
};

/** One look at a true coverage: the eye, half a point, the day; rounded to the ladder, or told freely with the bin's width as error. */
const look = (
  truth: number,
  shared: number,
  onLadder: boolean,
  { next, normal }: ReturnType<typeof drawer>,
  sd: number,
): InventedFinding => {
  const slope = 1 / (truth * (1 - truth));
  const eye = logit(truth) + shared + normal(sd) + normal(0.005 * slope);
  if (onLadder) return { cover: ladderStepOf(fromLogit(eye)).value };
  const bin = ladderStepOf(truth);
  const seen = fromLogit(eye + (next() - 0.5) * (bin.high - bin.low) * slope);
  return { cover: seen, method: 'ladder, adjusted' };
};

interface Rates {
  readonly findings: number;
  readonly zones: number;
  readonly index: number;
  readonly green: number;
  readonly stands: number;
}

interface Case {
  readonly seed: number;
  readonly onLadder?: boolean;
  /** Two persons looked, 0.35 apart; `said` is whether the record knows it. */
  readonly persons?: { readonly said: boolean };
  /** Spread of the eye that looked both times, 0.30 unless said; `known` is whether the record holds it. */
  readonly eye?: { readonly sd: number; readonly known: boolean };
}

const falseAlarms = ({ seed, onLadder = false, persons: two, eye }: Case): Rates => {
  const draw = drawer(seed);
  const called = { findings: 0, zones: 0, index: 0, green: 0, stands: 0 };
  for (let page = 0; page < pages; page++) {
    const persons = two ? draw.normal(0.35) : 0;
    const days = [draw.normal(0.15), draw.normal(0.15) + persons];
    const saw = (shared: number): Record<string, InventedVisit> =>
      Object.fromEntries(truths.map((truth, i) => [letters[i], [look(truth, shared, onLadder, draw, eye?.sd ?? 0.3)]]));
    const work = invented({
      zones: Object.fromEntries(letters.map((letter, i) => [letter, { m2: areas[i] ?? 1 }])),
      rounds: [
        { date: '2025-05-10', saw: saw(days[0] ?? 0) },
        { date: '2026-05-10', saw: saw(days[1] ?? 0), surveyor: two?.said ? 'surveyor/other' : 'surveyor/steward' },
      ],
    });
    const record = eye?.known ? { ...work, eyes: { 'surveyor/steward': { sd: eye.sd, pairs: 60 } } } : work;
    const t = thenAndNow(record, roundName(0), roundName(1));
    const changed = (j: { verdict: string }) => j.verdict === 'worse' || j.verdict === 'better';
    called.findings += t.findings.filter(changed).length / truths.length;
    called.zones += t.zones.filter(changed).length / truths.length;
    called.index += changed(t.sculpture.index) ? 1 : 0;
    called.green += changed(t.sculpture.active.green) ? 1 : 0;
    called.stands += t.findings.some((f) => changed(f) && !f.aloneCouldBeChance) ? 1 : 0;
  }
  return {
    findings: called.findings / pages,
    zones: called.zones / pages,
    index: called.index / pages,
    green: called.green / pages,
    stands: called.stands / pages,
  };
};

const around = (rate: number, low: number, high: number) => {
  expect(rate).toBeGreaterThan(low);
  expect(rate).toBeLessThan(high);
};

describe('where nothing changed, about one comparison in twenty goes over the line', () => {
  test.each([
    ['told freely', { seed: 1 }],
    ['on the ladder', { seed: 2, onLadder: true }],
    ['by two persons', { seed: 3, persons: { said: true } }],
    ['by an unsteady eye that is known', { seed: 6, eye: { sd: 0.55, known: true } }],
    ['by a steady eye that is known', { seed: 7, eye: { sd: 0.2, known: true } }],
  ])('%s', (_, which: Case) => {
    const rates = falseAlarms(which);
    around(rates.findings, 0.03, 0.06);
    around(rates.zones, 0.03, 0.065);
    around(rates.index, 0.02, 0.07);
    around(rates.green, 0.02, 0.07);
  });

  test('weighed together, at most about one page in ten keeps a false change', () => {
    around(falseAlarms({ seed: 4 }).stands, 0.02, 0.11);
  });

  test('two persons taken for one would raise false alarms about the whole work past one in six', () => {
    expect(falseAlarms({ seed: 5, persons: { said: false } }).index).toBeGreaterThan(1 / 6);
  });

  test('an unsteady eye taken for a usual one would raise false alarms in more than one finding of ten', () => {
    expect(falseAlarms({ seed: 6, eye: { sd: 0.55, known: false } }).findings).toBeGreaterThan(0.1);
  });
});
