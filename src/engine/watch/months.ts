import { dayNumber, dayOfNumber } from '../record';

/** The same day so many calendar months later, or the last of that month where it has no such day. */
export const addMonths = (day: string, months: number): string => {
  const all = Number(day.slice(0, 4)) * 12 + Number(day.slice(5, 7)) - 1 + months;
  const [year, month] = [Math.floor(all / 12), (((all % 12) + 12) % 12) + 1];
  const there = `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${day.slice(8, 10)}`;
  // A day past the end of its month is read as that end.
  return dayOfNumber(dayNumber(there));
};

/** The day in the middle between two, the earlier one of two. */
export const halfway = (one: string, other: string): string =>
  dayOfNumber(Math.floor((dayNumber(one) + dayNumber(other)) / 2));
