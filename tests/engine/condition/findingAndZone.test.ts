import { describe, expect, it } from 'vitest';
import {
  coverageConflicts,
  coverageInterval,
  coverageSd,
  scoreFinding,
  scoreZone,
  zoneRange,
} from '../../../src/engine/condition';
import { scaleOf } from '../../../src/engine/trade';
import { findingBody, findingThings, type Made, onLadder, visitThing, zoneThing } from './madeUp';

const scale = scaleOf(null);
const zone = zoneThing('A', 2);
const scored = (made: Omit<Made, 'zone'>, options = {}) =>
  scoreZone(
    {
      visit: visitThing({ zone: 'A', ...made }),
      findings: findingThings({ zone: 'A', ...made }),
      zone,
      day: '2026-05-12',
    },
    scale,
    options,
  );
const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map(({ code }) => code);

describe('the error of a coverage', () => {
  it('adds own eye, half a point and the bin on the logit', () => {
    const p = 0.2;
    const slope = 1 / (p * (1 - p));
    const sd = Math.sqrt(0.3 ** 2 + (0.005 * slope) ** 2 + ((0.25 - 0.175) * slope) ** 2 / 12);
    expect(coverageSd({ value: p, low: 0.175, high: 0.25, method: 'ladder' })).toBeCloseTo(sd, 12);
  });

  it('is smaller for a traced coverage, and for a person known to be surer', () => {
    const at = { value: 0.2, low: 0.2, high: 0.2 };
    const eye = coverageSd({ ...at, method: 'ladder, adjusted' });
    expect(coverageSd({ ...at, method: 'traced' })).toBeLessThan(eye);
    expect(coverageSd({ ...at, method: 'ladder, adjusted' }, { sd: 0.2 })).toBeLessThan(eye);
    expect(coverageSd({ ...at, method: 'traced' }, { sd: 0.5 })).toBe(coverageSd({ ...at, method: 'traced' }));
  });

  it('stays inside what is published for one observer repeating: about 5 to 15 points each way in the middle of the scale', () => {
    // Sykes, Horrill & Mountford 1983, J. Ecology 71:437-450, abstract.
    for (const label of ['10', '15', '20', '30', '40', '50']) {
      const given = onLadder(label);
      if (!given) throw new Error('a step has a coverage');
      const { low, high } = coverageInterval(given);
      const reach = ((high - low) / 2) * 100;
      expect(reach, label).toBeGreaterThan(4);
      expect(reach, label).toBeLessThan(15.5);
    }
  });

  it('does not let "90 % or more" mean a third, nor a trace mean half the zone', () => {
    expect(coverageInterval({ value: 0.9, low: 0.8, high: 1, method: 'ladder' }).low).toBeGreaterThan(0.7);
    expect(coverageInterval({ value: 0.001, low: 0.001, high: 0.001, method: 'traced' }).high).toBeLessThan(0.02);
  });

  it('takes the interval of dots as it is, wider for fewer dots', () => {
    const few = { value: 0.2, low: 0.1, high: 0.37, method: 'dots' as const };
    const many = { value: 0.2, low: 0.14, high: 0.27, method: 'dots' as const };
    expect(coverageInterval(few)).toEqual({ low: few.low, high: few.high });
    expect(coverageSd(few)).toBeGreaterThan(coverageSd(many));
  });
});

