import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Judgement, type ThenAndNow, thenAndNow } from '../../src/engine/change';
import { coverageZ } from '../../src/engine/change/coverageDifference';
import { nothingFound, ratingOf } from '../../src/engine/change/rating';
import type { SculptureRecord } from '../../src/engine/record';
import { ladder } from '../../src/engine/trade';
import { type InventedFinding, type InventedVisit, invented, roundName } from '../engine/change/invented';

const steps = ladder.filter((step) => step.value > 0);
const letters = ['A', 'B', 'C', 'D'] as const;
const otherLetter: Readonly<Record<string, string>> = { worse: 'better', better: 'worse' };

const common = {
  severity: fc.constantFrom('slight' as const, 'moderate' as const, 'severe' as const),
  activity: fc.constantFrom('active' as const, 'unclear' as const, 'stable' as const),
  origin: fc.constantFrom('dirt' as const, 'stain' as const, 'metal' as const),
};
const byShare: fc.Arbitrary<InventedFinding> = fc.record({
  ...common,
  kind: fc.constantFrom('even-green-film', 'green-spots', 'bare-by-touch', 'hard-water-scale', 'lichen', 'unheard-of'),
  cover: fc.constantFrom(...steps.map((step) => step.value)),
});
const byCount: fc.Arbitrary<InventedFinding> = fc.record({
  ...common,
  kind: fc.constantFrom('pits-new', 'dent-old'),
  count: fc.constantFrom('one' as const, 'two to five' as const, 'more' as const),
});
const findings = fc.uniqueArray(fc.oneof({ weight: 3, arbitrary: byShare }, byCount), {
  maxLength: 4,
  minLength: 1,
  selector: (f) => `${f.kind}/${f.origin}`,
});
const visit: fc.Arbitrary<InventedVisit> = fc.oneof(
  { weight: 6, arbitrary: findings },
  { weight: 2, arbitrary: fc.constant('nothing' as const) },
  fc.constantFrom('carried' as const, 'not looked' as const),
);
const saw = fc.tuple(visit, visit, visit, visit).map((list) => Object.fromEntries(list.map((v, i) => [letters[i], v])));

const zones = fc
  .tuple(
    ...letters.map(() =>
      fc.record({ m2: fc.double({ min: 0.1, max: 8, noNaN: true }), significance: fc.constantFrom(0.5, 1, 2) }),
    ),
  )
  .map((list) => Object.fromEntries(list.map((z, i) => [letters[i], z])));

const work = fc
  .record({
    zones,
    before: saw,
    after: saw,
    surveyor: fc.constantFrom('surveyor/steward', 'surveyor/helper', ''),
    wax: fc.boolean(),
    eyes: fc.array(fc.constantFrom(0.2, 0.27, 0.45, 0.8), { maxLength: 2 }),
  })
  .map(({ zones: list, before, after, surveyor, wax, eyes }) => ({
    ...invented({
      zones: list,
      rounds: [
        { date: '2025-05-10', saw: before },
        { date: '2026-05-12', saw: after, surveyor },
      ],
      treatments: wax ? [{ type: 'wax', date: '2025-06-01', zones: ['A'] }] : [],
    }),
    eyes: Object.fromEntries(
      eyes.map((sd, i) => [i === 0 ? 'surveyor/steward' : 'surveyor/helper', { sd, pairs: 12 }]),
    ),
  }));

const compare = (record: SculptureRecord): ThenAndNow => thenAndNow(record, roundName(0), roundName(1));
const all = (t: ThenAndNow): Judgement[] => [
  ...t.findings,
  ...t.zones,
  t.sculpture.index,
  ...Object.values(t.sculpture.active),
];

