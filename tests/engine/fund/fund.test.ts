import { describe, expect, it } from 'vitest';
import {
  courseOf,
  coverOf,
  endowmentFor,
  type Fund,
  fundRefused,
  type Gift,
  giftRefused,
  linesOn,
  pipelineOf,
  savingFor,
  targetOf,
  targetOn,
  withReserve,
  yearsBetween,
} from '../../../src/engine/fund';
import { isMoney } from '../../../src/engine/money';

const euros = (units: number) => ({ minor: Math.round(units * 100), currency: 'EUR' });
const gift = (units: number, state: Gift['state'], more: Partial<Gift> = {}): Gift => ({
  ...{ fund: 'fund/1', who: 'somebody', amount: euros(units), state },
  ...more,
});

/** What the invented stair needs, and what has been promised. */
const stair = withReserve(
  [
    { id: 'strip', name: 'Strip, desalt, hot patina, wax', amount: euros(46_000) },
    { id: 'scaffold', name: 'Scaffold and draining the basin', amount: euros(7_500) },
    { id: 'oversight', name: 'Conservator and documentation', amount: euros(4_800) },
  ],
  0.12,
  'Reserve',
  'EUR',
);
const given = [
  gift(15_000, 'in hand', { received: '2026-01-10' }),
  gift(12_000, 'pledged', { expected: '2027-03-01' }),
  gift(4_000, 'pledged', { inKind: true, only: ['scaffold'], expected: '2027-05-01' }),
  gift(20_000, 'hoped', { chance: 0.4, expected: '2027-06-01' }),
  gift(9_000, 'hoped', { chance: 0.6, expected: '2027-04-01' }),
];
const target = targetOf({ lines: stair }, 'EUR');
if (!isMoney(target)) throw new Error(target.code);

describe('what a fund must pay for', () => {
  it('is its lines with the reserve, and rises with prices from the day they were asked', () => {
    expect(stair.at(-1)).toMatchObject({ amount: euros(6_996), contingency: true });
    expect(target.minor).toBe(6_529_600);
    expect(targetOn(target, '2026-03-02', '2027-03-02', 0.04).minor).toBe(6_790_784);
    expect(Math.round(targetOn(target, '2026-03-02', '2029-03-02', 0.04).minor / 100)).toBe(73_449);
  });

  it('has each of its lines at the prices of a later day', () => {
    const later = linesOn(stair, '2026-03-02', '2029-03-02', 0.04);
    expect(later.map(({ id }) => id)).toEqual(stair.map(({ id }) => id));
    expect(later[0]?.amount.minor).toBe(Math.round(4_600_000 * 1.04 ** 3));
  });

  it('does not fall before the day of its prices', () => {
    expect(targetOn(target, '2026-03-02', '2020-01-01', 0.04)).toEqual(target);
  });

  it('has its reserve made anew when a line changes, and loses it with the last line', () => {
    const dearer = withReserve([{ ...stair[0]!, amount: euros(50_000) }, ...stair.slice(1)], 0.12, 'Reserve', 'EUR');
    expect(dearer.at(-1)?.amount).toEqual(euros((50_000 + 7_500 + 4_800) * 0.12));
    expect(withReserve(stair, undefined, 'Reserve', 'EUR')).toHaveLength(3);
    expect(withReserve(stair.slice(-1), 0.12, 'Reserve', 'EUR')).toEqual([]);
  });

  it('counts whole years by the calendar, leap years or not', () => {
    expect(yearsBetween('2026-03-02', '2029-03-02')).toBe(3);
    expect(yearsBetween('2024-02-29', '2025-02-28')).toBe(0 + 365 / 365);
    expect(yearsBetween('2026-01-01', '2026-07-02')).toBeCloseTo(182 / 365, 12);
    expect(yearsBetween('2029-03-02', '2026-03-02')).toBe(-3);
  });

  it('needs so much laid by for good that its yield carries the upkeep', () => {
    expect(endowmentFor(euros(3_100), 0.04)).toEqual(euros(77_500));
  });
});

