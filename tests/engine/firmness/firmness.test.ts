import { describe, expect, it } from 'vitest';
import { fromLogit, logit, orderOfNeed } from '../../../src/engine/condition';
import { type FirmNeed, firmness, groupOf } from '../../../src/engine/firmness';
import { drawable } from '../../../src/engine/firmness/drawable';
import { drawShared, drawZone, keyOf } from '../../../src/engine/firmness/redraws';
import { firstPass, secondPass } from '../../../src/engine/reckoning';
import { assemble, type Current, gather, latestRound, type SculptureRecord } from '../../../src/engine/record';
import { coverageMethodOf, kinds, stainKey } from '../../../src/engine/trade';
import { seededSurvey } from '../../files/seededSurvey';

const today = '2026-10-15';
const needOf = (record: SculptureRecord): FirmNeed => secondPass(firstPass(record, today), [], today).need as FirmNeed;

const records = (seed = 3): SculptureRecord[] => {
  const { entries } = seededSurvey({ works: 4, zonesEach: 12, rounds: 3, photos: 0, seed });
  const within = new Map<string, Current[]>();
  for (const current of assemble(entries).values())
    within.set(current.within, [...(within.get(current.within) ?? []), current]);
  return [...within.values()].flatMap((own) => gather(own) ?? []);
};
const all = records();
const needs = all.map(needOf);

/** Keys of every zone in one draw whose shared numbers are given. */
const keysWith = (from: readonly FirmNeed[], given: { kind: number; day: number; person: number }) => {
  const ready = drawable(from, 1);
  const shared = ready.shared.map(({ what }) => Float64Array.of(given[what]));
  const room = { kept: new Float64Array(1), presses: new Uint8Array(1) };
  return new Map(
    ready.zones.map((zone) => {
      const into = new Float64Array(1);
      drawZone(zone, shared, into, room, { weights: 0, coverages: 0 });
      return [zone.zone, into[0] as number];
    }),
  );
};

const keysByRule = (from: readonly FirmNeed[]) =>
  new Map(orderOfNeed(from).zones.map((rank) => [rank.zone as string, keyOf({ ...rank, burden: rank.burden.value })]));

const expectAlike = (quick: ReadonlyMap<string, number>, slow: ReadonlyMap<string, number>) => {
  expect([...quick.keys()].sort()).toEqual([...slow.keys()].sort());
  for (const [zone, key] of slow) expect(quick.get(zone), zone).toBeCloseTo(key, 4);
};

describe('the quick sums of a redraw', () => {
  it('are those of scoring and of the order of need where nothing errs', () => {
    expectAlike(keysWith(needs, { kind: 1, day: 0, person: 0 }), keysByRule(needs));
  });

  it.each([
    { kind: 1.15, shift: 0 },
    { kind: 0.8, shift: 0.4 },
    { kind: 1.2, shift: -0.7 },
    { kind: 1, shift: 1.2 },
  ])(
    'are those of scoring a survey with hazards $kind times and coverages $shift further on the logit',
    ({ kind, shift }) => {
      const hazards = Object.fromEntries(kinds.map((row) => [row.id, Math.min(1, row.hazard * kind)]));
      const moved = all.map((record) => {
        const latest = latestRound(record)?.thing;
        return {
          ...record,
          scale: { version: 1, actionLevel: 75, hazards: { ...hazards, [stainKey]: 0.15 * kind } },
          findings: record.findings.map((finding) => {
            const { coverage, round } = finding.body;
            if (!coverage || round !== latest || !coverageMethodOf(coverage.method).sharedByDay) return finding;
            const value = coverage.value === 0 ? 0 : fromLogit(logit(coverage.value) + shift);
            return { ...finding, body: { ...finding.body, coverage: { ...coverage, value } } };
          }),
        };
      });
      // The comparison with last year is not redrawn: it stays as it was told.
      const byRule = moved.map((record, i) => {
        const first = {
          ...firstPass(record, today),
          clearlyWorse: firstPass(all[i] as SculptureRecord, today).clearlyWorse,
        };
        return secondPass(first, [], today).need as FirmNeed;
      });
      expectAlike(keysWith(needs, { kind, day: shift / 2, person: shift / 2 }), keysByRule(byRule));
    },
  );
});

