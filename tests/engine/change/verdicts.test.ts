import { describe, expect, test } from 'vitest';
import { type FindingChange, thenAndNow } from '../../../src/engine/change';
import { scoreRound } from '../../../src/engine/condition';
import { kindOf } from '../../../src/engine/trade';
import { codes, type InventedVisit, invented, pairOf, roundName, zoneName } from './invented';

const compare = (record: ReturnType<typeof invented>) => thenAndNow(record, roundName(0), roundName(1));
const only = (then: InventedVisit, now: InventedVisit, more = {}): FindingChange => {
  const found = compare(pairOf(then, now, more)).findings;
  expect(found).toHaveLength(1);
  return found[0] as FindingChange;
};

// By hand, for 20 % then and 50 % now, both on the ladder: var = 0.3^2 + (0.005 / p(1-p))^2 + (bin / p(1-p))^2 / 12.
const var20 = 0.09 + (0.005 / 0.16) ** 2 + (0.075 / 0.16) ** 2 / 12;
const var50 = 0.09 + (0.005 / 0.25) ** 2 + (0.15 / 0.25) ** 2 / 12;
const day = 0.15 ** 2;

describe('a finding', () => {
  test('20 % then, 50 % now: the difference on the logit over its error, the day counted for both rounds', () => {
    const f = only([{ cover: 0.2 }], [{ cover: 0.5 }]);
    expect(f.z).toBeCloseTo(Math.log(4) / Math.sqrt(var20 + var50 + 2 * day), 10);
    expect(f.verdict).toBe('worse');
    expect(f.clearly).toBe(false);
  });

  test('the same seen by two persons is less sure: their difference of 0.35 comes on top', () => {
    const f = only([{ cover: 0.2 }], [{ cover: 0.5 }], { surveyor: 'surveyor/stand-in' });
    expect(f.z).toBeCloseTo(Math.log(4) / Math.sqrt(var20 + var50 + 2 * day + 0.35 ** 2), 10);
  });

  test('where it was not said who looked, two persons are assumed', () => {
    const said = only([{ cover: 0.2 }], [{ cover: 0.5 }]);
    const notSaid = only([{ cover: 0.2 }], [{ cover: 0.5 }], { surveyor: '' });
    expect(notSaid.z).toBeLessThan(said.z ?? 0);
    const record = pairOf([{ cover: 0.2 }], [{ cover: 0.5 }], { surveyor: '' });
    expect(codes(compare(record).reasons)).toContain('change: surveyor not said');
  });

  test('10 % then, 70 % now is clearly worse, and back clearly better', () => {
    expect(only([{ cover: 0.1 }], [{ cover: 0.7 }])).toMatchObject({
      verdict: 'worse',
      clearly: true,
      clearlyWorse: true,
    });
    expect(only([{ cover: 0.7 }], [{ cover: 0.1 }])).toMatchObject({
      verdict: 'better',
      clearly: true,
      clearlyWorse: false,
    });
  });

  test('20 % then, 30 % now is no change you can be sure of', () => {
    expect(only([{ cover: 0.2 }], [{ cover: 0.3 }])).toMatchObject({ verdict: 'no sure change', clearlyWorse: false });
  });

  test('what dots or a photo measured does not move with the light of the day', () => {
    const dots = (cover: number, low: number, high: number) => ({ cover, method: 'dots', range: [low, high] }) as const;
    const f = only([dots(0.2, 0.13, 0.29)], [dots(0.5, 0.4, 0.6)]);
    const sd = (low: number, high: number) =>
      (Math.log(high / (1 - high)) - Math.log(low / (1 - low))) / (2 * 1.6448536);
    expect(f.z).toBeCloseTo(Math.log(4) / Math.hypot(sd(0.13, 0.29), sd(0.4, 0.6)), 5);
  });

  test('by eye then and traced now is compared, and said', () => {
    const f = only([{ cover: 0.2 }], [{ cover: 0.5, method: 'traced', range: [0.5, 0.5] }]);
    expect(codes(f.reasons)).toContain('change: judged in different ways');
  });

  test('a change the surveyor called "same" says so', () => {
    const f = only([{ cover: 0.1 }], [{ cover: 0.5, against: 'same' }]);
    expect(f.verdict).toBe('worse');
    expect(codes(f.reasons)).toContain('change: said to be the same');
  });

  test('where she said last year was wrong, the difference is no change of the bronze', () => {
    const f = only([{ cover: 0.1 }], [{ cover: 0.7, against: 'earlier was wrong' }]);
    expect(f).toMatchObject({ verdict: 'not comparable', z: null });
    expect(codes(f.reasons)).toEqual(['change: earlier said to be wrong']);
  });

  test('that word speaks of the round before, not of one six years ago', () => {
    const record = invented({
      zones: { A: {} },
      rounds: [
        { date: '2020-05-10', saw: { A: [{ cover: 0.1 }] } },
        { date: '2025-05-10', saw: { A: [{ cover: 0.1 }] } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.7, against: 'earlier was wrong' }] } },
      ],
    });
    expect(thenAndNow(record, roundName(0), roundName(2)).findings[0]?.verdict).toBe('worse');
    expect(thenAndNow(record, roundName(1), roundName(2)).findings[0]?.verdict).toBe('not comparable');
  });
});