describe('the loss of one finding', () => {
  it('is hazard x severity x activity x square root of the share', () => {
    const score = scoreFinding(
      findingBody('green-spots', { severity: 'moderate', activity: 'active', coverage: onLadder('20') }),
      scale,
    );
    expect(score.loss).toBeCloseTo(0.6 * 0.7 * 1 * Math.sqrt(0.2), 12);
    expect(score.parts).toEqual({ hazard: 0.6, severity: 0.7, activity: 1, extent: Math.sqrt(0.2) });
    expect(score.low).toBeLessThan(score.loss);
    expect(score.high).toBeGreaterThan(score.loss);
  });

  it('goes by count for what is counted, and in full for what is simply there', () => {
    expect(scoreFinding(findingBody('pits-new', { count: 'two to five' }), scale).loss).toBeCloseTo(
      0.9 * 0.4 * 0.85 * 0.8,
      12,
    );
    expect(scoreFinding(findingBody('open-joint'), scale).loss).toBeCloseTo(0.75 * 0.4 * 0.85, 12);
    expect(scoreFinding(findingBody('weep-hole-blocked'), scale).loss).toBeCloseTo(0.75 * 0.4 * 0.85, 12);
  });

  it('never takes all: a loose part, severe and active, leaves 2 %', () => {
    const worst = findingBody('part-loose', { count: 'more', severity: 'severe', activity: 'active' });
    expect(scoreFinding(worst, scale).loss).toBe(0.98);
  });

  it('is none for dirt, for what was cleared, and for looked and none there, each with its reason', () => {
    const at = (more: Parameters<typeof findingBody>[1]) =>
      scoreFinding(findingBody('green-spots', { coverage: onLadder('20'), ...more }), scale);
    expect(at({ origin: 'dirt' })).toMatchObject({
      loss: 0,
      high: 0,
      reasons: [{ code: 'score: dirt, look again after washing' }],
    });
    expect(at({ cleared: true })).toMatchObject({ loss: 0, high: 0, reasons: [{ code: 'score: cleared' }] });
    expect(at({ coverage: onLadder('0') })).toMatchObject({
      loss: 0,
      reasons: [{ code: 'score: looked, none there' }],
    });
  });

  it('takes the hazard of a stain for a stain from above, and says so', () => {
    const stain = scoreFinding(
      findingBody('green-run-off-streak', { origin: 'stain', coverage: onLadder('30') }),
      scale,
    );
    expect(stain.parts.hazard).toBe(0.15);
    expect(codes(stain.reasons)).toContain('score: stain takes its own hazard');
  });

  it('shows a kind it does not know, does not score it, and says so', () => {
    const score = scoreFinding(
      findingBody('kind-of-tomorrow', { coverage: onLadder('50'), severity: 'severe' }),
      scale,
    );
    expect(score).toMatchObject({
      loss: 0,
      scored: false,
      reasons: [{ code: 'score: kind not known', params: { kind: 'kind-of-tomorrow' } }],
    });
  });

  it('leaves the range open to the whole zone where no coverage was given', () => {
    const score = scoreFinding(findingBody('green-spots'), scale);
    expect(score.loss).toBeGreaterThan(0);
    expect(score.low).toBe(0);
    expect(score.high).toBeCloseTo(0.6 * 0.4 * 0.85, 12);
    expect(codes(score.reasons)).toEqual(['score: no coverage given']);
  });

  it('says of dots and photos that they speak of the photo’s share', () => {
    const score = scoreFinding(
      findingBody('green-spots', { coverage: { value: 0.2, low: 0.13, high: 0.31, method: 'dots' } }),
      scale,
    );
    expect(codes(score.reasons)).toEqual(['score: share of the photo']);
  });
});

