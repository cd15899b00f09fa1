import { describe, expect, it } from 'vitest';
import { assemble, type BodyOf, type Entry, gather, nameOf, type SculptureRecord } from '../../../src/engine/record';
import { byNextRound, forecastOf, isFigure, seriesOf, trendOf, trendsOf } from '../../../src/engine/trend';
import { bodies, first, sculpture, uuid } from '../../files/entries';
import { yearly } from './madeUp';

describe('The word trend', () => {
  it.each([
    [[9, 8], 'too few rounds'],
    [[9, 8, 7], 'falling each time so far'],
    [[6, 7, 8, 9], 'rising each time so far'],
    [[9, 8, 7, 6, 5], 'trend'],
    [[9, 8, 8, 6], 'no trend shown'],
    [[5, 7, 6, 8, 7, 6], 'no trend shown'],
    [[4, 4, 4, 4, 4, 4], 'no trend shown'],
  ] as const)('%j: %s', (values, word) => {
    expect(trendOf(yearly(values)).word).toBe(word);
  });

  it('comes with the slope a year, its interval and what that attains', () => {
    const { slope, coverage, p, up } = trendOf(yearly([90, 88, 86, 84, 82, 80]));
    expect(slope?.value).toBeCloseTo(-2, 2);
    expect(slope?.low).toBeLessThanOrEqual(slope?.value ?? 0);
    expect(coverage).toBeCloseTo(1 - (2 * (1 + 5 + 14)) / 720, 12);
    expect(p).toBeCloseTo(2 / 720, 12);
    expect(up).toBe(false);
  });

  it('speaks of the stretch since the last break only', () => {
    const broken = yearly([60, 50, 40, 95, 94, 93]);
    const points = broken.points.map((point, i) => ({ ...point, span: i < 3 ? 0 : 1 }));
    expect(trendOf({ ...broken, points })).toMatchObject({ n: 3, word: 'falling each time so far' });
    const unsure = points.map((point, i) => (i === 5 ? { ...point, span: null } : point));
    expect(trendOf({ ...broken, points: unsure }).word).toBe('too few rounds');
  });
});

describe('A forecast', () => {
  const falling = yearly([90, 88, 86, 84, 82, 80]);
  const trend = trendOf(falling);

  it('carries a trend on as a range, wider the further it goes', () => {
    const [near, far] = ['2027-05-12', '2030-05-12'].map((day) => forecastOf(falling, trend, day, 100));
    if (!near || !far || !isFigure(near) || !isFigure(far)) throw new Error('no forecast');
    expect(near.value).toBeCloseTo(78, 1);
    expect(near.low).toBeLessThan(near.value - 1.9);
    expect(far.high - far.low).toBeGreaterThanOrEqual(near.high - near.low);
    expect(near.reasons.map(({ code }) => code)).toEqual(['trend: if care goes on']);
  });

  it('goes on from where the work stands now, not from a line a single step has tilted', () => {
    const stepped = yearly([81, 80, 29, 28.5, 28, 27]);
    const by = forecastOf(stepped, trendOf(stepped), '2027-05-12', 100);
    if (!isFigure(by)) throw new Error('no forecast');
    const { slope } = trendOf(stepped);
    expect(by.value).toBeCloseTo(27 + (slope?.value ?? 0), 1);
    expect(by.value).toBeGreaterThan(0);
    // Going on as in the years after the step is within what it says.
    expect(by.high).toBeGreaterThan(26);
  });

  it('past twice the observed span is too far to tell', () => {
    expect(isFigure(forecastOf(falling, trend, '2031-05-01', 100))).toBe(true);
    const far = forecastOf(falling, trend, '2031-06-30', 100);
    expect(isFigure(far) ? '' : far.reason.code).toBe('trend: too far to tell');
  });

  it('is none where no trend stands, and never leaves what can be', () => {
    const four = yearly([90, 88, 86, 84]);
    expect(isFigure(forecastOf(four, trendOf(four), '2025-05-12', 100))).toBe(false);
    const low = yearly([12, 10, 8, 6, 4, 2]);
    const by = forecastOf(low, trendOf(low), '2030-05-12', 100);
    expect(by).toMatchObject({ value: 0, low: 0 });
  });
});

const zones = [0, 1, 2].map((i) => nameOf.zone(uuid(300 + i)));
const steward = nameOf.surveyor(uuid(400));

interface Year {
  readonly covers: readonly (number | 'not looked' | 'carried')[];
  readonly round?: Partial<BodyOf<'round'>>;
}

