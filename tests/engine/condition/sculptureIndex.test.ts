import { describe, expect, it } from 'vitest';
import { scoreRound, zoneInRound } from '../../../src/engine/condition';
import { findingBody, type Made, onLadder, recordOf, roundName, zoneName, zoneThing } from './madeUp';

const green = (label: string) => findingBody('even-green-film', { coverage: onLadder(label), severity: 'severe' });
const pits = findingBody('pits-new', { count: 'more', severity: 'severe', activity: 'active' });
const loss = (share: number): number => 0.45 * 0.85 * Math.sqrt(share);

const zones = [zoneThing('A', 1), zoneThing('B', 3), zoneThing('C', 2, 2)];
const scored = (made: readonly Made[], more = {}) => scoreRound(recordOf(zones, made, more), roundName(2026));
const codes = (reasons: readonly { readonly code: string }[]): string[] => reasons.map(({ code }) => code);

describe('the index of a sculpture', () => {
  it('is the mean of its zones by area x significance', () => {
    const score = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', findings: [green('20')] },
      { zone: 'C' },
    ]);
    const expected = (1 * 100 * (1 - loss(0.5)) + 3 * 100 * (1 - loss(0.2)) + 2 * 2 * 100) / 8;
    expect(score.value).toBeCloseTo(expected, 10);
    expect(score.low).toBeLessThan(expected);
    expect(score.high).toBeGreaterThan(expected);
    expect(score.seenShare).toBe(1);
    expect(score.scale).toBe('2026.1');
  });

  it('rests on the zones looked at alone, and says the share seen and what the rest could make of it', () => {
    const score = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', findings: [green('20')] },
      { zone: 'C', state: 'not looked', visit: { reason: 'nest' } },
    ]);
    const [a, b] = [100 * (1 - loss(0.5)), 100 * (1 - loss(0.2))];
    expect(score.value).toBeCloseTo((a + 3 * b) / 4, 10);
    expect(score.seenShare).toBeCloseTo(4 / 6, 12);
    expect(score.ifUnseenBest).toBeCloseTo((a + 3 * b + 4 * b) / 8, 10);
    expect(score.ifUnseenWorst).toBeCloseTo((a + 3 * b + 4 * a) / 8, 10);
    expect(score.unscored).toEqual([
      {
        zone: zoneName('C'),
        standing: 'not looked',
        m2: 2,
        reasons: [{ code: 'score: not looked', params: { why: 'nest' } }],
      },
    ]);
    expect(score.reasons).toContainEqual({ code: 'score: share seen', params: { percent: 67, seen: 2, zones: 3 } });
  });

  it('keeps "not looked" and "nothing found" apart: a zone nobody saw does not read as sound', () => {
    const nothing = scored([{ zone: 'A', findings: [green('50')] }, { zone: 'B' }, { zone: 'C' }]);
    const notLooked = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', state: 'not looked' },
      { zone: 'C', state: 'not looked' },
    ]);
    expect(notLooked.value).toBeLessThan(nothing.value ?? 0);
    expect(notLooked.zones).toHaveLength(1);
  });

  it('is none where no zone was looked at, and nothing stands in for it', () => {
    const score = scored([{ zone: 'A', state: 'not looked' }]);
    expect(score).toMatchObject({
      value: null,
      low: null,
      high: null,
      seenShare: 0,
      ifUnseenBest: null,
      ifUnseenWorst: null,
      weakest: null,
      shareCC3: 0,
    });
    expect(score.active.green.value).toBe(0);
    expect(score.unscored.map(({ standing }) => standing)).toEqual(['not looked', 'not visited', 'not visited']);
    expect(codes(score.reasons)).toContain('score: no zone looked at');
  });

  it('names the weakest zone and the share of area whose signs are strong', () => {
    const score = scored([{ zone: 'A', findings: [pits] }, { zone: 'B', findings: [green('5')] }, { zone: 'C' }]);
    expect(score.weakest?.zone).toBe(zoneName('A'));
    expect(score.shareCC3).toBeCloseTo(1 / 6, 12);
  });

  it('adds active areas of the zones, the day’s effect on all of them once', () => {
    const score = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', findings: [green('20')] },
      { zone: 'C' },
    ]);
    const { value, low, high } = score.active.green;
    expect(value).toBeCloseTo(1 * 0.5 + 3 * 0.2, 12);
    const own = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', findings: [green('20')] },
      { zone: 'C' },
    ]).zones;
    const ownUp = Math.hypot(...own.map((zone) => zone.active.green.high - zone.active.green.value));
    expect(high - value).toBeGreaterThan(1.05 * ownUp);
    expect(low).toBeLessThan(value);
  });

  it('has a wider range than its zones alone would give, for light and damp do not average out', () => {
    const score = scored([
      { zone: 'A', findings: [green('50')] },
      { zone: 'B', findings: [green('20')] },
      { zone: 'C' },
    ]);
    const weights = [1, 3, 4];
    const alone = Math.hypot(...score.zones.map((zone, i) => ((zone.value - zone.low) * (weights[i] ?? 0)) / 8));
    expect((score.value ?? 0) - (score.low ?? 0)).toBeGreaterThan(1.05 * alone);
    expect(codes(score.reasons)).toContain('score: day effect counted once');
  });

  it('says when numbers rest on two versions nobody settled, in the zone and in the whole', () => {
    const record = recordOf(zones, [{ zone: 'A', findings: [green('5')] }, { zone: 'B' }]);
    const findings = record.findings.map((thing) => ({ ...thing, heads: ['one', 'other'] }));
    const score = scoreRound({ ...record, findings }, roundName(2026));
    const said = { code: 'score: two versions, not settled', params: { things: 1 } };
    expect(score.reasons).toContainEqual(said);
    expect(score.zones[0]?.reasons).toContainEqual(said);
    expect(score.zones[1]?.reasons).not.toContainEqual(said);
  });

  it('does not say so of two versions it does not rest on', () => {
    const score = scored([{ zone: 'A' }], { unsettled: ['photo/x'] });
    expect(codes(score.reasons)).not.toContain('score: two versions, not settled');
  });

  it('says when the record holds things it does not know', () => {
    const score = scored([{ zone: 'A' }], { unknown: [{ thing: 'drone/1', kind: 'drone' }] });
    expect(codes(score.reasons)).toContain('score: things not known');
  });

  it('refuses a round that is not this sculpture’s', () => {
    expect(() => scoreRound(recordOf(zones, []), 'round/other')).toThrow(/no round round\/other/);
  });
});

