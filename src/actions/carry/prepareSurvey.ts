import type { Held, LeftOut, PartialCarry } from '../../engine/exchange';
import type { Desk, Outcome } from '../desk';
import { attempt, refuse } from '../outcome';
import { refusal } from '../reasonCodes';

export type Without = LeftOut;

export interface PrepareOptions {
  /** Thing names; the whole collection when left out. */
  readonly sculptures?: readonly string[];
  readonly without?: readonly Without[];
}

/** A file made and ready to leave, and what a person should know before it does. */
export interface Prepared {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly entries: number;
  /** What it still holds: kinds of thing, 'persons named in entries', 'notes', each with how many. */
  readonly holds: readonly Held[];
  /** Photos it speaks of: their bytes do not travel in it. */
  readonly photosStay: number;
  /** References to things left out, which will read "kept at home". */
  readonly keptAtHome: number;
  /** The works it was limited to, and number of the last entry made here when it was read. */
  readonly sculptures?: readonly string[] | undefined;
  readonly made: number;
}

/** The same for whatever leaves: which app, which day, and which sort of file by its ending. */
export const preparedName = (desk: Desk, ending: string): string =>
  `patina-round-${desk.invented ? 'invented-' : ''}${desk.today()}.${ending}`;

/** The survey as one canonical file: equal surveys are equal bytes. */
export const prepareSurvey = (
  desk: Desk,
  options: PrepareOptions = {},
): Promise<Outcome<{ readonly prepared: Prepared }>> =>
  attempt(async () => {
    const { made } = desk.store;
    const { writeSurvey, carried } = await taken(desk, options);
    const bytes = writeSurvey(desk.collection, carried.entries);
    const { sculptures } = options;
    return { prepared: { ...prepared(desk, carried, bytes, 'survey.json', 'application/json'), made, sculptures } };
  });

/** The findings as a table for a spreadsheet (RFC 4180). It cannot be carried back in. */
export const findingsTable = (
  desk: Desk,
  options: PrepareOptions = {},
): Promise<Outcome<{ readonly prepared: Prepared }>> =>
  attempt(async () => {
    const { findingsCsv, carried } = await taken(desk, options);
    return { prepared: prepared(desk, carried, findingsCsv(carried.entries), 'findings.csv', 'text/csv') };
  });

/**
 * The exchange brings the schemas with it, which the start page does without: loaded when first needed. What is wanted of it is named,
 * or the build would keep all of it.
 */
const taken = async (desk: Desk, options: PrepareOptions) => {
  const { findingsCsv, partialCarry, writeSurvey } = await import('../../engine/exchange');
  const carried = partialCarry(await desk.store.allEntries(), options);
  if (carried.entries.length === 0) refuse(refusal('nothing to carry', {}));
  return { findingsCsv, writeSurvey, carried };
};

const prepared = (
  desk: Desk,
  { entries, holds, keptAtHome }: PartialCarry,
  bytes: Uint8Array<ArrayBuffer>,
  ending: string,
  mime: string,
): Prepared => ({
  name: preparedName(desk, ending),
  mime,
  bytes,
  entries: entries.length,
  holds,
  photosStay: holds.find(({ what }) => what === 'photo')?.count ?? 0,
  keptAtHome: keptAtHome.length,
  made: desk.store.made,
});
