import { tongueNow } from './tongue';

const numbers = new Map<string, Intl.NumberFormat>();
/** A number in the way of writing of the device, with at least `min` and at most `max` places. */
export const written = (value: number, min: number, max: number): string => {
  const { locale } = tongueNow();
  const key = `${locale} ${min}/${max}`;
  let format = numbers.get(key);
  if (!format) {
    format = new Intl.NumberFormat(locale, { minimumFractionDigits: min, maximumFractionDigits: max });
    numbers.set(key, format);
  }
  return format.format(value);
};
