import { type BroughtStatement, idOfStatement } from '../../engine/bring';
import { nameOf } from '../../engine/record';
import { asTyped } from '../asTyped';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';

/** Whose report it is, of when as far as it is known, and where it can be found. */
export interface ReportFields {
  readonly by: string;
  readonly date: string;
  readonly source: string;
}

/** What an interpretation takes. */
const longest = 4000;

/**
 * Takes statements of an earlier report over as thoughts of its author, in one deed: shown apart from what was seen, never scored. A
 * statement that is here already, or was changed here since, stays as it is.
 */
export const takeOverReport = (
  desk: Desk,
  sculpture: string,
  report: ReportFields,
  statements: readonly { readonly statement: string; readonly about?: string | undefined }[],
): Promise<Outcome<{ readonly taken: number; readonly here: number }>> =>
  attempt(async () => {
    const by = report.by.trim() || refuse(refusal('name missing', {}));
    const source = report.source.trim() || refuse(refusal('source missing', {}));
    const date = report.date.trim() || refuse(refusal('day not valid', { day: '' }));
    if (statements.length === 0) refuse(refusal('nothing to take over', {}));
    if (statements.some(({ statement }) => statement.length > longest))
      refuse(refusal('statement too long', { most: longest }));
    const bodies = statements.map(
      ({ statement, about }): BroughtStatement =>
        asTyped({ sculpture, statement, by, date, source, ...(about ? { about } : {}) }),
    );
    const names = bodies.map((body) => nameOf.interpretation(idOfStatement(body)));
    const before = await desk.store.currents(names);
    const fresh = bodies.flatMap((body, i) => {
      const was = before[i];
      return was && !was.gone ? [] : [{ thing: names[i] ?? '', body }];
    });
    must(
      await commitChanges(
        desk,
        deedName('deed: report taken over', { count: fresh.length }),
        fresh.map(({ thing, body }) => ({ thing, kind: 'interpretation', within: sculpture, body: { ...body } })),
      ),
    );
    return { taken: fresh.length, here: bodies.length - fresh.length };
  });