describe('answers carried over', () => {
  const lastYear = { zone: 'C', year: 2025, findings: [green('30')] };
  const carriedVisit = { zone: 'C', state: 'carried' as const, visit: { carriedFrom: roundName(2025) } };

  it('stand in a second figure, never in the index', () => {
    const looked = [{ zone: 'A', findings: [green('50')] }, { zone: 'B' }];
    const score = scored([...looked, carriedVisit, lastYear]);
    expect(score.value).toBe(scored(looked).value);
    const [a, c] = [100 * (1 - loss(0.5)), 100 * (1 - loss(0.3))];
    expect(score.withCarried?.value).toBeCloseTo((a + 300 + 4 * c) / 8, 10);
    expect(score.seenShare).toBeCloseTo(4 / 6, 12);
  });

  it('are followed back to the round that looked, however many rounds they were carried on', () => {
    const record = recordOf(zones, [
      carriedVisit,
      { zone: 'C', year: 2025, state: 'carried', visit: { carriedFrom: roundName(2024) } },
      { zone: 'C', year: 2024, findings: [green('10')] },
    ]);
    const score = scoreRound(record, roundName(2026));
    expect(score.value).toBeNull();
    expect(score.withCarried?.value).toBeCloseTo(100 * (1 - loss(0.1)), 10);
  });

  it('that lead in a ring, or to a round nobody looked in, count for nothing and end', () => {
    const ring = recordOf(zones, [
      carriedVisit,
      { zone: 'C', year: 2025, state: 'carried', visit: { carriedFrom: roundName(2026) } },
    ]);
    expect(scoreRound(ring, roundName(2026)).withCarried).toBeUndefined();
    const lost = recordOf(zones, [carriedVisit, { zone: 'C', year: 2025, state: 'not looked' }]);
    expect(scoreRound(lost, roundName(2026)).withCarried).toBeUndefined();
  });

  it('in part of a zone take the whole zone out of the index, or leaving them out would make it look better', () => {
    const half = [green('5'), { ...pits, carriedFrom: roundName(2025) }];
    const record = recordOf(zones, [{ zone: 'A', findings: half }, { zone: 'B' }]);
    const score = scoreRound(record, roundName(2026));
    expect(score.zones.map(({ zone }) => zone)).toEqual([zoneName('B')]);
    expect(score.unscored[0]).toMatchObject({
      standing: 'partly carried',
      reasons: [{ code: 'score: partly carried', params: { carried: 1, judged: 1 } }],
    });
    expect(score.withCarried?.value).toBeLessThan(100);
    const [round, zone] = [record.rounds.find(({ thing }) => thing === roundName(2026)), record.zones[0]];
    if (!round || !zone) throw new Error('the record was made with both');
    expect(zoneInRound(record, round, zone).standing).toBe('partly carried');
  });
});
