import { named } from './named';
import type { Source } from './source';

/** Grades of rust on painted steel, shown beside the ladder for readers who come from coatings. Not used in any score. */
export interface RustGrade {
  readonly id: string;
  readonly name: string;
  readonly grade: number;
  /** Over `above` and up to and including `upTo`, as shares 0 to 1. */
  readonly above: number;
  readonly upTo: number;
  readonly source: Source;
}

const d610: Source = {
  text: 'ASTM D610-08(2012), table 1, read on a page and agreeing with a second. Stains from rust do not count as rust there.',
  sure: 'seen',
};

/** Limits in percent: grade 10 up to 0.01 %, grade 0 over 50 %. */
const limits = [0, 0.01, 0.03, 0.1, 0.3, 1, 3, 10, 16, 33, 50, 100] as const;

export const rustGrades: readonly RustGrade[] = named(
  'rustGrades',
  limits.slice(1).map((upTo, index) => ({
    id: `D610-${10 - index}`,
    name: `D610 grade ${10 - index}`,
    grade: 10 - index,
    above: (limits[index] as number) / 100,
    upTo: upTo / 100,
    source: d610,
  })),
);

/** The grade of ASTM D610 that a share of 0 to 1 falls in. */
export const rustGradeOf = (share: number): RustGrade => {
  const found = rustGrades.find((row) => share <= row.upTo);
  if (!found || share < 0) throw new RangeError(`Coverage is a share from 0 to 1, and ${share} is not.`);
  return found;
};

/** Nominal picture values of ISO 4628-3, not class limits; two of them pair with one D610 grade, so the map is not one to one. */
export const rustPictures: readonly {
  readonly id: string;
  readonly name: string;
  /** Nominal share, the lower end where a span is printed. */
  readonly share: number;
  readonly shareTo: number;
  readonly pairedWith: number;
  readonly source: Source;
}[] = (
  [
    [0, 0, 0, 10],
    [1, 0.0005, 0.0005, 8],
    [2, 0.005, 0.005, 6],
    [3, 0.01, 0.01, 6],
    [4, 0.08, 0.08, 4],
    [5, 0.4, 0.5, 1],
  ] as const
).map(([grade, share, shareTo, pairedWith]) => ({
  id: `Ri${grade}`,
  name: `Ri ${grade}`,
  share,
  shareTo,
  pairedWith,
  source: {
    text: 'ISO 4628-3:2016, values read on a coatings reference page that sets it beside ASTM D610.',
    sure: 'seen',
  },
}));
