import { assemble, byWithin, type Current, type Entry } from '../engine/record';
import { wordOf } from './wordOf';

/** Notes of copies that left: no paper is another for them, and each copy would be old with its own note. */
const tellsOfCopies = (kind: string): boolean => kind === 'paperIssued';

/**
 * Names the state of a record, at the foot of papers: one word for the present versions of everything living in it, planned and paid
 * included, the same on every device that holds the same entries. Which of two versions leads counts.
 */
export const stateOfThings = (things: Iterable<Current>): string =>
  wordOf(
    [...things]
      .filter(({ kind, gone }) => !gone && !tellsOfCopies(kind))
      .flatMap(({ heads }) => heads.map((id, i) => (i === 0 ? `lead ${id}` : id)))
      .sort(),
  );

/** The same of each work, and of the collection itself. */
export const statesOfRecord = (entries: Iterable<Entry>): ReadonlyMap<string, string> =>
  new Map([...byWithin(assemble(entries).values())].map(([within, things]) => [within, stateOfThings(things)]));

/** Names the state of several records together: works, and what belongs to the collection itself. */
export const stateOfAll = (states: Iterable<string>): string => wordOf([...states].sort());
