import { describe, expect, it } from 'vitest';
import { classesOf, scoreRound } from '../../../src/engine/condition';
import { firstPass, secondPass } from '../../../src/engine/reckoning';
import { findingBody, onLadder, recordOf, roundName, zoneThing } from '../condition/madeUp';

const zones = [zoneThing('A', 1), zoneThing('B', 2)];
const mounds = findingBody('light-spots', { coverage: onLadder('3') });
const green = (label: string) => findingBody('even-green-film', { coverage: onLadder(label), severity: 'moderate' });
const record = recordOf(zones, [
  { zone: 'A', year: 2025, findings: [green('3'), mounds] },
  { zone: 'B', year: 2025 },
  { zone: 'A', findings: [green('40'), mounds] },
  { zone: 'B', findings: [green('<1')] },
]);

describe('what a work comes to', () => {
  it('is the same from the small record that is kept as from the whole one', () => {
    const first = firstPass(record, '2026-10-15');
    const { need } = secondPass(first, [], '2026-10-15');
    const whole = classesOf(record, roundName(2026), {
      score: scoreRound(record, roundName(2026)),
      clearlyWorse: first.clearlyWorse ?? new Set(),
    });
    expect(need?.classes).toEqual(whole);
    expect(first.clearlyWorse).toEqual(new Set(['zone/A']));
    expect(first.record.findings.length).toBeLessThan(record.findings.length + 1);
  });

  it('keeps of an earlier round only that a finding was there', () => {
    const { record: kept } = firstPass(record, '2026-10-15');
    expect(kept.rounds).toEqual(record.rounds);
    expect(kept.visits.every(({ body }) => body.round === roundName(2026))).toBe(true);
    expect(kept.findings.filter(({ body }) => body.round !== roundName(2026)).map(({ body }) => body.kind)).toEqual([
      'even-green-film',
      'light-spots',
    ]);
  });

  it('is said to be nothing where nobody has looked yet', () => {
    const empty = recordOf(zones, [], { rounds: [] });
    const first = firstPass(empty, '2026-10-15');
    expect(first).toMatchObject({ round: null, score: null });
    expect(secondPass(first, [], '2026-10-15')).toMatchObject({
      need: null,
      summary: { round: null, index: null, zones: 2 },
    });
  });
});
