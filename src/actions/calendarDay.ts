import { refuse } from './outcome';
import { refusal } from './reasonCodes';

/** The day given, checked to be one of the calendar between 1000 and 2200. */
export const calendarDay = (day: string): string => {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  const real = !Number.isNaN(time) && new Date(time).toISOString().startsWith(day);
  return real && day >= '1000-01-01' && day <= '2200-12-31' ? day : refuse(refusal('day not valid', { day }));
};