const recordOf = (
  years: readonly Year[],
  treatments: readonly Partial<BodyOf<'treatment'>>[] = [],
): SculptureRecord => {
  let n = 1;
  const entries: Entry[] = [
    first(n++, sculpture, 'sculpture', bodies.sculpture),
    ...zones.map((zone, i) => first(n++, zone, 'zone', bodies.zone({ letter: 'ABC'[i] ?? 'A', order: i }))),
    ...treatments.map((body, i) =>
      first(n++, nameOf.treatment(uuid(600 + i)), 'treatment', {
        sculpture,
        zones: [],
        type: 'wax',
        date: '2023-06-01',
        ...body,
      }),
    ),
  ];
  years.forEach(({ covers, round: more = {} }, y) => {
    const round = nameOf.round(uuid(500 + y));
    const day = `${2021 + y}-05-12`;
    entries.push(first(n++, round, 'round', bodies.round({ surveyor: steward, date: day, ended: day, ...more })));
    covers.forEach((cover, i) => {
      const zone = zones[i] as string;
      const state = typeof cover === 'string' ? cover : cover > 0 ? 'found' : 'nothing';
      entries.push(first(n++, nameOf.visit(round, zone), 'visit', { ...bodies.visit(), round, zone, state }));
      if (typeof cover === 'string' || cover === 0) return;
      entries.push(
        first(n++, nameOf.finding(round, zone, 'green-spots', 'metal'), 'finding', {
          sculpture,
          round,
          zone,
          kind: 'green-spots',
          origin: 'metal',
          coverage: { value: cover, low: cover, high: cover, method: 'ladder, adjusted' },
          severity: 'slight',
          activity: 'active',
        }),
      );
    });
  });
  const record = gather(assemble(entries).values());
  if (!record) throw new Error('no record');
  return record;
};

const codes = (reasons: readonly { readonly code: string }[]) => reasons.map(({ code }) => code);

