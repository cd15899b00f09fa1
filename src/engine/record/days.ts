/** Days of the proleptic Gregorian calendar before the first of March of year 0, counted so that 1970-01-01 is day 0. */
const epoch = 719468;

const numberOf = (year: number, month: number, day: number): number => {
  // The year begins in March here, so that the leap day is its last.
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const inEra = y - era * 400;
  const inYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return era * 146097 + inEra * 365 + Math.floor(inEra / 4) - Math.floor(inEra / 100) + inYear - epoch;
};

/** Last day of a month, 28 to 31. */
const lengthOf = (year: number, month: number): number =>
  (month === 12 ? numberOf(year + 1, 1, 1) : numberOf(year, month + 1, 1)) - numberOf(year, month, 1);

/** Days since 1970-01-01 of a day written YYYY-MM-DD. A day past the end of its month (the 31st that stands for any month's end) is that end. */
export const dayNumber = (day: string): number => {
  const [year, month, date] = [+day.slice(0, 4), +day.slice(5, 7), +day.slice(8, 10)];
  return numberOf(year, month, Math.min(date, lengthOf(year, month)));
};

/** The day so many days since 1970-01-01, YYYY-MM-DD. */
export const dayOfNumber = (days: number): string => {
  const z = days + epoch;
  const era = Math.floor(z / 146097);
  const inEra = z - era * 146097;
  const y = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36524) - Math.floor(inEra / 146096)) / 365,
  );
  const inYear = inEra - (365 * y + Math.floor(y / 4) - Math.floor(y / 100));
  const m = Math.floor((5 * inYear + 2) / 153);
  const date = inYear - Math.floor((153 * m + 2) / 5) + 1;
  const month = m < 10 ? m + 3 : m - 9;
  const year = y + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`;
};

/** The day n whole days later (earlier where n is under 0). */
export const addDays = (day: string, n: number): string => dayOfNumber(dayNumber(day) + n);

/** Whole days from one day to another; under 0 where the second comes first. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** 0 Sunday to 6 Saturday. */
export const weekdayOf = (day: string): number => (((dayNumber(day) + 4) % 7) + 7) % 7;
