import { describe, expect, it } from 'vitest';
import { drawnFrom } from '../../../src/engine/chance';
import {
  bandAt,
  type Hold,
  type HoldsOfWork,
  holdsOf,
  type Life,
  livesOf,
  type ZoneHolds,
} from '../../../src/engine/hold';
import { codes } from '../change/invented';
import { tended, today, waxed } from './garden';

const record = tended({});
const [blank] = holdsOf(record, today) as [ZoneHolds];

const hold = (zone: string, [lower, upper]: readonly [number, number | null], more: Partial<Hold> = {}): Hold => ({
  zone,
  coating: `treatment/${zone}`,
  type: 'wax',
  start: '2025-05-01',
  clean: 'verified',
  lower,
  upper,
  lastClear: null,
  firstSeen: null,
  end: upper === null ? 'still clear' : 'returned',
  inPassing: false,
  span: 0,
  reasons: [],
  ...more,
});

type Ends = readonly (readonly [number, number | null])[];
const zoneWith = (zone: string, ends: Ends, more: Partial<ZoneHolds> = {}): ZoneHolds => ({
  ...blank,
  zone,
  group: 'up / open',
  event: 'spot',
  holds: ends.map((one) => hold(zone, one)),
  ...more,
});
const work = (...zones: ZoneHolds[]): HoldsOfWork => ({ record, zones });
const lifeIn = (lives: readonly Life[], group = 'up / open'): Life =>
  lives.find((life) => life.group === group) as Life;

const near = (months: number): readonly [number, number] => [months - 0.5, months + 0.5];
/** Zones whose holds scatter around half a year, by seed. */
const scattered = (zones: number, each: number, group = 'up / open'): ZoneHolds[] => {
  const drawn = drawnFrom(3);
  return Array.from({ length: zones }, (_, i) =>
    zoneWith(
      `zone/${group}${i}`,
      Array.from({ length: each }, () => near(1 + 6 * Math.sqrt(-Math.log(1 - drawn.uniform())))),
      { group },
    ),
  );
};