describe('new and gone', () => {
  test('"nothing found" counts as 0.3 % with an error of 0.9', () => {
    const f = only('nothing', [{ cover: 0.2 }]);
    const logit = (p: number) => Math.log(p / (1 - p));
    expect(f.z).toBeCloseTo((logit(0.2) - logit(0.003)) / Math.sqrt(0.81 + var20 + 2 * day), 10);
    expect(f).toMatchObject({ verdict: 'worse', named: [{ what: 'new' }], earlier: { state: 'nothing' } });
  });

  test('a new "<1" may have been missed before', () => {
    const f = only('nothing', [{ cover: 0.005 }]);
    expect(f).toMatchObject({ verdict: 'no sure change', named: [{ what: 'new' }] });
    expect(codes(f.reasons)).toContain('change: new, small: may have been missed before');
  });

  test('a new speck smaller than what "nothing found" stands for is not called better', () => {
    const speck = only('nothing', [{ cover: 0.001, method: 'photo', range: [0.0009, 0.0011] }]);
    expect(speck).toMatchObject({ verdict: 'no sure change', named: [{ what: 'new' }] });
    expect(speck.z).toBeGreaterThanOrEqual(0);
  });

  test('a "<1" that was there before is not called new', () => {
    const f = only([{ cover: 0.005 }], [{ cover: 0.005 }]);
    expect(f.named).toEqual([]);
    expect(f.reasons).toEqual([]);
  });

  test('with photos of both rounds it is the photos that say', () => {
    const record = invented({
      zones: { A: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: 'nothing' }, photos: { A: ['photo/a'] } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.005, photos: ['photo/b'] }] } },
      ],
    });
    const reasons = codes(compare(record).findings[0]?.reasons ?? []);
    expect(reasons).toContain('change: new, small: photos of both rounds');
    expect(reasons).not.toContain('change: new, small: may have been missed before');
  });

  test('cleared is gone, and surely better from 20 %, not surely from "<1"', () => {
    expect(only([{ cover: 0.2 }], [{ cover: 0, cleared: true }])).toMatchObject({
      verdict: 'better',
      named: [{ what: 'gone' }],
      later: { state: 'nothing' },
    });
    expect(only([{ cover: 0.005 }], [{ cover: 0, cleared: true }])).toMatchObject({
      verdict: 'no sure change',
      named: [{ what: 'gone' }],
    });
  });

  test('"nothing found" now says of each finding then that it is gone', () => {
    expect(only([{ cover: 0.2 }], 'nothing')).toMatchObject({ verdict: 'better', named: [{ what: 'gone' }] });
  });

  test('a finding nobody spoke of again is not taken as gone', () => {
    const t = compare(pairOf([{ cover: 0.2 }, { kind: 'lichen', cover: 0.1 }], [{ cover: 0.2 }]));
    const lichen = t.findings.find((f) => f.kind === 'lichen');
    expect(lichen).toMatchObject({ verdict: 'not comparable', z: null, named: [] });
    expect(codes(lichen?.reasons ?? [])).toEqual(['change: not spoken of']);
    expect(codes(t.zones[0]?.reasons ?? [])).toContain('change: some findings left out');
    expect(t.zones[0]?.z).toBe(0);
  });
});

