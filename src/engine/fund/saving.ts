import { compoundAmount, type Money, sinkingFund } from '../money';
import { yearsBetween } from './target';

/** What to lay by at the end of each year so that the target is met on the day it is wanted. */
export interface Saving {
  readonly years: number;
  /** The target on that day. */
  readonly target: Money;
  /** Where what lies in the fund bears interest, and where it bears none. */
  readonly withInterest: Money;
  readonly without: Money;
}

/** A sinking fund. `target` is that of the day wanted, `has` what is there today. Null where that day is here or past. */
export const savingFor = (
  target: Money,
  has: Money,
  today: string,
  wanted: string,
  interest: number,
): Saving | null => {
  const years = yearsBetween(today, wanted);
  if (years <= 0) return null;
  const yearly = (i: number): Money => {
    const missing = target.minor - has.minor * compoundAmount(i, years);
    // Under a year there is one payment, and it has no time to grow.
    const factor = years < 1 ? 1 : sinkingFund(i, years);
    return { minor: Math.max(0, Math.ceil(missing * factor - 1e-6)), currency: target.currency };
  };
  return { years, target, withInterest: yearly(interest), without: yearly(0) };
};
