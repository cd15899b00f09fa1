import { overtakesIn } from '../money';
import type { Reason } from '../record';
import { type AtRate, isReckoned, type NotReckoned, type OptionFigures } from './figures';
import { because } from './reasonCodes';

const middle = ({ atRates }: OptionFigures): AtRate => atRates[1];
const nameOf = ({ option }: OptionFigures): string => option.thing;

/** Rows of one currency, to be set side by side: the collection's own, or that of the first; the others stand apart, and why. */
export const inOneCurrency = (
  told: readonly (OptionFigures | NotReckoned)[],
  here: string | undefined,
): { readonly rows: readonly OptionFigures[]; readonly apart: readonly NotReckoned[] } => {
  const reckoned = told.filter(isReckoned);
  const currency = here ?? reckoned[0]?.currency;
  const strange = reckoned.filter((row) => row.currency !== currency);
  return {
    rows: reckoned.filter((row) => row.currency === currency),
    apart: [
      ...told.filter((row): row is NotReckoned => !isReckoned(row)),
      ...strange.map(({ option, currency: other }) => ({
        option,
        reasons: [because('money: not the currency here', { currency: other, here: currency ?? '' })],
      })),
    ],
  };
};

const leastBy = (rows: readonly OptionFigures[], of: (row: OptionFigures) => number | undefined) => {
  const told = rows.flatMap((row) => {
    const value = of(row);
    return value === undefined ? [] : [{ row, value }];
  });
  told.sort((a, b) => a.value - b.value);
  return { least: told[0]?.row, most: told.at(-1)?.row, count: told.length };
};

export const yearlyOf = (row: OptionFigures): number => middle(row).yearly.value;
export const monthlyOf = (row: OptionFigures): number | undefined => middle(row).perGoodMonth?.value;

/** The option whose good months cost least at the rate set; where none has months, whose year costs least. Undefined of none. */
export const bestBuy = (rows: readonly OptionFigures[]): OptionFigures | undefined =>
  leastBy(rows, monthlyOf).least ?? leastBy(rows, yearlyOf).least;

/**
 * What a reader of the table must not overlook, whichever way is liked: which is cheapest and which dearest, by year and by good month,
 * and from which year the dearer at the start has cost no more. Figures of one currency.
 */
export const sideBySide = (rows: readonly OptionFigures[]): readonly Reason[] => {
  if (rows.length < 2) return [];
  const year = leastBy(rows, yearlyOf);
  const month = leastBy(rows, monthlyOf);
  const said: Reason[] = [];
  if (year.least && year.most) {
    said.push(because('option: cheapest a year', { option: nameOf(year.least) }));
    said.push(because('option: dearest a year', { option: nameOf(year.most) }));
  }
  if (month.count > 1 && month.least && month.most) {
    said.push(because('option: cheapest per good month', { option: nameOf(month.least) }));
    said.push(because('option: dearest per good month', { option: nameOf(month.most) }));
  }
  return said;
};

/** From which year one option has cost no more than each of the others, in worth today at the rate set. */
export const overtaking = (one: OptionFigures, others: readonly OptionFigures[]): readonly Reason[] =>
  others
    .filter((other) => other !== one)
    .map((other) => {
      const year = overtakesIn(one.payments, other.payments, middle(one).rate);
      const names = { option: nameOf(one), other: nameOf(other) };
      if (year === null) return because('option: dearer throughout', { ...names, years: one.payments.length - 1 });
      return year === 0 ? because('option: never dearer', names) : because('option: overtakes', { ...names, year });
    });

/** What speaks against an option in its own figures, beside the others: said of the favourite first of all. */
export const figuresAgainst = (one: OptionFigures, rows: readonly OptionFigures[]): readonly Reason[] => {
  const others = rows.filter((other) => other !== one);
  const { body } = one.option;
  const year = leastBy(rows, yearlyOf);
  const said: Reason[] = [];
  if (others.length > 0 && year.most === one) said.push(because('option: dearest a year', { option: nameOf(one) }));
  else if (others.length > 0 && year.least && year.least !== one)
    said.push(because('option: cheapest a year', { option: nameOf(year.least) }));
  said.push(
    ...overtaking(one, others).filter(
      ({ code }) => code === 'option: overtakes' || code === 'option: dearer throughout',
    ),
  );
  if (body.irreversible > 0)
    said.push(
      because('option: steps that cannot be taken back', {
        count: body.irreversible,
        size: body.irreversibleSize ?? '',
      }),
    );
  if (body.goodMonths?.from === 'said') said.push(because('option: good months only said'));
  if (body.goodMonths?.from === 'published') said.push(because('option: months from elsewhere'));
  if (one.madeUp > 0) said.push(because('option: prices made up', { share: one.madeUp }));
  for (const [i, rate] of one.atRates.entries()) {
    const before = bestBuy(rows);
    const best = i === 1 || before !== one ? undefined : bestAt(rows, i);
    if (best && best !== one)
      said.push(because('option: order turns at rate', { option: nameOf(one), other: nameOf(best), rate: rate.rate }));
  }
  const near = [...others]
    .sort((a, b) => (monthlyOf(a) ?? 0) - (monthlyOf(b) ?? 0))
    .find((other) => overlap(one, other));
  if (near) said.push(because('option: ranges overlap', { option: nameOf(one), other: nameOf(near) }));
  return said;
};

const bestAt = (rows: readonly OptionFigures[], i: number): OptionFigures | undefined =>
  leastBy(rows, (row) => row.atRates[i]?.perGoodMonth?.value).least ??
  leastBy(rows, (row) => row.atRates[i]?.yearly.value).least;

/** The one is the cheaper per good month, yet its range and the other's meet: prices may turn the order. */
const overlap = (one: OptionFigures, other: OptionFigures): boolean => {
  const [a, b] = [middle(one).perGoodMonth, middle(other).perGoodMonth];
  return a !== null && b !== null && a.value < b.value && (a.high === null || a.high > b.low);
};
