import type { Money } from '../money';
import { coverOf } from './cover';
import { chanceOf, type Fund, type Gift } from './pipeline';
import { linesOn } from './target';

/** The fund in one month to come, in minor units. Each step holds the one before it; none of them is money in hand but the first. */
export interface Month {
  /** First day of the month; today in the first row. */
  readonly day: string;
  readonly target: number;
  /** In hand, and what comes by itself in a year. */
  readonly inHand: number;
  /** With what is pledged, on the days it is expected. */
  readonly pledged: number;
  /** With what is hoped for, each by its chance. */
  readonly hoped: number;
}

export const levels = ['inHand', 'pledged', 'hoped'] as const;
export type Level = (typeof levels)[number];

export interface Course {
  readonly months: readonly Month[];
  /** First month each line reaches the target; null where it does not within the years looked at. */
  readonly meets: Readonly<Record<Level, string | null>>;
  /** Gifts to come without a day, or with one that is past: in no line. Places in the list. */
  readonly undated: readonly number[];
}

interface CourseAsked {
  readonly lines: Fund['lines'];
  readonly priced: string;
  readonly gifts: readonly Gift[];
  readonly yearly: Money | undefined;
  readonly today: string;
  readonly growth: number;
  /** Years looked at. */
  readonly years: number;
}

const monthAfter = (today: string, n: number): string => {
  if (n === 0) return today;
  const months = Number(today.slice(0, 4)) * 12 + Number(today.slice(5, 7)) - 1 + n;
  return `${String(Math.floor(months / 12)).padStart(4, '0')}-${String((months % 12) + 1).padStart(2, '0')}-01`;
};

const toCome = ({ state }: Gift): boolean => state === 'pledged' || state === 'hoped';

/** Nobody knows when: no day is given, or it went by. */
const isOpen = (gift: Gift, today: string): boolean =>
  toCome(gift) && (gift.expected === undefined || gift.expected < today);

/** What has come by a day, or is expected to, each by its chance; those alike in what they may pay for as one. */
const comeBy = (gifts: readonly Gift[], today: string, day: string): readonly Gift[] => {
  const alike = new Map<string, Gift>();
  for (const gift of gifts) {
    if (gift.state === 'lost' || isOpen(gift, today) || (toCome(gift) && (gift.expected ?? '') > day)) continue;
    const key = JSON.stringify([gift.state, gift.only ?? null]);
    const minor = Math.round(gift.amount.minor * chanceOf(gift)) + (alike.get(key)?.amount.minor ?? 0);
    alike.set(key, { ...gift, amount: { ...gift.amount, minor } });
  }
  return [...alike.values()];
};

/**
 * How the fund goes on month by month against a target that rises with prices. A gift tied to a cost counts up to what that cost is
 * then. What lies in the fund bears no interest: the careful reckoning.
 */
export const courseOf = ({ lines, priced, gifts, yearly, today, growth, years }: CourseAsked): Course => {
  const months = Array.from({ length: years * 12 + 1 }, (_, n): Month => {
    const day = monthAfter(today, n);
    const then = linesOn(lines, priced, day, growth);
    const byItself = { minor: Math.round(((yearly?.minor ?? 0) * n) / 12), currency: yearly?.currency ?? '' };
    const come: readonly Gift[] = [
      { fund: '', who: '', amount: byItself, state: 'in hand' },
      ...comeBy(gifts, today, day),
    ];
    const cover = coverOf(then, come);
    // What is tied to nothing and left over when all is paid is there still.
    const spare = (state: Gift['state']): number =>
      come.reduce(
        (sum, gift, place) =>
          gift.only === undefined && stepIs(gift, state) ? sum + gift.amount.minor - (cover.used[place] ?? 0) : sum,
        0,
      );
    const inHand = cover.inHand + spare('in hand');
    const pledged = inHand + cover.pledged + spare('pledged');
    return {
      day,
      target: then.reduce((sum, { amount }) => sum + amount.minor, 0),
      inHand,
      pledged,
      hoped: pledged + cover.hoped + spare('hoped'),
    };
  });
  const first = (level: Level): string | null => months.find((month) => month[level] >= month.target)?.day ?? null;
  return {
    months,
    meets: { inHand: first('inHand'), pledged: first('pledged'), hoped: first('hoped') },
    undated: gifts.flatMap((gift, place) => (isOpen(gift, today) ? [place] : [])),
  };
};

const stepIs = (gift: Gift, state: Gift['state']): boolean =>
  gift.state === state || (state === 'in hand' && gift.state === 'spent');
