import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  classesOf,
  coverageInterval,
  scoreFinding,
  scoreRound,
  scoreZone,
  zoneRange,
} from '../../src/engine/condition';
import type { BodyOf } from '../../src/engine/record';
import { activities, counts, kinds, ladder, scaleOf, severities } from '../../src/engine/trade';
import {
  findingBody,
  findingThings,
  recordOf,
  roundName,
  visitThing,
  zoneName,
  zoneThing,
} from '../engine/condition/madeUp';

type Finding = BodyOf<'finding'>;

const scale = scaleOf(null);
const dust = 1e-9;
const rank = (rows: readonly { readonly id: string }[], id: string | undefined): number =>
  rows.findIndex((row) => row.id === id);

const coverage = fc
  .constantFrom(...ladder)
  .map(({ value, low, high }): Finding['coverage'] => ({ value, low, high, method: 'ladder' }));

const finding: fc.Arbitrary<Finding> = fc
  .record({
    kind: fc.constantFrom(...kinds.map(({ id }) => id), 'a-kind-of-tomorrow'),
    origin: fc.constantFrom('dirt' as const, 'stain' as const, 'metal' as const),
    severity: fc.constantFrom(...severities.map(({ id }) => id)),
    activity: fc.constantFrom(...activities.map(({ id }) => id)),
    count: fc.constantFrom(...counts.map(({ id }) => id)),
    coverage,
  })
  .map((row) => findingBody(row.kind, row));

/** As the record holds them: one finding for each kind and origin. */
const findings = fc.uniqueArray(finding, { selector: ({ kind, origin }) => `${kind}/${origin}`, maxLength: 7 });

const zone = zoneThing('A', 2);
const scored = (list: readonly Finding[]) => {
  const made = { zone: 'A', findings: list };
  const score = scoreZone({ visit: visitThing(made), findings: findingThings(made), zone, day: '2026-05-12' }, scale);
  if (!score) throw new Error('a zone that was looked at has an index');
  return score;
};
const classed = (list: readonly Finding[]) => {
  const record = recordOf([zone], [{ zone: 'A', findings: list }]);
  const zoneClasses = classesOf(record, roundName(2026)).zones[0];
  if (!zoneClasses) throw new Error('a zone that was looked at has classes');
  return zoneClasses;
};

/** The same finding, worse in one way or in several. */
const worsened = fc
  .tuple(finding, fc.nat(2), fc.nat(2), fc.nat(11), fc.nat(2))
  .map(([was, severity, activity, cover, count]): readonly [Finding, Finding] => {
    const step = ladder[Math.max(rank(ladder, ladder.find((row) => row.value === was.coverage?.value)?.id), cover)];
    const quiet = rank(activities, was.activity);
    return [
      was,
      {
        ...was,
        severity: severities[Math.max(rank(severities, was.severity), severity)]?.id ?? was.severity,
        activity: activities[Math.min(quiet, activity)]?.id ?? was.activity,
        count: counts[Math.max(rank(counts, was.count), count)]?.id ?? was.count,
        ...(step ? { coverage: { value: step.value, low: step.low, high: step.high, method: 'ladder' as const } } : {}),
      },
    ];
  });

