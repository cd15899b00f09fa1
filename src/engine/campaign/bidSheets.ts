import type { BodyOf, Thing } from '../record';
import { priceCriterion } from '../trade';
import type { Criterion } from './bidCriteria';

export type Scorer = BodyOf<'bidCriteria'>['scorers'][number];
export type ScoreSheet = BodyOf<'bidScore'>;

/** A scorer and how far their sheet is; what stands in it is nobody else's to see before the sheets are open. */
export interface SheetStanding {
  readonly scorer: Scorer;
  readonly sheet: ScoreSheet | undefined;
  /** Marks still to be given for the bids that stand. */
  readonly missing: number;
  /** Handed in, with a mark for every bid that stands. */
  readonly whole: boolean;
}

export interface Sheets {
  readonly standings: readonly SheetStanding[];
  /** Every scorer's sheet is whole, or somebody opened them before. */
  readonly open: boolean;
  readonly allIn: boolean;
}

/** Where the sheets of a campaign stand. Withdrawn bids need no marks. */
export const sheetsOf = (
  criteria: BodyOf<'bidCriteria'> | undefined,
  marked: readonly Criterion[],
  sheets: readonly Thing<'bidScore'>[],
  bids: readonly Thing<'bid'>[],
): Sheets => {
  const standing = bids.filter(({ body }) => body.withdrawn === undefined);
  const standings = (criteria?.scorers ?? []).map((scorer): SheetStanding => {
    const sheet = sheets.find(({ body }) => body.scorer === scorer.id)?.body;
    const missing = missingMarks(sheet, marked, standing);
    return { scorer, sheet, missing, whole: sheet?.handedIn !== undefined && missing === 0 };
  });
  const allIn = standings.length > 0 && standing.length > 0 && standings.every(({ whole }) => whole);
  return { standings, allIn, open: allIn || criteria?.opened !== undefined };
};

/** The criteria a person marks: all but the price. */
export const byHand = (criteria: readonly Criterion[]): readonly Criterion[] =>
  criteria.filter(({ id }) => id !== priceCriterion);

export const markOf = (sheet: ScoreSheet | undefined, bid: string, criterion: string): number | undefined =>
  sheet?.marks.find((one) => one.bid === bid && one.criterion === criterion)?.mark;

/** How many marks a sheet lacks for these bids. */
export const missingMarks = (
  sheet: ScoreSheet | undefined,
  criteria: readonly Criterion[],
  bids: readonly Thing<'bid'>[],
): number =>
  byHand(criteria).reduce(
    (sum, { id }) => sum + bids.filter(({ thing }) => markOf(sheet, thing, id) === undefined).length,
    0,
  );
