import type { AdviceCode, PreviewRow } from '../../engine/exchange';
import type { Entry, Reason } from '../../engine/record';
import { clocksApart } from '../clocks';
import type { Desk } from '../desk';
import { refusal } from '../reasonCodes';

/** What carrying a file in would change, sculpture by sculpture; nothing is stored yet. */
export interface CarryPreview {
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
  readonly photosMissing: number;
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

/** Reads a file from anywhere and says what would change, or what is wrong with it. Nothing is stored. */
export const openSurveyFile = async (
  desk: Desk,
  file: Blob & { readonly name?: string },
): Promise<SurveyFileOpened> => {
  const name = file.name ?? '';
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch (error) {
    return { ok: false, reason: refusal('file not read', { name, said: String(error) }), problems: [] };
  }
  const { readSurvey, previewImport, adviceOn } = await import('../../engine/exchange');
  const wrong = (problems: readonly Reason[]): SurveyFileOpened => {
    const advised = (code: string): AdviceCode | undefined => (adviceOn as Readonly<Record<string, AdviceCode>>)[code];
    return {
      ok: false,
      reason: refusal('file has problems', { count: problems.length }),
      problems: problems.map((problem) => {
        const code = advised(problem.code);
        return { problem, advice: code ? { code, params: {} } : undefined };
      }),
    };
  };
  const survey = readSurvey(bytes);
  if (!survey.ok) return wrong(survey.problems);
  const entries = await desk.store.allEntries();
  // A store nobody has entered anything in takes the file's collection for its own.
  const here = { collection: entries.length === 0 ? survey.collection : desk.collection, entries };
  const changes = previewImport(here, survey, await desk.store.photosHere());
  if (!changes.ok) return wrong(changes.problems);
  const { rows, otherCollection, invented, keptAtHome } = changes;
  return {
    ok: true,
    preview: {
      fileName: name,
      collection: survey.collection,
      ...(otherCollection ? { otherCollection } : {}),
      inventedIntoReal: invented && !desk.invented,
      rows,
      entries: changes.entries,
      all: survey.entries.length,
      unknown: survey.unknown.length,
      keptAtHome,
      photosMissing: rows.reduce((sum, row) => sum + row.photosMissing, 0),
      erased: changes.erased,
      refused: changes.refused,
      notes: [...survey.notes, ...(desk.invented ? [] : clocksApart(survey.entries, desk.now()))],
    },
  };
};