describe('what the holds of an exposure group tell', () => {
  it('is a curve with a median and its range over zones drawn anew', () => {
    const life = lifeIn(livesOf([work(...scattered(6, 4))], 1));
    expect(life).toMatchObject({ zones: 6, holds: 24, ends: 24, fit: { from: 'own' } });
    const { value, low, high } = life.median as NonNullable<Life['median']>;
    expect(value).toBeGreaterThan(4);
    expect(value).toBeLessThan(8);
    expect(low).toBeLessThan(value);
    expect(high).toBeGreaterThan(value);
    expect(codes(life.reasons)).toContain('hold: zones drawn anew');
    const sum = life.turnbull?.masses.reduce((all, { mass }) => all + mass, 0);
    expect(sum).toBeCloseTo(1, 9);
  });

  it('is the same for the same seed, and whatever order works and zones come in', () => {
    const zones = scattered(5, 4);
    const [one, other] = [
      livesOf([work(...zones)], 1),
      livesOf(
        [...zones].reverse().map((zone) => work(zone)),
        1,
      ),
    ];
    expect(other).toEqual(one);
  });

  it('is wider where all holds of a zone are alike than where they are not: zones are drawn, not holds', () => {
    const months = [2, 4, 6, 9, 12];
    const alike = months.map((m, i) =>
      zoneWith(
        `zone/${i}`,
        months.map(() => near(m)),
      ),
    );
    const mixed = months.map((_, i) => zoneWith(`zone/${i}`, months.map(near)));
    const width = (zones: ZoneHolds[]) => {
      const median = lifeIn(livesOf([work(...zones)], 1)).median;
      return (median?.high ?? 0) - (median?.low ?? 0);
    };
    expect(width(alike)).toBeGreaterThan(2 * width(mixed));
  });

  it('is no curve under three zones, and the count stands in its place', () => {
    const life = lifeIn(livesOf([work(zoneWith('zone/1', [near(2), near(3), near(4), near(5), near(6), near(7)]))], 1));
    expect(life).toMatchObject({ turnbull: null, fit: null, median: null });
    expect(life.reasons).toEqual([{ code: 'hold: too few zones', params: { holds: 6, zones: 1, least: 3 } }]);
  });

  it('borrows the shape of the collection with fewer than five ends, and says whose', () => {
    const few = ['a', 'b', 'c', 'd'].map((name, i) =>
      zoneWith(`zone/${name}`, [near(3 + i)], { group: 'down / sheltered' }),
    );
    const lives = livesOf([work(...scattered(6, 4), ...few)], 1);
    const life = lifeIn(lives, 'down / sheltered');
    expect(life.fit).toMatchObject({ from: 'borrowed', shape: { value: lifeIn(lives, 'all').withinGroups?.shape } });
    expect(codes(life.reasons)).toEqual(expect.arrayContaining(['hold: too few ends', 'hold: shape borrowed']));
    expect(life.median?.value).toBeGreaterThan(2);
  });

  it('borrows where one moment would suit all holds, so that the likelihood has no maximum', () => {
    const same = ['a', 'b', 'c', 'd', 'e', 'f'].map((name) =>
      zoneWith(`zone/${name}`, [[2, 5]], { group: 'down / sheltered' }),
    );
    const life = lifeIn(livesOf([work(...scattered(6, 4), ...same)], 1), 'down / sheltered');
    expect(life.fit?.from).toBe('borrowed');
    expect(codes(life.reasons)).toContain('life: all share a stretch');
    expect(life.median?.value).toBeGreaterThan(2);
    expect(life.median?.value).toBeLessThan(5);
  });

  it('borrows how alike holds of a group are, so that its curve does not fall before its steps do', () => {
    const groups = [2, 5, 11].flatMap((months, k) =>
      ['a', 'b', 'c'].map((name, i) =>
        zoneWith(`zone/${k}${name}`, [near(months * 0.8 + 0.2 * i), near(months), near(months * 1.2)], {
          group: `group ${k}`,
        }),
      ),
    );
    const same = ['a', 'b', 'c'].map((name) =>
      zoneWith(
        `zone/same${name}`,
        [
          [3, 4.1],
          [2.8, 4.2],
        ],
        { group: 'up / splash' },
      ),
    );
    const life = lifeIn(livesOf([work(...groups, ...same)], 1), 'up / splash');
    expect(life.fit?.from).toBe('borrowed');
    expect(life.median?.value).toBeGreaterThan(3);
    expect(life.median?.value).toBeLessThan(4.1);
  });

  it('has no fit where there is nothing to borrow', () => {
    const same = ['a', 'b', 'c', 'd', 'e', 'f'].map((name) => zoneWith(`zone/${name}`, [[2, 5]]));
    const life = lifeIn(livesOf([work(...same)], 1));
    expect(life.fit).toBeNull();
    expect(life.turnbull?.masses).toEqual([{ left: 2, right: 5, mass: 1 }]);
    expect(codes(life.reasons)).toEqual(['life: all share a stretch', 'hold: nothing to borrow']);
  });

  it('has no fit where nothing came back, borrowed or not', () => {
    const clear = ['a', 'b', 'c'].map((name) =>
      zoneWith(
        `zone/${name}`,
        [
          [11, null],
          [12, null],
        ],
        { group: 'down / sheltered' },
      ),
    );
    const life = lifeIn(livesOf([work(...scattered(6, 4), ...clear)], 1), 'down / sheltered');
    expect(life).toMatchObject({ ends: 0, fit: null, median: null });
    expect(codes(life.reasons)).toContain('life: no end seen');
  });

  it('never mixes the two events: looks and cover have a collection of their own', () => {
    const cover = scattered(4, 3, 'vertical / open').map((zone) => ({ ...zone, event: 'cover' as const }));
    const lives = livesOf([work(...scattered(4, 3), ...cover)], 1);
    expect(lives.map(({ group, event }) => `${group}, ${event}`)).toEqual([
      'up / open, spot',
      'all, spot',
      'vertical / open, cover',
      'all, cover',
    ]);
  });

  it('leaves out holds of earlier spans, and those that tell nothing', () => {
    const spans = [blank.spans[0], blank.spans[0]] as ZoneHolds['spans'];
    const zone = zoneWith('zone/1', [], {
      spans,
      holds: [hold('zone/1', near(4)), hold('zone/1', near(6), { span: 1 }), hold('zone/1', [0, null], { span: 1 })],
    });
    const life = lifeIn(livesOf([work(zone)], 1));
    expect(life.holds).toBe(1);
    expect(life.reasons).toContainEqual({ code: 'hold: earlier spans left out', params: { holds: 1 } });
  });

  it('counts holds noticed in passing', () => {
    const zone = zoneWith('zone/1', [], { holds: [hold('zone/1', near(4), { inPassing: true })] });
    expect(lifeIn(livesOf([work(zone)], 1)).inPassing).toBe(1);
  });

  it('keeps its band of lasting shares between 0 and 1 and falling', () => {
    const { fit } = lifeIn(livesOf([work(...scattered(6, 4))], 1));
    const bands = [0, 2, 4, 8, 16, 60].map((months) => bandAt(fit as NonNullable<typeof fit>, months));
    expect(bands[0]).toEqual({ low: 1, high: 1 });
    for (const [i, { low, high }] of bands.entries()) {
      expect(low).toBeLessThanOrEqual(high);
      expect(low).toBeLessThanOrEqual(bands[i - 1]?.low ?? 1);
    }
  });

  it('is nothing for a collection without coatings', () => {
    expect(livesOf([], 1)).toEqual([]);
    expect(livesOf([work(...holdsOf(tended({}), today))], 1)).toEqual([]);
  });
});

