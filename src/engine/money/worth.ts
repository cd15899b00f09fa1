import { capitalRecovery, presentWorth } from './factors';

/** What is paid, by year: [0] now, [1] at the end of the first year. Whole units of one currency. */
export type Payments = readonly number[];

/** The worth today of what is paid over the years; `rate` a share a year, over -1. */
export const netPresentValue = (payments: Payments, rate: number): number =>
  payments.reduce((sum, paid, year) => sum + paid * presentWorth(rate, year), 0);

/** The same sum in equal parts at the end of each of `years` years (1 or more): how ways of unlike lengths are compared. */
export const equivalentAnnualCost = (payments: Payments, rate: number, years: number): number =>
  netPresentValue(payments, rate) * capitalRecovery(rate, years);

/** The worth today of all that was paid by the end of each year. */
export const cumulativeWorth = (payments: Payments, rate: number): readonly number[] => {
  let sum = 0;
  return payments.map((paid, year) => {
    sum += paid * presentWorth(rate, year);
    return sum;
  });
};

/**
 * The year from which one way has cost no more than another, in worth today, and stays so to the end of the years looked at. Null
 * where it never does; 0 where it never cost more.
 */
export const overtakesIn = (one: Payments, other: Payments, rate: number): number | null => {
  const a = cumulativeWorth(one, rate);
  const b = cumulativeWorth(other, rate);
  // A cent of rounding is no difference.
  const dearer = a.map((sum, year) => sum > (b[year] ?? 0) + 0.005);
  const last = dearer.lastIndexOf(true);
  return last === dearer.length - 1 ? null : last + 1;
};