describe('laws of the zone index', () => {
  it('does not depend on the order in which findings were entered', () => {
    fc.assert(
      fc.property(findings, fc.infiniteStream(fc.nat()), (list, keys) => {
        const shuffled = list.map((one) => [keys.next().value, one] as const).sort((a, b) => a[0] - b[0]);
        const { value, low, high } = scored(list);
        expect(scored(shuffled.map(([, one]) => one))).toMatchObject({ value, low, high });
      }),
    );
  });

  it('never rises when a finding is added', () => {
    fc.assert(
      fc.property(findings, finding, (list, one) => {
        const others = list.filter(({ kind, origin }) => kind !== one.kind || origin !== one.origin);
        expect(scored([...others, one]).value).toBeLessThanOrEqual(scored(others).value);
      }),
    );
  });

  it('never rises when a finding gets worse in extent, severity or activity', () => {
    fc.assert(
      fc.property(findings, worsened, (list, [was, now]) => {
        const others = list.filter(({ kind, origin }) => kind !== was.kind || origin !== was.origin);
        expect(scored([...others, now]).value).toBeLessThanOrEqual(scored([...others, was]).value + dust);
      }),
    );
  });

  it('is 100 exactly when no finding has a loss, and stays over 0', () => {
    fc.assert(
      fc.property(findings, (list) => {
        const { value } = scored(list);
        expect(value === 100).toBe(list.every((one) => scoreFinding(one, scale).loss === 0));
        expect(value).toBeGreaterThan(0);
        expect(value).toBeLessThanOrEqual(100);
      }),
    );
  });

  it('stays over 0 with every kind there is in every form at its worst', () => {
    const worst = kinds.flatMap(({ id }) =>
      (['stain', 'metal'] as const).map((origin) =>
        findingBody(id, {
          origin,
          severity: 'severe',
          activity: 'active',
          count: 'more',
          coverage: { value: 1, low: 1, high: 1, method: 'photo' },
        }),
      ),
    );
    expect(scored(worst).value).toBeGreaterThan(0);
  });

  it('has its value inside its range, and its range inside 0 to 100', () => {
    fc.assert(
      fc.property(findings, (list) => {
        const { value, low, high } = scored(list);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(value);
        expect(value).toBeLessThanOrEqual(high);
        expect(high).toBeLessThanOrEqual(100);
      }),
    );
  });

  it('gives a nested range for nested coverage ends of the same value', () => {
    const ends = fc
      .tuple(
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
      )
      .map(([loss, inner, outer]) => {
        const down = Math.min(inner, outer);
        const up = Math.max(inner, outer);
        const around = (share: number) => ({ loss, low: loss * (1 - share), high: loss + (0.98 - loss) * share });
        return { inside: around(down), outside: around(up) };
      });
    fc.assert(
      fc.property(fc.array(ends, { maxLength: 6 }), (rows) => {
        const inside = zoneRange(rows.map((row) => row.inside));
        const outside = zoneRange(rows.map((row) => row.outside));
        expect(outside.value).toBeCloseTo(inside.value, 9);
        expect(outside.low).toBeLessThanOrEqual(inside.low + dust);
        expect(outside.high).toBeGreaterThanOrEqual(inside.high - dust);
      }),
    );
  });

  it('keeps its laws whoever looked: the value is the same by any eye, the ranges nest from a steady to an unsteady one', () => {
    fc.assert(
      fc.property(findings, (list) => {
        const made = { zone: 'A', findings: list };
        const seen = { visit: visitThing(made), findings: findingThings(made), zone, day: '2026-05-12' };
        const by = [0.2, 0.3, 0.5, 0.9].map((sd) => scoreZone({ ...seen, eye: { sd, pairs: 9 } }, scale));
        for (const [i, one] of by.entries()) {
          const next = by[i + 1];
          if (!one || !next) continue;
          expect(next.value).toBe(one.value);
          expect(next.low).toBeLessThanOrEqual(one.low + dust);
          expect(next.high).toBeGreaterThanOrEqual(one.high - dust);
          expect(next.low).toBeGreaterThan(0);
          expect(next.high).toBeLessThanOrEqual(100);
        }
        expect(by[1]?.low).toBeCloseTo(scored(list).low, 9);
      }),
    );
  });

  it('has a narrower range for the eye of a surer person', () => {
    fc.assert(
      fc.property(coverage, (given) => {
        if (!given) return;
        const sure = coverageInterval(given, { sd: 0.2 });
        const usual = coverageInterval(given);
        expect(sure.low).toBeGreaterThanOrEqual(usual.low);
        expect(sure.high).toBeLessThanOrEqual(usual.high);
      }),
    );
  });
});