describe('in hand, pledged and hoped', () => {
  it('stand apart, and the guess by chances is no sum of them', () => {
    const pipeline = pipelineOf(given, 'EUR');
    if (!('inHand' in pipeline)) throw new Error(pipeline.code);
    expect(pipeline).toMatchObject({ inHand: euros(15_000), pledged: euros(16_000), hoped: euros(29_000) });
    expect(pipeline.inKind).toEqual(euros(4_000));
    expect(pipeline.guess).toEqual(euros(15_000 + 16_000 + 8_000 + 5_400));
  });

  it('let a promise have a chance too, and count a lost gift for nothing', () => {
    const pipeline = pipelineOf([gift(1_000, 'pledged', { chance: 0.5 }), gift(500, 'lost')], 'EUR');
    expect(pipeline).toMatchObject({ guess: euros(500), pledged: euros(1_000) });
  });

  it('leave what is spent out of the guess: it is gone, and nobody plans with it', () => {
    const pipeline = pipelineOf([gift(5_000, 'spent'), gift(100, 'in hand')], 'EUR');
    expect(pipeline).toMatchObject({ spent: euros(5_000), inHand: euros(100), guess: euros(100) });
  });

  it('are never added across currencies', () => {
    const pounds = gift(1, 'pledged', { amount: { minor: 100, currency: 'GBP' } });
    expect(pipelineOf([...given, pounds], 'EUR')).toMatchObject({ code: 'money: currencies mixed' });
  });
});

describe('gifts tied to lines', () => {
  it('are warned of where two of them are tied to one line that costs less', () => {
    const tied = [
      gift(5_000, 'in hand', { only: ['scaffold'] }),
      gift(4_000, 'pledged', { only: ['scaffold'] }),
      gift(1_000, 'pledged'),
    ];
    const { overfull, inHand, pledged, lines, used } = coverOf(stair, tied);
    expect(overfull).toEqual([{ lines: ['scaffold'], gifts: [0, 1], over: 150_000, all: false }]);
    expect([inHand, pledged]).toEqual([500_000, 350_000]);
    expect(lines.get('scaffold')).toEqual({ inHand: 500_000, pledged: 250_000, hoped: 0 });
    expect(used).toEqual([500_000, 250_000, 100_000]);
  });

  it('push a free gift to other lines before they are called of no use', () => {
    const lines = [
      { id: 'a', name: 'A', amount: euros(10) },
      { id: 'b', name: 'B', amount: euros(10) },
    ];
    const { used, overfull } = coverOf(lines, [gift(10, 'in hand'), gift(10, 'pledged', { only: ['a'] })]);
    expect(used).toEqual([1_000, 1_000]);
    expect(overfull).toEqual([]);
  });

  it('say enough, and not a fault, where all is paid and something is left', () => {
    expect(coverOf(stair, [gift(70_000, 'in hand')]).overfull).toMatchObject([{ all: true, over: 470_400 }]);
  });
});

describe('what to lay by', () => {
  it('brings the target together on its day, as the years go round with interest', () => {
    const wanted = targetOn(target, '2026-03-02', '2029-03-02', 0.04);
    const saving = savingFor(wanted, euros(15_000), '2026-03-02', '2029-03-02', 0.03);
    let fund = 15_000;
    for (let year = 0; year < 3; year++) fund = fund * 1.03 + (saving?.withInterest.minor ?? 0) / 100;
    expect(fund).toBeGreaterThanOrEqual(wanted.minor / 100);
    expect(fund).toBeLessThan(wanted.minor / 100 + 0.05);
    expect(saving?.without.minor).toBe(Math.ceil((wanted.minor - 1_500_000) / 3));
  });

  it('is nothing where the fund has enough, one payment within a year, and no answer on the day itself', () => {
    expect(savingFor(euros(100), euros(100), '2026-01-01', '2028-01-01', 0.03)?.withInterest.minor).toBe(0);
    expect(savingFor(euros(100), euros(40), '2026-01-01', '2026-06-01', 0)?.without).toEqual(euros(60));
    expect(savingFor(euros(100), euros(40), '2026-01-01', '2026-01-01', 0.03)).toBeNull();
  });
});