describe('A series of a work', () => {
  const plain: Year[] = [0.1, 0.15, 0.2, 0.25, 0.3].map((cover) => ({ covers: [cover, 0.05, 0] }));

  it('has a point for each round, with its range, and a trend where one stands', () => {
    const series = seriesOf(recordOf(plain), 'green');
    expect(series.points).toHaveLength(5);
    expect(series.points.every(({ figure }) => figure.low < figure.value && figure.value < figure.high)).toBe(true);
    expect(trendOf(series)).toMatchObject({ word: 'trend', up: true });
    expect(trendOf(seriesOf(recordOf(plain), 'index'))).toMatchObject({ word: 'trend', up: false });
  });

  it('is told over zones seen in every round, so that a zone missed once is no change', () => {
    const missed = plain.map((year, i) => (i === 3 ? { covers: [0.25, 'not looked' as const, 0] } : year));
    const series = seriesOf(recordOf(missed), 'green');
    expect(codes(series.reasons)).toContain('trend: zones left out');
    const whole = seriesOf(recordOf(plain.map(({ covers }) => ({ covers: [covers[0] ?? 0, 0, 0] }))), 'green');
    expect(series.points.map(({ figure }) => figure.value)).toEqual(whole.points.map(({ figure }) => figure.value));
    expect(series.points.map(({ seenShare }) => seenShare < 1)).toEqual([false, false, false, true, false]);
  });

  it('leaves out what was carried over and rounds of another kind, and says so', () => {
    const carried = plain.map((year, i) => (i === 4 ? { covers: ['carried' as const, 0.05, 0] } : year));
    expect(seriesOf(recordOf(carried), 'green', zones[0]).points).toHaveLength(4);
    const autumn = [
      ...plain,
      { covers: [0.9, 0.9, 0.9], round: { type: 'autumn' as const, date: '2025-10-01', ended: '2025-10-01' } },
    ];
    const series = seriesOf(recordOf(autumn), 'green');
    expect(series.points).toHaveLength(5);
    expect(codes(series.reasons)).toContain('trend: rounds of another kind left out');
  });

  it('breaks at a strip, not at a wax; a wax is a tick', () => {
    const strip = seriesOf(
      recordOf(plain, [
        { type: 'strip', date: '2023-09-01' },
        { type: 'wax', date: '2022-06-01' },
      ]),
      'index',
    );
    expect(strip.points.map(({ span }) => span)).toEqual([0, 0, 0, 1, 1]);
    expect(strip.ticks.map(({ type }) => type)).toEqual(['wax']);
    expect(codes(strip.reasons)).toContain('trend: series broken');
    const wax = seriesOf(recordOf(plain, [{ type: 'wax', date: '2023-09-01' }]), 'index');
    expect(wax.points.map(({ span }) => span)).toEqual([0, 0, 0, 0, 0]);
  });

  it('breaks only where it was touched, and says how much of the work that is', () => {
    const record = recordOf(plain, [{ type: 'cause removed', date: '2023-09-01', zones: [zones[0] as string] }]);
    expect(seriesOf(record, 'green', zones[0]).points.map(({ span }) => span)).toEqual([0, 0, 0, 1, 1]);
    expect(seriesOf(record, 'green', zones[1]).points.map(({ span }) => span)).toEqual([0, 0, 0, 0, 0]);
    expect(seriesOf(record, 'index').breaks[0]?.share).toBeCloseTo(1 / 3, 6);
  });

  it('work done on the day of a look before the wash lies after it', () => {
    const same = seriesOf(recordOf(plain, [{ type: 'strip', date: '2023-05-12' }]), 'index');
    expect(same.points.map(({ span }) => span)).toEqual([0, 0, 0, 1, 1]);
  });

  it('is not carried on past what was done since the last round, and says what that was', () => {
    for (const date of ['2025-05-12', '2025-09-01', '2025-10', '2026']) {
      const record = recordOf(plain, [{ type: 'strip', date, zones: [zones[0] as string] }]);
      const trends = trendsOf(record);
      const [touched, untouched] = trends.zones;
      const next = touched?.index.next;
      expect(next && !isFigure(next) ? next.reason.code : date).toBe('trend: broken since');
      expect(codes(touched?.index.series.reasons ?? [])).toContain('trend: broken since');
      expect(codes(trends.work.index.series.reasons)).toContain('trend: broken since');
      expect(untouched?.index.series.brokenSince).toBeNull();
      expect(byNextRound(record, trends, 75).growth.has(zones[0] as string)).toBe(false);
      expect(byNextRound(record, trends, 75).crossing.has(zones[0] as string)).toBe(false);
    }
    const waxed = trendsOf(recordOf(plain, [{ type: 'wax', date: '2025-09-01' }]));
    const next = waxed.zones[0]?.index.next;
    expect(next && isFigure(next)).toBe(true);
  });

  it('a break of vague date puts the rounds it may lie on either side of in no trend', () => {
    const vague = seriesOf(recordOf(plain, [{ type: 'strip', date: '2023' }]), 'index');
    expect(vague.points.map(({ span }) => span)).toEqual([0, 0, null, 1, 1]);
  });

  it('marks where another person looked', () => {
    const other = plain.map((year, i) =>
      i === 2 ? { ...year, round: { surveyor: nameOf.surveyor(uuid(401)) } } : year,
    );
    expect(seriesOf(recordOf(other), 'index').marks.map(({ day }) => day)).toEqual(['2023-05-12', '2024-05-12']);
  });

  it('of a work without a round, with one, and with two of one day has no NaN', () => {
    const one = plain.slice(0, 1);
    const twice = [...one, { covers: [0.1, 0, 0], round: { date: '2021-05-12', ended: '2021-05-12' } }];
    for (const years of [[], one, twice]) {
      const trends = trendsOf(recordOf(years));
      expect(JSON.stringify(trends)).not.toMatch(/NaN|Infinity/);
      expect(trends.work.index.trend.word).toBe('too few rounds');
      expect(trends.work.index.series.points.length).toBe(Math.min(1, years.length));
    }
  });

  it('knows when the next round may be looked for, and carries each zone on to it', () => {
    const { nextRound, zones: each } = trendsOf(recordOf(plain));
    expect(nextRound).toBe('2026-05-12');
    expect(each).toHaveLength(3);
    const next = each[0]?.index.next;
    expect(next && isFigure(next)).toBe(true);
  });
});

describe('By the next round', () => {
  it('a zone whose trend leads below the action level crosses it, and its burden grows by what it loses', () => {
    const falls = [0.1, 0.15, 0.2, 0.25, 0.3].map((cover) => ({ covers: [cover, 0.05, 0.3 - cover / 2] }));
    const record = recordOf(falls);
    const trends = trendsOf(record);
    const index = trends.zones[0]?.index;
    const now = index?.series.points.at(-1)?.figure.value ?? 0;
    const next = index?.next && isFigure(index.next) ? index.next.value : Number.NaN;
    const between = byNextRound(record, trends, (now + next) / 2);
    expect(between.crossing.get(zones[0] as string)).toBe(true);
    expect(byNextRound(record, trends, now + 1).crossing.get(zones[0] as string)).toBe(false);
    expect(byNextRound(record, trends, next - 1).crossing.get(zones[0] as string)).toBe(false);
    const growth = between.growth.get(zones[0] as string);
    const zone = record.zones[0];
    expect(growth?.value).toBeCloseTo((zone?.body.versions[0]?.area.m2 ?? 0) * (now - next), 9);
    expect(growth && growth.low <= growth.value && growth.value <= growth.high).toBe(true);
    // One that does not move has no trend and is left out; one that gets better adds nothing.
    expect(between.growth.has(zones[1] as string)).toBe(false);
    expect(between.growth.get(zones[2] as string)?.value).toBe(0);
  });
});
