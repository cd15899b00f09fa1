import { describe, expect, it } from 'vitest';
import { coverageSd, scoreRound } from '../../../src/engine/condition';
import type { KnownEye, SculptureRecord } from '../../../src/engine/record';
import { findingBody, type Made, onLadder, recordOf, roundName, zoneThing } from './madeUp';

const green = (coverage = onLadder('20')) => findingBody('even-green-film', coverage ? { coverage } : {});
const dots = { value: 0.2, low: 0.15, high: 0.26, method: 'dots' as const };

const by = (surveyor: string, made: readonly Made[], eyes: Readonly<Record<string, KnownEye>>): SculptureRecord => {
  const record = recordOf([zoneThing('A', 1), zoneThing('B', 2)], made, { eyes });
  return { ...record, rounds: record.rounds.map((r) => ({ ...r, body: { ...r.body, surveyor } })) };
};
const widthOf = (record: SculptureRecord): number => {
  const { low, high } = scoreRound(record, roundName(2026));
  return (high ?? 0) - (low ?? 0);
};
const told = (record: SculptureRecord) =>
  scoreRound(record, roundName(2026)).zones.flatMap(({ reasons }) =>
    reasons.filter((r) => r.code === 'score: own eye'),
  );

describe('A round scored by a surveyor whose own spread is known', () => {
  const made = [{ zone: 'A', findings: [green()] }, { zone: 'B' }];
  const eyes = { 'surveyor/a': { sd: 0.55, pairs: 14, patches: 24 }, 'surveyor/b': { sd: 0.2, pairs: 40 } };

  it('uses it in place of the assumed one, and says so with what it rests on', () => {
    const [unknown, unsteady, steady] = ['surveyor/c', 'surveyor/a', 'surveyor/b'].map((who) => by(who, made, eyes));
    if (!unknown || !unsteady || !steady) throw new Error('three surveyors');
    expect(widthOf(unsteady)).toBeGreaterThan(widthOf(unknown));
    expect(widthOf(steady)).toBeLessThan(widthOf(unknown));
    expect(told(unsteady)).toEqual([{ code: 'score: own eye', params: { sd: 0.55, pairs: 14, patches: 24 } }]);
    expect(told(unknown)).toEqual([]);
    const whole = scoreRound(unsteady, roundName(2026)).reasons.filter(({ code }) => code === 'score: own eye');
    expect(whole).toHaveLength(1);
  });

  it('keeps the value and the entry as they are', () => {
    const [plain, own] = [by('surveyor/c', made, eyes), by('surveyor/a', made, eyes)];
    expect(scoreRound(own, roundName(2026)).value).toBe(scoreRound(plain, roundName(2026)).value);
    expect(own.findings).toEqual(plain.findings);
  });

  it('adds bin, half point and the own spread once each', () => {
    expect(coverageSd({ value: 0.2, low: 0.175, high: 0.25, method: 'ladder' }, { sd: 0.55 })).toBeCloseTo(
      Math.sqrt(0.55 ** 2 + (0.005 / 0.16) ** 2 + (0.075 / 0.16) ** 2 / 12),
      12,
    );
  });

  it('says nothing of an eye where dots were counted, and does not use it', () => {
    const counted = [{ zone: 'A', findings: [green(dots)] }, { zone: 'B' }];
    expect(widthOf(by('surveyor/a', counted, eyes))).toBe(widthOf(by('surveyor/c', counted, eyes)));
    expect(told(by('surveyor/a', counted, eyes))).toEqual([]);
  });

  it('does not lend it to answers carried over, which may be another eye’s', () => {
    const from = roundName(2025);
    const carried = [
      { zone: 'A', findings: [green()] },
      { zone: 'B', state: 'carried' as const, visit: { carriedFrom: from }, findings: [] },
      { zone: 'B', year: 2025, findings: [green(onLadder('40'))] },
    ];
    const second = (who: string) => scoreRound(by(who, carried, eyes), roundName(2026)).withCarried;
    expect(second('surveyor/a')?.value).toBe(second('surveyor/c')?.value);
    const alone = [carried[1], carried[2]] as Made[];
    const onlyCarried = (who: string) => scoreRound(by(who, alone, eyes), roundName(2026)).withCarried;
    expect(onlyCarried('surveyor/a')).toEqual(onlyCarried('surveyor/c'));
  });
});
