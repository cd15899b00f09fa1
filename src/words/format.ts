import { type Money, noCurrency, placesOf, unitsOf } from '../engine/money';
import { fromTo, ours } from './inFigures';
import { written } from './numbers';
import { tongueNow } from './tongue';
import { areaNumber, decimalMark, unitOf } from './units';

export { fromTo, inQuotes } from './inFigures';
export {
  area,
  areaNumber,
  fieldText,
  fromUnit,
  inUnit,
  measure,
  measureNumber,
  measureTyped,
  numberTyped,
  type Quantity,
  unitOf,
} from './units';

/** Every number, date and amount on screen and paper goes through here, in the way of writing of the device. */

export const whole = (value: number): string => written(Math.round(value), 0, 0);

/** A number with at most so many places, none where they are noughts. */
export const number = (value: number, places = 2): string => written(value, 0, places);

/** A number with just so many places, for figures that stand under each other. */
export const fixed = (value: number, places: number): string => written(value, places, places);

/** A share between 0 and 1 as per cent; the ends are not rounded away. */
export const share = (value: number): string => {
  if (value > 0 && value < 0.01) return `${ours().under} 1 %`;
  if (value < 1 && value > 0.99) return `${ours().over} 99 %`;
  return `${whole(value * 100)} %`;
};

/** The currency as it stands before an amount: its code, so that no two dollars are taken for one. */
export const currency = (code: string): string => (code === noCurrency ? 'demo $' : code);

/** "EUR 46,000", "EUR 12.50": cents only where there are some, or where `cents` asks for them. */
export const money = (amount: Money, cents = !Number.isInteger(unitsOf(amount))): string => {
  const places = cents ? placesOf(amount.currency) : 0;
  return `${currency(amount.currency)} ${written(unitsOf(amount), places, places)}`;
};

/** An amount as it is typed into a field, to be read again: "46000.50", "46000,50" in German. */
export const moneyTyped = (amount: Money): string => {
  const units = unitsOf(amount);
  if (Number.isInteger(units)) return `${units}`;
  const text = units.toFixed(placesOf(amount.currency)).replace('.', decimalMark());
  // Three places after a short number could be read as thousands: a nought before says they are not.
  return placesOf(amount.currency) === 3 && units < 1000 ? `0${text}` : text;
};

/** Several amounts that stand under each other: all with cents where one has some. */
export const amounts = (list: readonly Money[]): readonly string[] => {
  const cents = list.some((amount) => !Number.isInteger(unitsOf(amount)));
  return list.map((amount) => money(amount, cents));
};

/** An amount worked out over years, to the whole unit: "EUR 7,585". Cents of such a figure mean nothing. */
export const roundMoney = (amount: Money): string =>
  `${currency(amount.currency)} ${written(Math.round(unitsOf(amount)), 0, 0)}`;

export type FigureUnit = 'index' | 'm2' | 'share' | 'colour';
const units = { index: whole, m2: areaNumber, share, colour: (value: number) => written(value, 1, 1) } as const;

/** A figure and its range as words: { value: "72", range: "64 to 79" }. */
export const figure = (
  { value, low, high }: { readonly value: number; readonly low: number; readonly high: number },
  as: FigureUnit = 'index',
): { readonly value: string; readonly range: string } => {
  const write = units[as];
  const unit = as === 'm2' ? ` ${unitOf('area')}` : '';
  return { value: `${write(value)}${unit}`, range: fromTo(write(low), write(high)) };
};

/** One for each way of writing, made when first asked for. */
const perLocale = <T>(make: (locale: string) => T): (() => T) => {
  const made = new Map<string, T>();
  return () => {
    const { locale } = tongueNow();
    const known = made.get(locale) ?? make(locale);
    made.set(locale, known);
    return known;
  };
};
const dates = perLocale(
  (locale) => new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }),
);
const months = perLocale(
  (locale) => new Intl.DateTimeFormat(locale, { month: 'long', year: 'numeric', timeZone: 'UTC' }),
);

/** A date as vague as it is known: 2019-05-12 "12 May 2019", 2019-05 "May 2019", 2019 and words as they are. */
export const date = (vague: string): string => {
  if (/^\d{4}-\d{2}-\d{2}$/.test(vague)) {
    const moment = new Date(`${vague}T00:00:00Z`);
    return Number.isNaN(moment.getTime()) ? vague : dates().format(moment);
  }
  if (/^\d{4}-\d{2}$/.test(vague)) {
    const moment = new Date(`${vague}-01T00:00:00Z`);
    return Number.isNaN(moment.getTime()) ? vague : months().format(moment);
  }
  return vague;
};

/** Bytes as a person counts them. */
export const bytes = (count: number): string => {
  if (count < 1000) return `${whole(count)} ${ours().bytes}`;
  if (count < 1e6) return `${whole(count / 1000)} kB`;
  if (count < 1e9) return `${number(count / 1e6, 1)} MB`;
  return `${number(count / 1e9, 1)} GB`;
};

/** "A, B and C". */
const joined = perLocale((locale) => new Intl.ListFormat(locale, { type: 'conjunction' }));
export const list = (items: readonly string[]): string => joined().format(items);
