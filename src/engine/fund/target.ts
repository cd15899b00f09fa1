import { type Money, priceAfter, sumOf, times } from '../money';
import { daysBetween, type Reason } from '../record';
import type { Fund } from './pipeline';

/** Years from one day to another: whole ones by the calendar, then the part of the one begun. Under 0 where the second comes first. */
export const yearsBetween = (from: string, to: string): number => {
  if (to < from) return -yearsBetween(to, from);
  const on = (years: number): string => `${String(Number(from.slice(0, 4)) + years).padStart(4, '0')}${from.slice(4)}`;
  const whole = Number(to.slice(0, 4)) - Number(from.slice(0, 4)) - (to.slice(4) < from.slice(4) ? 1 : 0);
  return whole + daysBetween(on(whole), to) / daysBetween(on(whole), on(whole + 1));
};

/** What the fund must pay for at the prices of its day: all its lines, the reserve among them. */
export const targetOf = ({ lines }: Pick<Fund, 'lines'>, currency: string): Money | Reason =>
  sumOf(
    lines.map(({ amount }) => amount),
    currency,
  );

/** The target on a later day, prices rising by `growth` a year. Not before the day of the prices. */
export const targetOn = (target: Money, priced: string, day: string, growth: number): Money => ({
  minor: Math.round(priceAfter(target.minor, growth, Math.max(0, yearsBetween(priced, day)))),
  currency: target.currency,
});

type Line = Fund['lines'][number];

/** The lines at the prices of a later day. */
export const linesOn = (lines: readonly Line[], priced: string, day: string, growth: number): readonly Line[] =>
  lines.map((line) => ({ ...line, amount: targetOn(line.amount, priced, day, growth) }));

/** The lines with the reserve made anew: a share of all the others, as the last line; none where the share is undefined. */
export const withReserve = (
  lines: readonly Line[],
  share: number | undefined,
  name: string,
  currency: string,
): Line[] => {
  const others = lines.filter(({ contingency }) => !contingency);
  const sum = others.reduce((all, { amount }) => all + amount.minor, 0);
  if (share === undefined || sum === 0) return others;
  return [...others, { id: 'reserve', name, amount: times({ minor: sum, currency }, share), contingency: true }];
};

/** What must be laid by for good so that its yield carries a yearly cost; `spending` is the share that may be spent in a year. */
export const endowmentFor = (upkeep: Money, spending: number): Money => times(upkeep, 1 / spending);
