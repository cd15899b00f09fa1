import { type Money, sumsByCurrency } from '../money';
import type { BodyOf } from '../record';

/** Lift days of a plan: what they cost together, one sum a currency, and the works that need a lift on a day none is booked. */
export const liftsOf = (
  plan: BodyOf<'yearPlan'>,
): {
  readonly days: number;
  readonly cost: readonly Money[];
  readonly unpriced: number;
  readonly notBooked: readonly string[];
} => {
  const days = plan.liftDays ?? [];
  const booked = new Set(days.map(({ day }) => day));
  const priced = days.flatMap(({ cost }) => cost ?? []);
  return {
    days: days.length,
    cost: sumsByCurrency(priced),
    unpriced: days.length - priced.length,
    notBooked: plan.works
      .filter(({ lift, day }) => lift && (day === undefined ? days.length === 0 : !booked.has(day)))
      .map(({ work }) => work),
  };
};
