import type { Money } from '../money';
import type { Gift } from './pipeline';
import { chanceOf } from './pipeline';
import { targetOn } from './target';

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
  /** Gifts to come without a day: in no line. Places in the list. */
  readonly undated: readonly number[];
}

interface CourseAsked {
  readonly target: Money;
  readonly priced: string;
  readonly gifts: readonly Gift[];
  /** How much of each gift has a use here (see coverOf), minor units. */
  readonly used: readonly number[];
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
const isHere = ({ state }: Gift): boolean => state === 'spent' || state === 'in hand';

/** How the fund goes on month by month against a target that rises with prices. What lies there bears no interest: the careful reckoning. */
export const courseOf = (asked: CourseAsked): Course => {
  const { target, priced, gifts, used, yearly, today, growth, years } = asked;
  const sum = (of: (gift: Gift, use: number) => number): number =>
    Math.round(gifts.reduce((all, gift, place) => all + of(gift, used[place] ?? 0), 0));
  const here = sum((gift, use) => (isHere(gift) ? use : 0));
  const come = (state: Gift['state'], day: string): number =>
    sum((gift, use) =>
      gift.state === state && gift.expected !== undefined && gift.expected <= day ? use * chanceOf(gift) : 0,
    );
  const months = Array.from({ length: years * 12 + 1 }, (_, n): Month => {
    const day = monthAfter(today, n);
    const inHand = here + Math.round(((yearly?.minor ?? 0) * n) / 12);
    const pledged = inHand + come('pledged', day);
    return {
      day,
      target: targetOn(target, priced, day, growth).minor,
      inHand,
      pledged,
      hoped: pledged + come('hoped', day),
    };
  });
  const first = (level: Level): string | null => months.find((month) => month[level] >= month.target)?.day ?? null;
  return {
    months,
    meets: { inHand: first('inHand'), pledged: first('pledged'), hoped: first('hoped') },
    undated: gifts.flatMap((gift, place) => (toCome(gift) && gift.expected === undefined ? [place] : [])),
  };
};
