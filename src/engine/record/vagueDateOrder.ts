/** What a vague date is sorted by: the year it speaks of first, so that "before 2021" stands beside 2021; words without a year stand last. */
export const vagueDateOrder = (date: string): string =>
  /^\d{4}/.test(date) ? date : (/\d{4}/.exec(date)?.[0] ?? '0000');