describe('severity, activity and count', () => {
  test('are named, and do not move the verdict on coverage', () => {
    const f = only([{ cover: 0.2 }], [{ cover: 0.2, severity: 'severe', activity: 'active' }]);
    expect(f).toMatchObject({
      verdict: 'no sure change',
      z: 0,
      named: [
        { what: 'severity', from: 'moderate', to: 'severe' },
        { what: 'activity', from: 'unclear', to: 'active' },
      ],
    });
  });

  test('a zone whose index fell by a step of severity alone says that it rests on it, and is never called clear', () => {
    const zone = compare(pairOf([{ cover: 0.3, severity: 'slight' }], [{ cover: 0.3, severity: 'severe' }])).zones[0];
    expect(zone).toMatchObject({ verdict: 'worse', clearly: false, clearlyWorse: false });
    expect(codes(zone?.reasons ?? [])).toContain('change: rests on a step');
  });

  test('growth that would be sure with either severity does not rest on the step', () => {
    const zone = compare(pairOf([{ cover: 0.05, severity: 'slight' }], [{ cover: 0.7, severity: 'severe' }])).zones[0];
    expect(zone).toMatchObject({ verdict: 'worse', clearly: true });
    expect(codes(zone?.reasons ?? [])).not.toContain('change: rests on a step');
  });

  test('growth that is sure by itself and clear only through a step is worse, and not called clear', () => {
    const zone = compare(pairOf([{ cover: 0.2, severity: 'slight' }], [{ cover: 0.5, severity: 'severe' }])).zones[0];
    expect(zone?.z).toBeGreaterThan(2 * 1.96);
    expect(zone).toMatchObject({ verdict: 'worse', clearly: false });
    expect(codes(zone?.reasons ?? [])).not.toContain('change: rests on a step');
  });

  test('green said to be stable now leaves the active area by a step, not by shrinking', () => {
    const green = compare(pairOf([{ cover: 0.3 }], [{ cover: 0.3, activity: 'stable' }])).sculpture.active.green;
    expect(green.earlier.value).toBeCloseTo(0.3, 12);
    expect(green.later.value).toBe(0);
    expect(green).toMatchObject({ verdict: 'better', clearly: false });
    expect(codes(green.reasons)).toContain('change: rests on a step');
  });

  test('a count is told by its class and never given a z', () => {
    const kind = 'pits-new';
    expect(kindOf(kind)?.measure).toBe('count');
    const f = only([{ kind, count: 'one' }], [{ kind, count: 'more' }]);
    expect(f).toMatchObject({
      verdict: 'worse',
      z: null,
      clearly: false,
      clearlyWorse: false,
      named: [{ what: 'count', from: 'one', to: 'more' }],
      smallest: null,
    });
    expect(codes(f.reasons)).toContain('change: counted, error not known');
    expect(only([{ kind, count: 'more' }], [{ kind, count: 'one' }]).verdict).toBe('better');
    expect(only([{ kind, count: 'one' }], [{ kind, count: 'one' }]).verdict).toBe('no sure change');
    expect(only('nothing', [{ kind, count: 'one' }])).toMatchObject({ verdict: 'worse', named: [{ what: 'new' }] });
  });

  test('a zone in which only a count rose is worse by a step', () => {
    const kind = 'pits-new';
    const t = compare(pairOf([{ kind, count: 'one' }], [{ kind, count: 'more' }]));
    expect(t.zones[0]).toMatchObject({ verdict: 'worse', z: null, clearly: false });
    expect(t.comparisons).toBe(0);
    expect(t.expectedByChance).toBe(0);
  });
});

