import { type BagWay, openedBeside, type PhotoInBag } from '../../device/bag';
import { StoreProblem } from '../../device/storeProblem';
import type { AdviceCode, PreviewRow } from '../../engine/exchange';
import type { Entry, Reason } from '../../engine/record';
import { clocksApart } from '../clocks';
import type { Desk } from '../desk';
import { refusal } from '../reasonCodes';

/** What carrying a file in would change, sculpture by sculpture; nothing is stored yet. */
export interface CarryPreview {
  readonly file: Blob;
  readonly fileName: string;
  /** Thing name of the collection in the file. */
  readonly collection: string;
  /** Another collection than the one here, by name: never united in silence. */
  readonly otherCollection?: { readonly here: string; readonly theirs: string };
  /** The file holds an invented collection, and the one here is real: refused. */
  readonly inventedIntoReal: boolean;
  /** Sculptures by number, the collection itself last. */
  readonly rows: readonly PreviewRow[];
  /** Entries that would be stored. */
  readonly entries: readonly Entry[];
  readonly all: number;
  /** Things of kinds this version does not know: kept as they came. */
  readonly unknown: number;
  readonly keptAtHome: number;
  /** Photos of a bag that are not here yet: what would be kept. */
  readonly photos: readonly PhotoInBag[];
  readonly photosMissing: number;
  /** Files an operating system left in the bag: passed over. */
  readonly litter: readonly string[];
  /** Entries here, and photos whose bytes are here, that erasures in the file take out for good. */
  readonly erased: { readonly entries: number; readonly photos: number };
  /** Entries of the file that were erased here before: not taken. */
  readonly refused: number;
  /** What is worth saying about the file. */
  readonly notes: readonly Reason[];
}

export type SurveyFileOpened =
  | { readonly ok: true; readonly preview: CarryPreview }
  | { readonly ok: false; readonly reason: Reason; readonly problems: readonly ProblemFound[] };

/** What is wrong, and what to do about it. */
export interface ProblemFound {
  readonly problem: Reason;
  readonly advice: Reason | undefined;
}

/** What is worth doing about a problem, by the code of its reason. */
const adviceFor = async (code: string): Promise<Reason | undefined> => {
  const { adviceOn } = await import('../../engine/exchange');
  const advised = (adviceOn as Readonly<Record<string, AdviceCode>>)[code];
  return advised ? { code: advised, params: {} } : undefined;
};

/**
 * Reads a survey, or a bag with one in it, from anywhere and says what would change, or what is wrong with it. Nothing is stored. It is
 * read beside the page; left off it is refused with 'carrying in left off'.
 */
export const openSurveyFile = async (
  desk: Desk,
  file: Blob & { readonly name?: string },
  way: BagWay = {},
): Promise<SurveyFileOpened> => {
  const name = file.name ?? '';
  const no = (reason: Reason): SurveyFileOpened => ({ ok: false, reason, problems: [] });
  let opened: Awaited<ReturnType<typeof openedBeside>>;
  try {
    opened = await openedBeside({ store: desk.store.name, collection: desk.collection, file }, desk.store, way);
  } catch (error) {
    if (error instanceof StoreProblem) return no(error.reason);
    return no(refusal('file not read', { name, said: String(error) }));
  }
  if (!opened) return no(refusal('carrying in left off', {}));
  if (!opened.ok) {
    const { problems } = opened;
    const advised = problems.map(async (problem) => ({ problem, advice: await adviceFor(problem.code) }));
    const reason = refusal('file has problems', { count: problems.length });
    return { ok: false, reason, problems: await Promise.all(advised) };
  }
  const { survey, preview, bag } = opened;
  const { rows, entries, otherCollection, invented, keptAtHome, erased, refused } = preview;
  return {
    ok: true,
    preview: {
      file,
      fileName: name,
      collection: survey.collection,
      ...(otherCollection ? { otherCollection } : {}),
      inventedIntoReal: invented && !desk.invented,
      rows,
      entries,
      all: survey.all,
      unknown: survey.unknown.length,
      keptAtHome,
      photos: bag?.photos ?? [],
      photosMissing: rows.reduce((sum, row) => sum + row.photosMissing, 0),
      litter: bag?.litter ?? [],
      erased,
      refused,
      notes: [...survey.notes, ...(desk.invented ? [] : clocksApart(entries, desk.now()))],
    },
  };
};
