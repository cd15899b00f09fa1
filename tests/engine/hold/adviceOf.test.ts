import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Advice, adviceOf, holdsOf, type Life, livesOf } from '../../../src/engine/hold';
import type { SculptureRecord } from '../../../src/engine/record';
import { codes } from '../change/invented';
import { type InventedLook, mays, type Tended, tended, today, waxed } from './garden';

const months = (start: string, end: string): number => (Date.parse(end) - Date.parse(start)) / 86_400_000 / 30.4375;

/** A collection of zones like each other, each waxed every May and looked at so many days after, to have a shape to borrow. */
const neighbours = (clear: readonly number[], green: readonly number[]): SculptureRecord[] =>
  ['p', 'q', 'r', 's'].map((work, k) =>
    tended({
      work,
      exposure: { A: ['vertical', 'open'] },
      treatments: waxed('2023-05-01', '2024-05-01', '2025-05-01'),
      looks: [2023, 2024, 2025].flatMap((year, i): InventedLook[] => [
        { date: dayAfter(`${year}-05-01`, (clear[i] as number) + 9 * k), result: 'clear' },
        { date: dayAfter(`${year}-05-01`, (green[i] as number) + 9 * k), result: 'green' },
      ]),
    }),
  );
const dayAfter = (day: string, n: number): string =>
  new Date(Date.parse(day) + n * 86_400_000).toISOString().slice(0, 10);

/** About five months: seen clear after 120 to 180 days, green four to eight weeks on. */
const aboutFive = neighbours([120, 150, 180], [160, 178, 236]);

const advise = (
  work: Tended,
  others: readonly SculptureRecord[] = aboutFive,
  day = today,
): { advice: Advice; lives: Life[] } => {
  const record = tended({ exposure: { A: ['vertical', 'part sheltered'] }, ...work });
  const all = [record, ...others].map((one) => ({ record: one, zones: holdsOf(one, day) }));
  const lives = livesOf(all, 1);
  const [advice] = adviceOf(record, all[0]?.zones ?? [], lives, day) as [Advice];
  return { advice, lives };
};

/** Three years of holds of about five months. */
const threeYears: readonly InventedLook[] = [2023, 2024, 2025].flatMap((year, i): InventedLook[] => [
  { date: dayAfter(`${year}-05-01`, 130 + 8 * i), result: 'clear' },
  { date: dayAfter(`${year}-05-01`, 180 + 8 * i), result: 'green' },
]);
const everyMay = waxed('2023-05-01', '2024-05-01', '2025-05-01', '2026-05-01');