describe('what was not judged', () => {
  test('a carried zone is carried, in both directions, and stands in no sum', () => {
    for (const [then, now] of [
      [[{ cover: 0.2 }], 'carried'],
      ['carried', [{ cover: 0.7 }]],
    ] as const) {
      const t = compare(pairOf(then, now));
      expect(t.zones[0]?.verdict).toBe('carried');
      expect(t.findings.map((f) => f.verdict)).toEqual(['carried']);
      expect(t.sculpture.index.verdict).toBe('not comparable');
      expect(t.sculpture).toMatchObject({ zonesBoth: 0, zonesAll: 1, areaShare: 0 });
      expect(t.comparisons).toBe(0);
    }
  });

  test('one carried finding is left out of its zone, the others are compared', () => {
    const t = compare(
      pairOf(
        [{ cover: 0.2 }, { kind: 'lichen', cover: 0.1 }],
        [{ cover: 0.2 }, { kind: 'lichen', cover: 0.1, carried: true }],
      ),
    );
    expect(t.findings.map((f) => [f.kind, f.verdict])).toEqual([
      ['even-green-film', 'no sure change'],
      ['lichen', 'carried'],
    ]);
    expect(t.zones[0]?.verdict).toBe('no sure change');
    expect(codes(t.zones[0]?.reasons ?? [])).toContain('change: some findings left out');
  });

  test('a zone not looked at is not comparable, says why, and the work is compared without it', () => {
    const record = invented({
      zones: { A: { m2: 3 }, B: { m2: 1 } },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.2 }], B: [{ cover: 0.7 }] } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.2 }], B: 'not looked' } },
      ],
    });
    const t = compare(record);
    expect(t.zones[1]).toMatchObject({ zone: zoneName('B'), verdict: 'not comparable', earlier: null });
    expect(t.zones[1]?.reasons[0]).toEqual({
      code: 'change: not looked now',
      params: { round: roundName(1), why: 'out of reach' },
    });
    expect(t.findings[1]).toMatchObject({ verdict: 'not comparable', later: { state: 'not looked' } });
    expect(t.sculpture).toMatchObject({ zonesBoth: 1, zonesAll: 2, areaShare: 0.75 });
    expect(t.sculpture.active.green.difference.value).toBe(0);
  });

  test('a zone nobody came to is not comparable either', () => {
    const record = invented({
      zones: { A: {}, B: {} },
      rounds: [
        { date: '2025-05-10', saw: { A: 'nothing' } },
        { date: '2026-05-10', saw: { A: 'nothing', B: [{ cover: 0.1 }] } },
      ],
    });
    expect(codes(compare(record).zones[1]?.reasons ?? [])).toEqual(['change: not visited then']);
  });

  test('a kind this version does not know is shown, not compared, and said', () => {
    const f = only([{ kind: 'moon-dust', cover: 0.1 }], [{ kind: 'moon-dust', cover: 0.9 }]);
    expect(f).toMatchObject({ verdict: 'not comparable', z: null });
    expect(codes(f.reasons)).toEqual(['change: kind not known']);
  });

  test('a zone sound both times has no sure change and adds no comparison', () => {
    const t = compare(pairOf('nothing', 'nothing'));
    expect(t.zones[0]).toMatchObject({
      verdict: 'no sure change',
      z: null,
      earlier: { value: 100 },
      later: { value: 100 },
    });
    expect(t.comparisons).toBe(0);
  });

  test('two versions nobody settled are said at the finding, the zone and the work', () => {
    const record = pairOf([{ cover: 0.2 }], [{ cover: 0.7 }]);
    const finding = record.findings[1]?.thing ?? '';
    const t = compare({ ...record, unsettled: [finding] });
    for (const reasons of [t.findings[0]?.reasons, t.zones[0]?.reasons, t.sculpture.index.reasons]) {
      expect(reasons).toContainEqual({ code: 'change: two versions, not settled', params: { things: 1 } });
    }
  });
});

