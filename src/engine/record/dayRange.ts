/** First and last calendar day a vague date may mean, YYYY-MM-DD; both ends open ('0000', '9999') where nothing can be read from it. */
export interface DayRange {
  readonly from: string;
  readonly to: string;
}

const day = /^\d{4}-\d{2}-\d{2}$/;
const month = /^\d{4}-\d{2}$/;
const unread: DayRange = { from: '0000', to: '9999' };

const wholeYears = (from: number, to: number): DayRange => ({
  from: `${String(from).padStart(4, '0')}-01-01`,
  to: `${String(to).padStart(4, '0')}-12-31`,
});

/**
 * Reads a date as vague as it was entered: a day, a month, a year, two years ("2019 to 2021"), or words around a year
 * ("before 2021", "after 2019", "about 2019": a year either way, "spring 2020": the whole year).
 * Days are compared as text, so that the 31st stands for the end of any month.
 */
export const dayRange = (vague: string): DayRange => {
  const text = vague.trim();
  if (day.test(text)) return { from: text, to: text };
  if (month.test(text)) return { from: `${text}-01`, to: `${text}-31` };
  const years = (text.match(/(?<!\d)\d{4}(?!\d)/g) ?? []).map(Number);
  const first = years[0];
  if (first === undefined) return unread;
  if (years.length > 1) return wholeYears(Math.min(...years), Math.max(...years));
  if (/\b(before|until|by)\b/i.test(text)) return { from: unread.from, to: wholeYears(0, first - 1).to };
  if (/\b(after|since|from)\b/i.test(text)) return { from: wholeYears(first, first).from, to: unread.to };
  if (/\b(about|around|circa|ca|c)\b|~|\?/i.test(text)) return wholeYears(first - 1, first + 1);
  return wholeYears(first, first);
};