describe('wax again by', () => {
  it('is a day with its range, from the last three holds of the zone, with the shape said to be borrowed', () => {
    const { advice } = advise({ treatments: everyMay, looks: threeYears }, aboutFive, '2026-06-01');
    const { day, low, high } = advice.waxAgainBy as NonNullable<Advice['waxAgainBy']>;
    expect(months('2026-05-01', day)).toBeGreaterThan(3);
    expect(months('2026-05-01', day)).toBeLessThan(6.5);
    expect((low ?? '') < day && day < (high ?? '')).toBe(true);
    expect(codes(advice.reasons)).toEqual(
      expect.arrayContaining(['hold: from its own holds', 'hold: shape within zones', 'hold: chance']),
    );
  });

  it('moves later once a look has seen it clear longer', () => {
    const waxed = { treatments: everyMay, looks: threeYears };
    const before = advise(waxed, aboutFive, '2026-06-01').advice.waxAgainBy?.day ?? '';
    const clear: InventedLook = { date: '2026-09-20', result: 'clear' };
    const { advice } = advise({ ...waxed, looks: [...threeYears, clear] }, aboutFive, '2026-09-21');
    expect((advice.waxAgainBy?.day ?? '') > before).toBe(true);
    expect(codes(advice.reasons)).toContain('hold: clear at the last look');
  });

  it('comes sooner for who allows less chance', () => {
    const by = (chance: number) =>
      advise(
        { treatments: everyMay, looks: threeYears, rules: { version: 1, returnLevel: 0.03, chance } },
        aboutFive,
        '2026-06-01',
      ).advice.waxAgainBy?.day ?? '';
    expect(by(0.2) < by(0.5)).toBe(true);
  });

  it('rests on the zones that lie like it where its own holds are too few', () => {
    const { advice } = advise({
      exposure: { A: ['vertical', 'open'] },
      treatments: waxed('2026-05-01'),
      looks: [{ date: '2026-05-10', result: 'clear' }],
    });
    expect(advice.waxAgainBy).not.toBeNull();
    expect(codes(advice.reasons)).toContain('hold: from its group');
  });

  it('is capped at twelve months, and at six where it faces up, lies open or in spray', () => {
    const own = (exposure: readonly string[]) => {
      const looks = [2010, 2014, 2018].flatMap((year, i): InventedLook[] => [
        { date: dayAfter(`${year}-05-01`, 1000 + 20 * i), result: 'clear' },
        { date: dayAfter(`${year}-05-01`, 1100 + 20 * i), result: 'green' },
      ]);
      const treatments = waxed('2010-05-01', '2014-05-01', '2018-05-01', '2026-05-01');
      return advise({ exposure: { A: exposure }, treatments, looks }, aboutFive, '2026-06-01').advice;
    };
    expect(own(['vertical', 'sheltered'])).toMatchObject({ waxAgainBy: { day: '2027-05-01', high: '2027-05-01' } });
    expect(codes(own(['vertical', 'sheltered']).reasons)).toContain('hold: capped');
    for (const severe of ['up', 'open', 'spray']) {
      expect(own([severe]).waxAgainBy?.day).toBe('2026-10-31');
      expect(codes(own([severe]).reasons)).toContain('hold: severe exposure');
    }
  });

  it('under three months is no date: only that waxing does not hold here', () => {
    const short = neighbours([20, 30, 40], [33, 41, 68]);
    const looks = [2023, 2024, 2025].flatMap((year, i): InventedLook[] => [
      { date: dayAfter(`${year}-05-01`, 25 + 4 * i), result: 'clear' },
      { date: dayAfter(`${year}-05-01`, 45 + 4 * i), result: 'green' },
    ]);
    const { advice } = advise({ treatments: everyMay, looks }, short, '2026-05-10');
    expect(advice).toMatchObject({ waxAgainBy: null, asksConservator: true });
    expect(codes(advice.reasons)).toContain('hold: does not hold here');
  });

  it('is not known, and says why, with neither holds nor a group', () => {
    const { advice } = advise({ treatments: waxed('2026-05-01') }, []);
    expect(advice).toMatchObject({ waxAgainBy: null, nextLook: null, asksConservator: false, past: false });
    expect(codes(advice.reasons)).toContain('hold: too few holds, no group');
  });

  it('is not known without a coating', () => {
    const { advice } = advise({ looks: [{ date: '2026-07-01', result: 'green' }] });
    expect(advice).toMatchObject({ waxAgainBy: null, nextLook: null, ifCoated: null });
    expect(codes(advice.reasons)).toContain('hold: no coating on now');
  });

  it('is not asked for where the green is back: it is said to be back', () => {
    const back: InventedLook = { date: '2026-09-01', result: 'green' };
    const { advice } = advise({ treatments: everyMay, looks: [...threeYears, back] });
    expect(advice).toMatchObject({ waxAgainBy: null, past: true, nextLook: null });
    expect(codes(advice.reasons)).toEqual(
      expect.arrayContaining(['hold: green is back', 'hold: look after the next coating']),
    );
  });

  it('tells between which days the level was reached where rounds a year apart are all there is', () => {
    const { advice } = advise(
      {
        treatments: waxed('2022-05-20', '2023-05-20', '2024-05-20', '2025-05-20', '2026-05-20'),
        rounds: mays(2023, 0.1, 0.1, 0.1, 0.1),
      },
      [],
    );
    expect(advice.waxAgainBy).toBeNull();
    expect(advice.reasons).toContainEqual({
      code: 'hold: level reached in between',
      params: { percent: 25, first: '2026-05-20', last: '2027-05-12' },
    });
  });

  it('is past once half of such coatings would be gone', () => {
    const at = (day: string) => advise({ treatments: everyMay, looks: threeYears }, aboutFive, day).advice;
    expect(at('2026-06-01').past).toBe(false);
    expect(at('2027-04-01').past).toBe(true);
  });
});