describe('laws of the verdicts', () => {
  test('turned around, worse and better change places and z its sign', () => {
    fc.assert(
      fc.property(work, (record) => {
        const there = all(compare(record));
        const back = all(thenAndNow(record, roundName(1), roundName(0)));
        expect(back).toHaveLength(there.length);
        there.forEach((judged, i) => {
          expect(back[i]?.verdict).toBe(otherLetter[judged.verdict] ?? judged.verdict);
          if (judged.z === null) expect(back[i]?.z).toBeNull();
          else expect(back[i]?.z).toBeCloseTo(-judged.z, 9);
        });
      }),
      { numRuns: 150, seed: 20261015 },
    );
  });

  test('the order in which things were entered changes nothing', () => {
    fc.assert(
      fc.property(work, fc.infiniteStream(fc.integer()), (record, keys) => {
        const shuffled = <T>(list: readonly T[]): T[] =>
          list
            .map((item) => ({ item, key: keys.next().value ?? 0 }))
            .sort((a, b) => a.key - b.key)
            .map(({ item }) => item);
        const other = { ...record, visits: shuffled(record.visits), findings: shuffled(record.findings) };
        expect(compare(other)).toEqual(compare(record));
      }),
      { numRuns: 100, seed: 20261016 },
    );
  });

  test('a carried zone changes no sum', () => {
    fc.assert(
      fc.property(work, findings, fc.boolean(), (record, old, carriedNow) => {
        const extra = invented({
          zones: { E: { m2: 5 } },
          rounds: [
            { date: '2025-05-10', saw: { E: carriedNow ? old : 'carried' } },
            { date: '2026-05-12', saw: { E: carriedNow ? 'carried' : old } },
          ],
        });
        const longer = {
          ...record,
          zones: [...record.zones, ...extra.zones],
          visits: [...record.visits, ...extra.visits],
          findings: [...record.findings, ...extra.findings],
        };
        const [without, with_] = [compare(record), compare(longer)];
        expect(with_.comparisons).toBe(without.comparisons);
        expect(with_.sculpture.index.z).toBe(without.sculpture.index.z);
        for (const what of ['green', 'bare', 'scale'] as const) {
          expect(with_.sculpture.active[what].difference).toEqual(without.sculpture.active[what].difference);
          expect(with_.sculpture.active[what].contributions).toEqual(without.sculpture.active[what].contributions);
        }
        expect(with_.zones.at(-1)?.verdict).toBe('carried');
      }),
      { numRuns: 80, seed: 20261017 },
    );
  });

  test('a carried finding changes no sum of its zone', () => {
    const base = { kind: 'even-green-film', cover: 0.2 };
    fc.assert(
      fc.property(fc.constantFrom(...steps), fc.constantFrom(...steps), (then, now) => {
        const record = (extra: readonly InventedFinding[]) =>
          invented({
            zones: { A: {} },
            rounds: [
              { date: '2025-05-10', saw: { A: [base, { kind: 'green-spots', cover: then.value }] } },
              { date: '2026-05-12', saw: { A: [{ ...base, cover: now.value }, ...extra] } },
            ],
          });
        const carried = compare(record([{ kind: 'green-spots', cover: then.value, carried: true }]));
        const alone = compare(
          invented({
            zones: { A: {} },
            rounds: [
              { date: '2025-05-10', saw: { A: [base] } },
              { date: '2026-05-12', saw: { A: [{ ...base, cover: now.value }] } },
            ],
          }),
        );
        expect(carried.zones[0]?.z).toBe(alone.zones[0]?.z);
        expect(carried.sculpture.active.green.difference).toEqual(alone.sculpture.active.green.difference);
      }),
      { numRuns: 60, seed: 20261018 },
    );
  });

  test('the same seen twice is no sure change anywhere', () => {
    fc.assert(
      fc.property(zones, fc.array(findings, { minLength: 4, maxLength: 4 }), (list, seen) => {
        const both = Object.fromEntries(seen.map((f, i) => [letters[i], f]));
        const t = compare(
          invented({
            zones: list,
            rounds: [
              { date: '2025-05-10', saw: both },
              { date: '2026-05-12', saw: both },
            ],
          }),
        );
        for (const judged of all(t)) {
          expect(['no sure change', 'not comparable']).toContain(judged.verdict);
          expect(Math.abs(judged.z ?? 0)).toBe(0);
        }
        for (const f of t.findings) expect(f.verdict === 'not comparable').toBe(f.kind === 'unheard-of');
      }),
      { numRuns: 80, seed: 20261019 },
    );
  });

  test('a bigger difference is never less sure: over all steps of the ladder, and from "nothing found"', () => {
    const rated = (eye: number | undefined) => [
      nothingFound(eye),
      ...steps.map(({ value, low, high }) => ratingOf({ value, low, high, method: 'ladder' }, eye)),
    ];
    const eyes = [undefined, 0.2, 0.8].flatMap((one) => [undefined, 0.2, 0.8].map((other) => [one, other] as const));
    for (const [eyeLow, eyeHigh] of eyes) {
      const [lows, highs] = [rated(eyeLow), rated(eyeHigh)];
      for (const otherPerson of [false, true]) {
        for (let i = 0; i < lows.length; i++) {
          for (let k = i + 1; k < lows.length; k++) {
            for (let j = i; j <= k; j++) {
              const [a, c] = [lows[i], highs[k]] as const;
              const [bHigh, bLow] = [highs[j], lows[j]] as const;
              if (!a || !bHigh || !bLow || !c) throw new Error('outside the ladder');
              const whole = coverageZ(a, c, otherPerson);
              if (j > i) expect(whole).toBeGreaterThanOrEqual(coverageZ(a, bHigh, otherPerson));
              if (j < k) expect(whole).toBeGreaterThanOrEqual(coverageZ(bLow, c, otherPerson));
            }
          }
        }
      }
    }
  });

  test('clear is over twice the line; what escalates is worse and firm; what could be chance is over the line', () => {
    fc.assert(
      fc.property(work, (record) => {
        for (const judged of all(compare(record))) {
          const z = Math.abs(judged.z ?? 0);
          if (judged.clearly) expect(z).toBeGreaterThan(2 * 1.959963984);
          if (judged.aloneCouldBeChance) expect(z).toBeGreaterThan(1.959963984);
          if (judged.clearlyWorse) {
            expect(judged.verdict).toBe('worse');
            expect(judged.aloneCouldBeChance).toBe(false);
          }
          if (judged.verdict === 'carried' || judged.verdict === 'not comparable') expect(judged.z).toBeNull();
        }
      }),
      { numRuns: 150, seed: 20261020 },
    );
  });
});
