import { equivalentAnnualCost, type MoneyRules, netPresentValue, type Payments } from '../money';
import type { Reason, Thing } from '../record';
import { optionNumbers } from './numbers';
import { currencyOf, paymentsOf } from './payments';
import { because } from './reasonCodes';

/** Whole units of the option's currency; low and high as far as its prices may be off. */
export interface Span {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface AtRate {
  /** Real rate, share a year. */
  readonly rate: number;
  readonly present: Span;
  /** The same in equal parts at the end of each year. */
  readonly yearly: Span;
  /** A year's cost over its good months; null where those are not known, high null where there may be none. */
  readonly perGoodMonth: { readonly value: number; readonly low: number; readonly high: number | null } | null;
}

/** What an option comes to over the years looked at. */
export interface OptionFigures {
  readonly option: Thing<'option'>;
  readonly currency: string;
  readonly payments: Payments;
  /** At the rate set in the middle, one step lower before it and one step higher after it: always three. */
  readonly atRates: readonly [AtRate, AtRate, AtRate];
  /** Share of the sum of today's worth that rests on prices nobody gave, 0 to 1. */
  readonly madeUp: number;
  readonly reasons: readonly Reason[];
}

/** An option without figures, and why. */
export interface NotReckoned {
  readonly option: Thing<'option'>;
  readonly reasons: readonly Reason[];
}

export const isReckoned = (told: OptionFigures | NotReckoned): told is OptionFigures => 'payments' in told;

export const perGoodMonth = (
  { value, low, high }: Span,
  months: Thing<'option'>['body']['goodMonths'],
): AtRate['perGoodMonth'] =>
  !months || months.value === 0
    ? null
    : {
        value: value / months.value,
        low: low / Math.max(months.high, months.value),
        high: months.low > 0 ? high / Math.min(months.low, months.value) : null,
      };

/** The three rates: as set, and a point under and over. */
export const threeRates = (rate: number): readonly [number, number, number] => {
  const step = optionNumbers.rateStep.value;
  // Two decimals of a per cent are all anybody sets; sums of binary fractions have more.
  const tidy = (r: number) => Math.round(r * 1e6) / 1e6;
  return [tidy(rate - step), rate, tidy(rate + step)];
};

const atRate = (option: Thing<'option'>, rules: MoneyRules, rate: number): AtRate => {
  const { body } = option;
  const span = (of: (payments: Payments) => number): Span => ({
    value: of(paymentsOf(body, rules)),
    low: of(paymentsOf(body, rules, { price: -1 })),
    high: of(paymentsOf(body, rules, { price: 1 })),
  });
  const yearly = span((payments) => equivalentAnnualCost(payments, rate, rules.years));
  return {
    rate,
    present: span((payments) => netPresentValue(payments, rate)),
    yearly,
    perGoodMonth: perGoodMonth(yearly, body.goodMonths),
  };
};

/** Present value, equal yearly cost and cost per good month at three rates; or why there is none. */
export const figuresOf = (option: Thing<'option'>, rules: MoneyRules): OptionFigures | NotReckoned => {
  const { body } = option;
  const currency = currencyOf(body);
  if (currency === undefined) return { option, reasons: [because('option: no costs')] };
  if (typeof currency !== 'string') return { option, reasons: [currency] };
  const [low, middle, high] = threeRates(rules.rate);
  const worth = (costs: typeof body.costs) => netPresentValue(paymentsOf({ ...body, costs }, rules), rules.rate);
  const all = worth(body.costs);
  const madeUp = all > 0 ? worth(body.costs.filter(({ price }) => price === 'made up')) / all : 0;
  const { goodMonths: months } = body;
  return {
    option,
    currency,
    payments: paymentsOf(body, rules),
    atRates: [atRate(option, rules, low), atRate(option, rules, middle), atRate(option, rules, high)],
    madeUp,
    reasons: [
      because('option: years and rate', { years: rules.years, rate: rules.rate }),
      ...(rules.set ? [] : [because('option: rules not set')]),
      ...(madeUp > 0 ? [because('option: prices made up', { share: madeUp })] : []),
      ...body.costs
        .filter(({ first }) => first > rules.years)
        .map(({ name }) => because('option: beyond the years', { line: name, years: rules.years })),
      ...(months === undefined ? [because('option: good months not known')] : []),
      ...(months?.value === 0 ? [because('option: no good month')] : []),
    ],
  };
};