describe('next look', () => {
  it('halves what the last holds leave open: rounds a year apart lead to a look in the middle', () => {
    const treatments = waxed('2023-05-20', '2024-05-20', '2025-05-20', '2026-05-21');
    const { advice } = advise({ treatments, rounds: mays(2024, 0.1, 0.1, 0.1) }, [], '2026-06-01');
    expect(advice.nextLook?.day).toBe('2026-11-12'); // a Thursday as the wax was, half of 357 days on
    expect(codes(advice.nextLook?.reasons ?? [])).toEqual(['hold: tells most', 'hold: no walk day yet']);
  });

  it('moves to the weekday most looks were made on', () => {
    const { advice } = advise({ treatments: everyMay, looks: threeYears }, aboutFive, '2026-06-01');
    const most = [...threeYears].map(({ date }) => new Date(date).getUTCDay());
    const day = new Date(advice.nextLook?.day ?? '').getUTCDay();
    expect(most.filter((one) => one === day).length).toBe(
      Math.max(...most.map((one) => most.filter((x) => x === one).length)),
    );
    expect(codes(advice.nextLook?.reasons ?? [])).toContain('hold: walk day');
  });

  it('is the next walk where the best day has passed, never a day before today', () => {
    const at = (day: string) => advise({ treatments: everyMay, looks: threeYears }, aboutFive, day).advice.nextLook;
    const late = at('2027-02-01');
    expect((late?.day ?? '') >= '2027-02-01' && (late?.day ?? '') <= '2027-02-07').toBe(true);
    expect(codes(late?.reasons ?? [])).toContain('hold: sooner is better');
  });

  it('is after the look just made', () => {
    const day = '2026-10-15';
    const clear: InventedLook = { date: day, result: 'clear' };
    const { advice } = advise({ treatments: everyMay, looks: [...threeYears, clear] }, aboutFive, day);
    expect((advice.nextLook?.day ?? '9999') > day).toBe(true);
  });

  it('is not asked for where the green never came back', () => {
    const treatments = waxed('2023-06-01', '2024-06-01', '2025-06-01', '2026-06-01');
    const { advice } = advise({ treatments, rounds: mays(2024, 'nothing', 'nothing', 'nothing') }, []);
    expect(advice.nextLook).toBeNull();
    expect(codes(advice.reasons)).toContain('hold: never came back, yearly round will do');
  });

  it('has a best day between its two ends', () => {
    const { advice } = advise({ treatments: everyMay, looks: threeYears }, aboutFive, '2026-06-01');
    const { low, high } = advice.nextLook as NonNullable<Advice['nextLook']>;
    expect((low ?? '') < (high ?? '')).toBe(true);
  });
});

it('leaves zones that were split out', () => {
  const record = tended({
    zones: {
      A: {
        split: {
          on: '2025-01-01',
          into: [
            { zone: 'zone/B', share: 0.5 },
            { zone: 'zone/C', share: 0.5 },
          ],
        },
      },
      B: {},
      C: {},
    },
    treatments: waxed('2025-05-01'),
  });
  const zones = holdsOf(record, today);
  expect(adviceOf(record, zones, [], today).map(({ zone }) => zone)).toEqual(['zone/B', 'zone/C']);
});

it('holds for any history: days are days, ranges are in order, no number runs away', () => {
  const day = fc.integer({ min: 0, max: 2000 }).map((n) => dayAfter('2021-01-01', n));
  const look = fc.record({
    date: day,
    result: fc.constantFrom('clear' as const, 'green' as const, 'unsure' as const),
    wet: fc.constantFrom('dry' as const, 'wet' as const, null),
    planned: fc.boolean(),
  });
  const vague = fc.oneof(
    day,
    day.map((d) => d.slice(0, 7)),
    day.map((d) => d.slice(0, 4)),
    fc.constantFrom('before 2022', 'spring', 'about 2023'),
  );
  const treatment = fc.record({
    type: fc.constantFrom('wax', 'wax', 'spot wax', 'strip', 'cause removed', 'wash'),
    date: vague,
  });
  fc.assert(
    fc.property(fc.array(treatment, { maxLength: 9 }), fc.array(look, { maxLength: 14 }), (treatments, looks) => {
      const { advice, lives } = advise({ treatments, looks }, [], '2026-06-01');
      const record = tended({ treatments, looks });
      for (const { lower, upper } of holdsOf(record, '2026-06-01').flatMap(({ holds }) => holds)) {
        expect(lower).toBeGreaterThanOrEqual(0);
        expect(upper === null || (upper > lower && Number.isFinite(upper))).toBe(true);
      }
      for (const figure of [advice.waxAgainBy, advice.nextLook, advice.ifCoated]) {
        if (!figure) continue;
        expect(figure.day).toMatch(/^\d{4}-\d{2}-\d{2}$/);
        if (figure.low && figure.high) expect(figure.low <= figure.high).toBe(true);
      }
      if (advice.nextLook) expect(advice.nextLook.day >= '2026-06-01').toBe(true);
      for (const { median } of lives) if (median) expect(Number.isFinite(median.value)).toBe(true);
    }),
    { numRuns: 400 },
  );
});
