import { isTimeOfDay } from '../../engine/record';
import { typedNumber } from '../../words';

/** Degrees, below nought too; undefined where it is no number. */
export const typedDegrees = (text: string): number | undefined => {
  const clean = text.trim().replace('−', '-');
  const size = typedNumber(clean.replace(/^-/, ''));
  return size === undefined || !clean.startsWith('-') ? size : -size;
};

/** A number or nothing; `wrong` where it is neither. */
export const maybeNumber = (text: string): number | undefined | 'wrong' =>
  text.trim() === '' ? undefined : (typedDegrees(text) ?? 'wrong');

/** What was typed for a time of the day, 24 hours, as HH:MM; undefined where it is none. */
export const typedTime = (text: string): string | undefined => {
  const found = /^(\d{1,2})[:.h ]?(\d{2})$/.exec(text.trim());
  if (!found) return undefined;
  const time = `${found[1]?.padStart(2, '0')}:${found[2]}`;
  return isTimeOfDay(time) ? time : undefined;
};

/** The time of the day in an instant, where it was said. */
export const timeIn = (instant: string): string => instant.slice(11, 16);
