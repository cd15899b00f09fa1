import { describe, expect, it } from 'vitest';
import { contributionsOf, scoreRound, workContributions } from '../../../src/engine/condition';
import { findingBody, onLadder, recordOf, roundName, zoneThing } from './madeUp';

const record = recordOf(
  [zoneThing('A', 2), zoneThing('B', 3, 1.5), zoneThing('C', 1)],
  [
    {
      zone: 'A',
      findings: [
        findingBody('green-spots', { coverage: onLadder('20') }),
        findingBody('sooty-deposit', { coverage: onLadder('10') }),
      ],
    },
    { zone: 'B', findings: [findingBody('green-spots', { coverage: onLadder('50'), severity: 'severe' })] },
    { zone: 'C' },
  ],
);
const score = scoreRound(record, roundName(2026));
const sum = (rows: readonly { readonly points: number }[]) => rows.reduce((all, { points }) => all + points, 0);

describe('What each finding takes off', () => {
  it('adds up to what is missing from 100, in each zone and in the work', () => {
    for (const zone of score.zones) expect(sum(contributionsOf(zone))).toBeCloseTo(100 - zone.value, 9);
    expect(sum(workContributions(score.zones))).toBeCloseTo(100 - (score.value ?? Number.NaN), 9);
  });

  it('comes with the most first, and a sound zone has none', () => {
    const [first] = workContributions(score.zones);
    expect(first?.finding.zone).toBe('zone/B');
    expect(contributionsOf(score.zones.find(({ zone }) => zone === 'zone/C') ?? (undefined as never))).toEqual([]);
    expect(workContributions([])).toEqual([]);
  });
});