describe('how firm the order is', () => {
  const sure = firmness(needs, 7, { draws: 300 });

  it('tells every ranked zone once, in order of need', () => {
    const ranks = orderOfNeed(needs).zones;
    expect(sure.zones.map(({ place }) => place.value)).toEqual(ranks.map(({ rank }) => rank));
    expect(new Set(sure.zones.map(({ zone }) => zone))).toEqual(new Set(ranks.map(({ zone }) => zone)));
  });

  it('is the same for the same seed, in whatever order the works come', () => {
    expect(firmness([...needs].reverse(), 7, { draws: 300 })).toEqual(sure);
    expect(firmness(needs, 8, { draws: 300 })).not.toEqual(sure);
  });

  it('is not changed by calling zones by other letters and names', () => {
    const renamed = needs.map((need) => ({
      ...need,
      record: {
        ...need.record,
        zones: need.record.zones.map((zone) => ({ ...zone, body: { ...zone.body, letter: 'Q', name: 'other' } })),
      },
    }));
    expect(firmness(renamed, 7, { draws: 300 })).toEqual(sure);
  });

  it('holds a share that is a share, and a range that holds the place', () => {
    for (const { place, share, among } of sure.zones) {
      expect(place.low).toBeLessThanOrEqual(place.value);
      expect(place.high).toBeGreaterThanOrEqual(place.value);
      if (share === null) continue;
      expect(among).toBeGreaterThanOrEqual(place.value);
      expect(share).toBeGreaterThanOrEqual(0);
      expect(share).toBeLessThanOrEqual(1);
    }
    expect(sure.zones.some(({ share }) => share !== null && share < 1)).toBe(true);
  });

  it('is whole for every zone where nothing errs', () => {
    const { zones } = firmness(needs, 7, { draws: 50, errs: { weights: 0, coverages: 0 } });
    expect(zones.flatMap(({ share }) => share ?? []).every((share) => share === 1)).toBe(true);
    expect(zones.every(({ place }) => place.low === place.high)).toBe(true);
  });

  it('is whole where a named person set the urgency of one zone and nothing else is like it', () => {
    const [need, ...rest] = needs as [FirmNeed, ...FirmNeed[]];
    const zones = need.classes.zones.map((own, i) =>
      i === 0 ? { ...own, set: { sculpture: '', round: '', about: own.about, urgency: 3, setBy: 'E. Marsh' } } : own,
    );
    const set = firmness([{ ...need, classes: { ...need.classes, zones } }, ...rest], 7, { draws: 300 });
    const first = set.zones[0];
    expect(first).toMatchObject({
      zone: zones[0]?.about,
      among: 1,
      share: 1,
      word: 'firm',
      place: { low: 1, high: 1 },
    });
    expect(first?.reasons.map(({ code }) => code)).toContain('firmness: urgency set by a person');
  });

  it('is left open where there are no more zones than places to ask for', () => {
    expect([groupOf(1, 1), groupOf(1, 2), groupOf(2, 3), groupOf(4, 40), groupOf(31, 39), groupOf(11, 2000)]).toEqual([
      null,
      1,
      null,
      5,
      null,
      20,
    ]);
    expect(firmness([], 7)).toMatchObject({ zones: [] });
  });

  it('shares the day and the person: zones judged alike move together and keep their order', () => {
    const draws = drawShared(drawable(needs, 7), 400).map((row) => [...row]);
    const { shared } = drawable(needs, 7);
    const sdOf = (what: string) => {
      const rows = draws.filter((_, i) => shared[i]?.what === what).flat();
      return Math.sqrt(rows.reduce((sum, x) => sum + x * x, 0) / rows.length);
    };
    expect(sdOf('day')).toBeCloseTo(0.15, 1);
    expect(sdOf('person')).toBeCloseTo(0.35 / Math.SQRT2, 1);
    expect(shared.filter(({ what }) => what === 'person')).toHaveLength(1);
    expect(shared.filter(({ what }) => what === 'day')).toHaveLength(all.length);
    const kindRows = draws.filter((_, i) => shared[i]?.what === 'kind').flat();
    expect(Math.min(...kindRows)).toBeGreaterThanOrEqual(0.8);
    expect(Math.max(...kindRows)).toBeLessThanOrEqual(1.2);
  });
});