describe('laws of the classes', () => {
  it('never lower condition or urgency when a finding is added', () => {
    fc.assert(
      fc.property(findings, finding, (list, one) => {
        const others = list.filter(({ kind, origin }) => kind !== one.kind || origin !== one.origin);
        const before = classed(others);
        const after = classed([...others, one]);
        expect(after.condition.level ?? -1).toBeGreaterThanOrEqual(before.condition.level ?? -1);
        expect(after.urgency.level ?? -1).toBeGreaterThanOrEqual(before.urgency.level ?? -1);
        expect(after.recommendation.level ?? -1).toBeGreaterThanOrEqual(before.recommendation.level ?? -1);
      }),
    );
  });

  it('never lower condition, urgency or recommendation when a finding gets worse', () => {
    fc.assert(
      fc.property(findings, worsened, (list, [was, now]) => {
        const others = list.filter(({ kind, origin }) => kind !== was.kind || origin !== was.origin);
        const before = classed([...others, was]);
        const after = classed([...others, now]);
        expect(after.condition.level ?? -1).toBeGreaterThanOrEqual(before.condition.level ?? -1);
        expect(after.urgency.level ?? -1).toBeGreaterThanOrEqual(before.urgency.level ?? -1);
        expect(after.recommendation.level ?? -1).toBeGreaterThanOrEqual(before.recommendation.level ?? -1);
      }),
    );
  });

  it('never propose major treatment', () => {
    fc.assert(
      fc.property(findings, (list) => {
        expect(classed(list).recommendation.level).toBeLessThan(3);
      }),
    );
  });
});

describe('laws of the sculpture index', () => {
  const zones = [zoneThing('A', 1), zoneThing('B', 2.5), zoneThing('C', 0.4, 2)];

  it('is not changed by a zone whose answers were carried, whatever was carried', () => {
    fc.assert(
      fc.property(findings, findings, fc.boolean(), (looked, carried, asVisit) => {
        const from = roundName(2025);
        const copies = carried.map((one) => ({ ...one, carriedFrom: from }));
        const made = [{ zone: 'A', findings: looked }, { zone: 'B' }];
        const without = scoreRound(recordOf(zones, made), roundName(2026));
        const c = asVisit
          ? { zone: 'C', state: 'carried' as const, visit: { carriedFrom: from }, findings: copies }
          : {
              zone: 'C',
              state: 'found' as const,
              findings: copies.length > 0 ? copies : [findingBody('tarnish', { carriedFrom: from })],
            };
        const withIt = scoreRound(
          recordOf(zones, [...made, c, { zone: 'C', year: 2025, findings: carried }]),
          roundName(2026),
        );
        for (const key of [
          'value',
          'low',
          'high',
          'seenShare',
          'ifUnseenBest',
          'ifUnseenWorst',
          'active',
          'shareCC3',
          'zones',
        ] as const) {
          expect(withIt[key]).toEqual(without[key]);
        }
      }),
    );
  });

  it('lies between its weakest and its best zone, and inside its own range', () => {
    fc.assert(
      fc.property(findings, findings, findings, (a, b, c) => {
        const made = [a, b, c].map((list, i) => ({ zone: 'ABC'.charAt(i), findings: list }));
        const score = scoreRound(recordOf(zones, made), roundName(2026));
        const values = score.zones.map(({ value }) => value);
        const index = score.value ?? Number.NaN;
        expect(index).toBeGreaterThanOrEqual(Math.min(...values) - dust);
        expect(index).toBeLessThanOrEqual(Math.max(...values) + dust);
        expect(score.low ?? Number.NaN).toBeLessThanOrEqual(index);
        expect(score.high ?? Number.NaN).toBeGreaterThanOrEqual(index);
      }),
    );
  });

  it('has active areas no larger than the zones they lie in', () => {
    fc.assert(
      fc.property(findings, (list) => {
        const { active } = scored(list);
        for (const figure of Object.values(active)) {
          expect(figure.value).toBeLessThanOrEqual(2);
          expect(figure.high).toBeLessThanOrEqual(2.3 + dust);
          expect(figure.low).toBeGreaterThanOrEqual(0);
          expect(figure.low).toBeLessThanOrEqual(figure.value);
          expect(figure.high).toBeGreaterThanOrEqual(figure.value);
        }
      }),
    );
  });

  it('is the same whatever the order of the visits and findings in the record', () => {
    fc.assert(
      fc.property(findings, findings, (a, b) => {
        const made = [
          { zone: 'A', findings: a },
          { zone: 'B', findings: b },
        ];
        const one = scoreRound(recordOf(zones, made), roundName(2026));
        const other = scoreRound(
          recordOf(zones, made.map((row) => ({ ...row, findings: [...row.findings].reverse() })).reverse()),
          roundName(2026),
        );
        expect(other.value).toBe(one.value);
        expect(other.low).toBe(one.low);
        expect(other.high).toBe(one.high);
        expect(other.zones.map(({ zone: name }) => name)).toEqual([zoneName('A'), zoneName('B')]);
      }),
    );
  });
});
