import { describe, expect, test } from 'vitest';
import { thenAndNow } from '../../../src/engine/change';
import { coverageSd } from '../../../src/engine/condition';
import type { KnownEye } from '../../../src/engine/record';
import { pairOf, roundName } from './invented';

const logit = (p: number) => Math.log(p / (1 - p));
const sdAt = (p: number, low: number, high: number, sd: number) =>
  coverageSd({ value: p, low, high, method: 'ladder' }, { sd });
const steward = 'surveyor/steward';
const helper = 'surveyor/helper';

const compare = (from: number, to: number, eyes: Readonly<Record<string, KnownEye>>, surveyor = steward) =>
  thenAndNow({ ...pairOf([{ cover: from }], [{ cover: to }], { surveyor }), eyes }, roundName(0), roundName(1));

describe('Two rounds held against each other by known eyes', () => {
  const steady = { [steward]: { sd: 0.2, pairs: 40, patches: 12 } };
  const unsteady = { [steward]: { sd: 0.6, pairs: 9 } };

  test('each side takes the spread of its own surveyor, and the day and the persons are added once', () => {
    const eyes = { [steward]: { sd: 0.2, pairs: 40 }, [helper]: { sd: 0.6, pairs: 9 } };
    const z = compare(0.15, 0.2, eyes, helper).findings[0]?.z;
    const variance = sdAt(0.15, 0.125, 0.175, 0.2) ** 2 + sdAt(0.2, 0.175, 0.25, 0.6) ** 2 + 2 * 0.15 ** 2 + 0.35 ** 2;
    expect(z).toBeCloseTo((logit(0.2) - logit(0.15)) / Math.sqrt(variance), 9);
  });

  test('a steady eye needs less for a real difference, an unsteady one more', () => {
    const reach = (eyes: Readonly<Record<string, KnownEye>>) => compare(0.2, 0.2, eyes).findings[0]?.smallest;
    const [sure, usual, unsure] = [reach(steady), reach({}), reach(unsteady)];
    expect(sure?.up).toBeLessThan(usual?.up ?? 0);
    expect(unsure?.up).toBeGreaterThan(usual?.up ?? 1);
    expect(sure?.down).toBeGreaterThan(usual?.down ?? 1);
  });

  test('what is called real beside the figure is what the verdict calls real', () => {
    for (const eyes of [steady, {}, unsteady]) {
      const up = compare(0.2, 0.2, eyes).findings[0]?.smallest?.up ?? 1;
      const at = (cover: number) => compare(0.2, cover, eyes).findings[0]?.verdict;
      if (up < 0.85) expect(at(0.9)).toBe('worse');
      expect(at(0.2)).toBe('no sure change');
    }
  });

  test('zones and the work are told with the same eyes', () => {
    const width = (eyes: Readonly<Record<string, KnownEye>>) => {
      const { zones, sculpture } = compare(0.2, 0.3, eyes);
      const later = zones[0]?.later;
      return [(later?.high ?? 0) - (later?.low ?? 0), sculpture.active.green.difference.high];
    };
    const [sure, unsure] = [width(steady), width(unsteady)];
    expect(unsure[0]).toBeGreaterThan(sure[0] ?? 1);
  });

  test('whose own spread was used is said, once for each person; where none is known, nothing is', () => {
    const told = (eyes: Readonly<Record<string, KnownEye>>, surveyor?: string) =>
      compare(0.2, 0.3, eyes, surveyor).reasons.filter(({ code }) => code === 'change: own eye');
    expect(told(steady)).toEqual([
      { code: 'change: own eye', params: { surveyor: steward, sd: 0.2, pairs: 40, patches: 12 } },
    ]);
    expect(told({ ...steady, [helper]: { sd: 0.4, pairs: 3 } }, helper)).toHaveLength(2);
    expect(told({})).toEqual([]);
  });
});