describe('the index of a zone', () => {
  it('is 100 times the product of what each finding leaves', () => {
    const findings = [
      findingBody('even-green-film', { coverage: onLadder('20') }),
      findingBody('pits-known', { count: 'one', activity: 'stable' }),
    ];
    const [green, pits] = [0.45 * 0.4 * 0.85 * Math.sqrt(0.2), 0.55 * 0.4 * 0.7 * 0.6];
    expect(scored({ findings })?.value).toBeCloseTo(100 * (1 - green) * (1 - pits), 10);
  });

  it('has a range that adds each finding’s own deviation of -ln Z in quadrature, each side by itself', () => {
    const rows = [
      { loss: 0.2, low: 0.1, high: 0.4 },
      { loss: 0.1, low: 0.08, high: 0.11 },
    ];
    const c = (loss: number): number => -Math.log(1 - loss);
    const sum = c(0.2) + c(0.1);
    const down = Math.hypot(c(0.2) - c(0.1), c(0.1) - c(0.08));
    const up = Math.hypot(c(0.4) - c(0.2), c(0.11) - c(0.1));
    const range = zoneRange(rows);
    expect(range.low).toBeCloseTo(100 * Math.exp(-(sum + up)), 10);
    expect(range.high).toBeCloseTo(100 * Math.exp(-(sum - down)), 10);
  });

  it('is 100 where looked and nothing found', () => {
    expect(scored({ state: 'nothing' })).toMatchObject({
      value: 100,
      low: 100,
      high: 100,
      reasons: [{ code: 'score: nothing found' }],
    });
  });

  it('is none where nobody looked, whatever else is written there', () => {
    expect(scored({ state: 'not looked', findings: [findingBody('tarnish', { coverage: onLadder('5') })] })).toBeNull();
    expect(scored({ state: 'not looked' }, { withCarried: true })).toBeNull();
  });

  it('is none where any answer was carried and not judged again', () => {
    const carried = findingBody('tarnish', { coverage: onLadder('5'), carriedFrom: 'round/2025' });
    expect(scored({ state: 'carried', findings: [carried] })).toBeNull();
    expect(scored({ findings: [findingBody('green-spots', { coverage: onLadder('3') }), carried] })).toBeNull();
    expect(scored({ state: 'carried', findings: [carried] }, { withCarried: true })).toMatchObject({
      withCarried: true,
    });
  });

  it('does not let the light of the day bring green to where none was found', () => {
    const gone = [findingBody('green-spots', { coverage: onLadder('0') })];
    expect(scored({ findings: gone }, { dayShift: 1 })?.value).toBe(100);
    const some = [findingBody('green-spots', { coverage: onLadder('20') })];
    expect(scored({ findings: some }, { dayShift: 0.2 })?.value).toBeLessThan(scored({ findings: some })?.value ?? 0);
  });

  it('says what one more step of severity would do, for the finding where it does most', () => {
    const score = scored({
      findings: [
        findingBody('green-spots', { coverage: onLadder('30') }),
        findingBody('tarnish', { coverage: onLadder('30'), severity: 'severe' }),
        findingBody('wax-worn', { coverage: onLadder('3') }),
      ],
    });
    const tarnish = 1 - 0.1 * 0.85 * Math.sqrt(0.3);
    const wax = 1 - 0.2 * 0.4 * 0.85 * Math.sqrt(0.03);
    expect(score?.worstStep).toMatchObject({ kind: 'green-spots', from: 'slight', to: 'moderate' });
    expect(score?.worstStep?.value).toBeCloseTo(100 * (1 - 0.6 * 0.7 * 0.85 * Math.sqrt(0.3)) * tarnish * wax, 10);
    expect(scored({ state: 'nothing' })?.worstStep).toBeNull();
  });

  it('counts green, bare metal and scale apart in m2, none of them what is stable, stained or dirt', () => {
    const findings = [
      findingBody('green-spots', { coverage: onLadder('10') }),
      findingBody('even-green-film', { coverage: onLadder('20'), activity: 'stable' }),
      findingBody('green-run-off-streak', { coverage: onLadder('30'), origin: 'stain' }),
      findingBody('bare-by-touch', { coverage: onLadder('5'), activity: 'active' }),
      findingBody('hard-water-scale', { coverage: onLadder('40') }),
    ];
    const active = scored({ findings })?.active;
    expect(active?.green.value).toBeCloseTo(0.2, 12);
    expect(active?.bare.value).toBeCloseTo(0.1, 12);
    expect(active?.scale.value).toBeCloseTo(0.8, 12);
  });

  it('gives an active area the error of its coverage and of the zone’s area, in quadrature', () => {
    const given = { value: 0.2, low: 0.1, high: 0.35, method: 'photo' } as const;
    const green = scored({ findings: [findingBody('green-spots', { coverage: given })] })?.active.green;
    expect(green?.low).toBeCloseTo(0.4 - Math.hypot(0.1 * 2, 0.2 * 0.3), 12);
    expect(green?.high).toBeCloseTo(0.4 + Math.hypot(0.15 * 2, 0.2 * 0.3), 12);
  });

  it('holds each active area to the zone, and says so', () => {
    const findings = [
      findingBody('green-spots', { coverage: onLadder('70') }),
      findingBody('green-under-film', { coverage: onLadder('70') }),
    ];
    expect(scored({ findings })?.active.green).toMatchObject({
      value: 2,
      high: 2.3,
      reasons: [{ code: 'score: active area held to the zone', params: { what: 'green' } }],
    });
  });
});

describe('kinds that exclude each other', () => {
  const cover = (kind: string, label: string, more = {}) => findingBody(kind, { coverage: onLadder(label), ...more });

  it('may not pass the whole zone together', () => {
    const reasons = coverageConflicts([
      cover('even-green-film', '70'),
      cover('bare-by-touch', '50'),
      cover('wax-worn', '90+'),
    ]);
    expect(reasons).toEqual([
      { code: 'coverage: more than the whole zone', params: { kinds: 'bare-by-touch, even-green-film', percent: 120 } },
    ]);
  });

  it('are only asked about where the steps would still leave room', () => {
    expect(codes(coverageConflicts([cover('even-green-film', '70'), cover('black-crust', '40')]))).toEqual([
      'coverage: perhaps more than the whole zone',
    ]);
  });

  it('may fill the zone to the last, and lie over each other where they are of different layers', () => {
    expect(coverageConflicts([cover('even-green-film', '70'), cover('bare-by-touch', '30')])).toEqual([]);
    expect(
      coverageConflicts([cover('even-green-film', '90+'), cover('wax-worn', '90+'), cover('hard-water-scale', '70')]),
    ).toEqual([]);
  });

  it('leave out what was cleared and what is dirt', () => {
    expect(
      coverageConflicts([cover('even-green-film', '70'), cover('bare-by-touch', '50', { cleared: true })]),
    ).toEqual([]);
    expect(coverageConflicts([cover('even-green-film', '70'), cover('black-crust', '50', { origin: 'dirt' })])).toEqual(
      [],
    );
  });
});