describe('a zone and the work', () => {
  const k = (kindOf('even-green-film')?.hazard ?? 0) * 0.7 * 0.85;
  const c = (p: number) => -Math.log(1 - k * Math.sqrt(p));
  const slope = (p: number) => (k * 0.5 * Math.sqrt(p) * (1 - p)) / (1 - k * Math.sqrt(p));

  test('a zone is compared on -ln Z, the error of each coverage carried by its slope', () => {
    const zone = compare(pairOf([{ cover: 0.2 }], [{ cover: 0.5 }])).zones[0];
    const error = Math.sqrt(slope(0.2) ** 2 * (var20 + day) + slope(0.5) ** 2 * (var50 + day));
    expect(zone?.z).toBeCloseTo((c(0.5) - c(0.2)) / error, 5);
    expect(zone?.earlier?.value).toBeCloseTo(100 * Math.exp(-c(0.2)), 9);
  });

  test('active area is compared in m2: p (1 - p) carries the error', () => {
    const green = compare(pairOf([{ cover: 0.2 }], [{ cover: 0.5 }])).sculpture.active.green;
    const error = Math.sqrt(0.16 ** 2 * (var20 + day) + 0.25 ** 2 * (var50 + day));
    expect(green.z).toBeCloseTo(0.3 / error, 10);
    expect(green.difference).toMatchObject({ value: expect.closeTo(0.3, 12) });
    expect(green.difference.high - 0.3).toBeCloseTo(1.6448536 * error, 6);
  });

  test('the day is shared by all zones of a round: over four equal zones own errors halve, the shared one stays', () => {
    const saw = (cover: number) => ({ A: [{ cover }], B: [{ cover }], C: [{ cover }], D: [{ cover }] });
    const record = invented({
      zones: { A: {}, B: {}, C: {}, D: {} },
      rounds: [
        { date: '2025-05-10', saw: saw(0.2) },
        { date: '2026-05-10', saw: saw(0.5) },
      ],
    });
    const own = 4 * (0.16 ** 2 * var20 + 0.25 ** 2 * var50);
    const shared = day * ((4 * 0.16) ** 2 + (4 * 0.25) ** 2);
    expect(compare(record).sculpture.active.green.z).toBeCloseTo(1.2 / Math.sqrt(own + shared), 10);
  });

  test('the indices are those the scoring gives where every zone was looked at both times', () => {
    const record = invented({
      zones: { A: { m2: 2, significance: 1.5 }, B: { m2: 1 } },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.2 }, { kind: 'lichen', cover: 0.1 }], B: 'nothing' } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.5 }, { kind: 'lichen', cover: 0.1 }], B: [{ cover: 0.05 }] } },
      ],
    });
    const t = compare(record);
    for (const [side, round] of [
      ['earlier', roundName(0)],
      ['later', roundName(1)],
    ] as const) {
      const score = scoreRound(record, round);
      expect(t.sculpture.index[side]?.value).toBeCloseTo(score.value ?? 0, 9);
      expect(t.sculpture.active.green[side].value).toBeCloseTo(score.active.green.value, 9);
      for (const zone of score.zones) {
        const told = t.zones.find((z) => z.zone === zone.zone)?.[side];
        expect(told).toMatchObject({
          value: expect.closeTo(zone.value, 9),
          low: expect.closeTo(zone.low, 9),
          high: expect.closeTo(zone.high, 9),
        });
      }
    }
  });

  test('the zones that carry the growth stand first, and together they make the difference', () => {
    const record = invented({
      zones: { A: { m2: 1 }, B: { m2: 4 }, C: { m2: 2 }, D: { m2: 1 } },
      rounds: [
        { date: '2025-05-10', saw: { A: [{ cover: 0.1 }], B: [{ cover: 0.1 }], C: [{ cover: 0.3 }], D: 'nothing' } },
        { date: '2026-05-10', saw: { A: [{ cover: 0.3 }], B: [{ cover: 0.2 }], C: [{ cover: 0.2 }], D: 'nothing' } },
      ],
    });
    const { contributions, difference } = compare(record).sculpture.active.green;
    expect(contributions.map(({ zone }) => zone)).toEqual([zoneName('B'), zoneName('A'), zoneName('C')]);
    expect(contributions.map(({ m2 }) => Math.round(m2 * 1000) / 1000)).toEqual([0.4, 0.2, -0.2]);
    expect(difference.value).toBeCloseTo(0.4, 12);
  });

  test('a stain from above and dirt are no green metal', () => {
    const t = compare(pairOf([{ cover: 0.1, origin: 'stain' }], [{ cover: 0.7, origin: 'stain' }]));
    expect(t.findings[0]?.verdict).toBe('worse');
    expect(t.sculpture.active.green).toMatchObject({ z: null, later: { value: 0 } });
  });
});
