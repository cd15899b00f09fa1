import { dayNumber } from '../../../src/engine/record';
import type { Break, Series, SeriesPoint } from '../../../src/engine/trend';

/** A series of one value a year from 2021 on, each round in May, by one person, without a break. */
export const yearly = (values: readonly number[], more: Partial<Series> = {}): Series => ({
  what: 'index',
  zone: null,
  points: values.map((value, i): SeriesPoint => {
    const day = `${2021 + i}-05-12`;
    return {
      round: `round/${day}`,
      day,
      t: dayNumber(day) / 365.25,
      figure: { value, low: value - 2, high: value + 2, reasons: [] },
      seenShare: 1,
      surveyor: 'surveyor/steward',
      span: 0,
    };
  }),
  breaks: [] as Break[],
  ticks: [],
  marks: [],
  brokenSince: null,
  reasons: [],
  ...more,
});
