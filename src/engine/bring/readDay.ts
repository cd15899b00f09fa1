import type { Reason } from '../record';
import { bringReason } from './reasonCodes';

export type DayOrder = 'day first' | 'month first';

export interface DayRead {
  /** YYYY-MM-DD where a whole day stands there, else as written. Missing: not understood. */
  readonly date?: string;
  readonly problem?: Reason;
  readonly remark?: Reason;
}

const longest = 60;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** Where German names begin otherwise. */
const germanMonths: Readonly<Record<string, string>> = {
  mär: 'mar',
  mae: 'mar',
  mai: 'may',
  okt: 'oct',
  dez: 'dec',
  jän: 'jan',
};
const figures = /^(\d{1,2})([./-])\s?(\d{1,2})\2\s?(\d{4}|\d{2})$/;
const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ]\d{1,2}:\d{2}.*)?$/;
const dayMonth = /^(\d{1,2})(?:st|nd|rd|th|\.)? ([a-zä]{3,9})\.?,? (\d{4})$/i;
const monthDay = /^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/i;

/** The two figures of a day whose order the figures themselves do not tell. */
const figuresOf = (text: string): readonly [first: number, second: number, year: string] | undefined => {
  const found = figures.exec(text.trim());
  return found ? [Number(found[1]), Number(found[3]), String(found[4])] : undefined;
};

/** In which order a list writes its days, where all that can be told by their figures agree; else undefined: to be asked. */
export const orderOf = (texts: readonly string[]): DayOrder | undefined => {
  const told = new Set<DayOrder>();
  for (const text of texts) {
    const found = figuresOf(text);
    if (!found) continue;
    if (found[0] > 12 && found[1] <= 12) told.add('day first');
    if (found[1] > 12 && found[0] <= 12) told.add('month first');
  }
  return told.size === 1 ? [...told][0] : undefined;
};

/** Whether some day of the list means two days, by the order it is read in. */
export const needsOrder = (texts: readonly string[]): boolean =>
  texts.some((text) => {
    const found = figuresOf(text);
    return found !== undefined && found[0] !== found[1] && found[0] <= 12 && found[1] <= 12;
  });

/**
 * Reads a date as a list has it. A whole day becomes YYYY-MM-DD; anything vaguer stays as written, so that nothing is made more certain
 * than it was. `today` bounds it: a treatment of tomorrow is a slip. Years of two figures are read within the hundred years up to today.
 */
export const readDay = (written: string, order: DayOrder | undefined, today: string): DayRead => {
  const text = written.trim().replace(/\s+/g, ' ');
  if (text === '') return { problem: bringReason('bring: day missing', {}) };
  if (text.length > longest) return { problem: bringReason('bring: text too long', { column: 'date', most: longest }) };
  if (/^\d{5}([.,]\d+)?$/.test(text)) return { problem: bringReason('bring: day a bare number', { text }) };
  const whole = wholeDay(text, order, today);
  if (whole) return whole;
  if (!/(?<!\d)\d{4}(?!\d)/.test(text)) return { date: text, remark: bringReason('bring: no year in it', { text }) };
  const year = Number(/(?<!\d)(\d{4})(?!\d)/.exec(text)?.[1]);
  if (/^\d{4}$/.test(text) && year > Number(today.slice(0, 4)))
    return { problem: bringReason('bring: day ahead', { text }) };
  return { date: text };
};

const wholeDay = (text: string, order: DayOrder | undefined, today: string): DayRead | undefined => {
  const iso = yearFirst.exec(text);
  if (iso) return day(text, today, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const named = dayMonth.exec(text);
  if (named) return byMonth(text, today, named[3], named[2], named[1]);
  const american = monthDay.exec(text);
  if (american) return byMonth(text, today, american[3], american[1], american[2]);
  const found = figuresOf(text);
  if (!found) return undefined;
  const [first, second, figuresOfYear] = found;
  if (!order && first !== second && first <= 12 && second <= 12)
    return { problem: bringReason('bring: day order unclear', { text }) };
  const monthFirst = order === 'month first';
  const year = fullYear(figuresOfYear, today);
  const [d, m] = monthFirst ? [second, first] : [first, second];
  // With no order given the figures themselves tell it, or are the same.
  const read = order || first > 12 ? day(text, today, year, m, d) : day(text, today, year, first, second);
  const short = figuresOfYear.length === 2 && read.date !== undefined;
  return short ? { ...read, remark: bringReason('bring: short year', { text, year: String(year) }) } : read;
};

const fullYear = (text: string, today: string): number => {
  if (text.length === 4) return Number(text);
  const now = Number(today.slice(0, 4));
  const year = now - (now % 100) + Number(text);
  return year > now ? year - 100 : year;
};

const byMonth = (
  text: string,
  today: string,
  year: string | undefined,
  name: string | undefined,
  d: string | undefined,
): DayRead | undefined => {
  const start = (name ?? '').slice(0, 3).toLowerCase();
  const month = months.indexOf(germanMonths[start] ?? start) + 1;
  return month > 0 ? day(text, today, Number(year), month, Number(d)) : undefined;
};

const lengths = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const day = (text: string, today: string, year: number, month: number, d: number): DayRead => {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const most = month === 2 && !leap ? 28 : lengths[month - 1];
  if (most === undefined || d < 1 || d > most || year < 1000)
    return { problem: bringReason('bring: day not a day', { text }) };
  const date = `${year}-${String(month).padStart(2, '0')}-${String(d).padStart(2, '0')}`;
  return date > today ? { problem: bringReason('bring: day ahead', { text }) } : { date };
};
