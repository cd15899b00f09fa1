import { type Quantity, typedMeasure, typedNumber } from '../../words';

/** A number or nothing; `wrong` where it is neither. */
export const maybeNumber = (text: string): number | undefined | 'wrong' =>
  text.trim() === '' ? undefined : (typedNumber(text) ?? 'wrong');

/** The same of a measure. */
export const maybeMeasure = (quantity: Quantity, text: string): number | undefined | 'wrong' =>
  text.trim() === '' ? undefined : (typedMeasure(quantity, text) ?? 'wrong');

export { readTimeOfDay as typedTime } from '../../engine/numerals';

/** The time of the day in an instant, where it was said. */
export const timeIn = (instant: string): string => instant.slice(11, 16);