it('sets with and without a cause side by side, each with its counts', () => {
  const looks = ['2022', '2023', '2024', '2025'].flatMap((year) => [
    { date: `${year}-07-01`, result: 'clear' as const },
    { date: `${year}-08-01`, result: 'green' as const },
  ]);
  const treatments = [
    ...waxed('2022-05-01', '2023-05-01', '2024-05-01', '2025-05-01'),
    { type: 'cause removed', date: '2024-03-01' },
  ];
  const lives = livesOf([{ record, zones: holdsOf(tended({ looks, treatments }), today) }], 1);
  const life = lives[0] as Life;
  expect(life.withAndWithout).toMatchObject({
    with: { zones: 1, holds: 2, ends: 2 },
    without: { zones: 1, holds: 2, ends: 2 },
    removed: [{ date: '2024-03-01' }],
  });
});

it('works out a collection of 2,000 zones and 20,000 holds in seconds', () => {
  const groups = [
    'up / open',
    'up / splash',
    'vertical / open',
    'vertical / sheltered',
    'recess / drip',
    'down / sheltered',
  ];
  const drawn = drawnFrom(5);
  const zones = Array.from({ length: 2000 }, (_, i) => {
    const ends = Array.from({ length: 10 }, (): [number, number | null] => {
      const life = 8 * Math.sqrt(-Math.log(1 - drawn.uniform())) * Math.exp(0.3 * drawn.normal());
      const seen = Math.floor(life * 30.4375 + 20 * drawn.uniform());
      return life > 11 ? [11, null] : [Math.max(0, (seen - 40) / 30.4375), (seen + 20) / 30.4375];
    });
    return zoneWith(`zone/${i}`, ends, { group: groups[i % groups.length] as string });
  });
  const started = performance.now();
  expect(livesOf([work(...zones)], 1)).toHaveLength(groups.length + 1);
  expect(performance.now() - started).toBeLessThan(20_000);
});
