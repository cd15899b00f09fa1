import type { Source } from '../trade';

interface WatchNumber {
  readonly value: number;
  /** What it is, with its unit. */
  readonly what: string;
  readonly source: Source;
}

const practice: Source = { text: 'Common practice, no source.', sure: 'common practice, no source' };
const own: Source = { text: 'Chosen for this project', sure: 'own choice' };

/** When to look after a treatment, months from its end; afterwards once a year. */
export const watchMonths: { readonly months: readonly number[]; readonly thenEvery: number; readonly source: Source } =
  {
    months: [1, 3, 6, 12, 24],
    thenEvery: 12,
    source: practice,
  };

/** Every number the due things rest on. */
export const watchNumbers = {
  warrantyBefore: { value: 60, what: 'A look this long before a warranty ends, days', source: practice },
  warrantyFrom: {
    value: 90,
    what: 'A round or looks from this long before its end count as that look, days',
    source: own,
  },
  roundEvery: {
    value: 12,
    what: 'From one yearly round to the next, months',
    source: {
      text: 'Twice a year is asked for, once a year is the usual least. Common practice, no source.',
      sure: practice.sure,
    },
  },
  noticeQuote: { value: 30, what: 'A quote is told of this long before it ends, days', source: own },
  noticeProduct: { value: 60, what: 'A product is told of this long before it ends, days', source: own },
  noticeReview: { value: 14, what: 'A review or a visit is told of this long before, days', source: own },
  soon: { value: 31, what: 'What is due within this long is due soon, days', source: own },
} as const satisfies Record<string, WatchNumber>;
