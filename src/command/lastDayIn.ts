import { dayRange, type Entry, type SculptureRecord } from '../engine/record';

const day = /^\d{4}-\d{2}-\d{2}$/;

const latest = (days: Iterable<string>): string | null => {
  let last: string | null = null;
  for (const one of days) if (day.test(one) && (last === null || one > last)) last = one;
  return last;
};

/**
 * The last day a survey tells of: that of its latest round, look or treatment (of a vague date the first day it may mean). Where none
 * was made, the day the last entry was written; null where there is no entry.
 */
export const lastDayIn = (records: readonly SculptureRecord[], entries: readonly Entry[]): string | null =>
  latest(
    records.flatMap(({ rounds, looks, treatments }) => [
      ...rounds.flatMap(({ body }) => [body.date, body.ended ?? '']),
      ...looks.map(({ body }) => body.date),
      ...treatments.map(({ body }) => dayRange(body.date).from),
    ]),
  ) ?? latest(entries.map(({ at }) => at.slice(0, 10)));