describe('the course of a fund', () => {
  const asked = { lines: stair, priced: '2026-03-02', gifts: given, today: '2026-10-15', growth: 0.04, years: 20 };

  it('meets a rising target only where money comes faster than prices rise', () => {
    expect(courseOf({ ...asked, yearly: euros(2_000) }).meets.inHand).toBeNull();
    const { meets, months } = courseOf({ ...asked, yearly: euros(9_000) });
    const at = months.findIndex(({ day }) => day === meets.pledged);
    expect(months[at]!.pledged).toBeGreaterThanOrEqual(months[at]!.target);
    expect(months[at - 1]!.pledged).toBeLessThan(months[at - 1]!.target);
    expect(String(meets.hoped) < String(meets.pledged)).toBe(true);
    expect(String(meets.pledged) < String(meets.inHand)).toBe(true);
  });

  it('lets no promise in before its day, and none without a day at all', () => {
    const { months, undated } = courseOf({
      ...asked,
      gifts: [...given, gift(9_999, 'pledged')],
      yearly: undefined,
    });
    const on = (day: string) => months.find((month) => month.day === day);
    expect(on('2027-02-01')).toMatchObject({ inHand: 1_500_000, pledged: 1_500_000, hoped: 1_500_000 });
    expect(on('2027-03-01')).toMatchObject({ inHand: 1_500_000, pledged: 2_700_000 });
    expect(on('2027-04-01')?.hoped).toBe(2_700_000 + 540_000);
    expect(undated).toEqual([5]);
  });

  it('does not count on a promise whose day is past, and names it', () => {
    const late = [...given, gift(50_000, 'pledged', { expected: '2026-10-14' })];
    const { months, undated } = courseOf({ ...asked, gifts: late, yearly: undefined });
    expect(months[0]?.pledged).toBe(1_500_000);
    expect(undated).toEqual([5]);
    const due = [...given, gift(50_000, 'pledged', { expected: '2026-10-15' })];
    expect(courseOf({ ...asked, gifts: due, yearly: undefined }).months[0]?.pledged).toBe(6_500_000);
  });

  it('is met now where what is in hand reaches what it costs today, though it cost less when it was priced', () => {
    const enough = [gift(67_000, 'in hand', { received: '2026-10-01' })];
    const { meets, months } = courseOf({ ...asked, gifts: enough, yearly: undefined });
    expect(meets.inHand).toBe('2026-10-15');
    expect(months[0]).toMatchObject({ inHand: 6_700_000 });
    expect(months[0]!.target).toBeGreaterThan(6_529_600);
    const short = [gift(66_000, 'in hand', { received: '2026-10-01' })];
    expect(courseOf({ ...asked, gifts: short, yearly: undefined }).meets.inHand).toBeNull();
  });

  it('lets a gift that is tied to one cost pay more of it as that cost rises, and no more than it', () => {
    const tied = [gift(8_000, 'in hand', { received: '2026-10-01', only: ['scaffold'] })];
    const { months } = courseOf({ ...asked, gifts: tied, yearly: undefined });
    const scaffold = (day: string) => targetOn(euros(7_500), '2026-03-02', day, 0.04).minor;
    expect(months[0]?.inHand).toBe(scaffold('2026-10-15'));
    expect(months[0]?.inHand).toBeLessThan(800_000);
    expect(months.at(-1)?.inHand).toBe(800_000);
  });

  it('starts today and then goes by the first of each month, over the end of a year', () => {
    const { months } = courseOf({ ...asked, yearly: undefined });
    expect(months.slice(0, 4).map(({ day }) => day)).toEqual(['2026-10-15', '2026-11-01', '2026-12-01', '2027-01-01']);
    expect(months).toHaveLength(241);
  });
});

describe('a fund or a gift is refused with a sentence', () => {
  const fund: Fund = { title: 'The stair', lines: stair, priced: '2026-03-02' };
  const today = '2026-10-15';

  it.each([
    ['fund: title missing', { title: ' ' }],
    ['fund: line without a name', { lines: [{ id: 'a', name: '', amount: euros(1) }] }],
    ['fund: line twice', { lines: [stair[0]!, stair[0]!] }],
    ['fund: wanted before priced', { wanted: '2025-01-01' }],
    ['fund: day of prices to come', { priced: '2026-10-16' }],
    ['money: below nothing', { upkeep: euros(-1) }],
    ['money: currencies mixed', { yearly: { minor: 1, currency: 'GBP' } }],
  ])('%s', (code, patch) => {
    expect(fundRefused({ ...fund, ...patch }, 'EUR', today)?.code).toBe(code);
  });

  it('in another currency than the collection', () => {
    expect(fundRefused(fund, 'GBP', today)?.code).toBe('money: currencies mixed');
    expect(fundRefused(fund, 'EUR', today)).toBeUndefined();
    expect(fundRefused(fund, undefined, today)).toBeUndefined();
  });

  it.each([
    ['fund: nobody named', { who: '' }],
    ['fund: nothing given', { amount: euros(0) }],
    ['money: below nothing', { amount: euros(-5) }],
    ['money: currencies mixed', { amount: { minor: 5, currency: 'GBP' } }],
    ['fund: chance missing', { state: 'hoped' as const }],
    ['fund: came before it was here', { received: '2026-10-16' }],
    ['fund: day it came missing', { received: undefined }],
    ['fund: not yet come', { state: 'pledged' as const }],
    ['fund: line not known', { only: ['roof'] }],
  ])('%s', (code, patch) => {
    expect(giftRefused({ ...given[0]!, ...patch } as Gift, fund, 'EUR', today)?.code).toBe(code);
  });

  it('and a right one is not', () => {
    for (const one of given) expect(giftRefused(one, fund, 'EUR', today)).toBeUndefined();
  });
});
