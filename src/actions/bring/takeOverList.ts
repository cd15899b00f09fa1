import { type BroughtTreatment, idOfTreatment } from '../../engine/bring';
import { nameOf } from '../../engine/record';
import { asTyped } from '../asTyped';
import { commitChanges } from '../commitChanges';
import type { Desk, Outcome } from '../desk';
import { attempt, must, refuse } from '../outcome';
import { deedName, refusal } from '../reasonCodes';
import { thingsWithin } from '../theThing';

/**
 * Takes treatments of a list into the logbooks as one deed that can be undone, each marked with where it comes from. What is here
 * already stays as it is: the same row brought in before, whatever became of it since, and an entry by hand of the same work,
 * zones, day and sort.
 */
export const takeOverList = (
  desk: Desk,
  rows: readonly BroughtTreatment[],
  source: string,
): Promise<Outcome<{ readonly taken: number; readonly here: number }>> =>
  attempt(async () => {
    const from = source.trim() || refuse(refusal('source missing', {}));
    if (rows.length === 0) refuse(refusal('nothing to take over', {}));
    const said = rows.map((row) => ({ ...asTyped(row), zones: [...row.zones] }));
    const names = said.map((row) => nameOf.treatment(idOfTreatment(row)));
    const before = await desk.store.currents(names);
    const byHand = new Set<string>();
    for (const sculpture of new Set(said.map((row) => row.sculpture)))
      for (const { body } of await thingsWithin(desk, 'treatment', sculpture)) byHand.add(sameDone(body));
    const fresh = said.flatMap((row, i) => {
      const was = before[i];
      const here = (was && !was.gone) || byHand.has(sameDone(row));
      return here ? [] : [{ thing: names[i] ?? '', row }];
    });
    must(
      await commitChanges(
        desk,
        deedName('deed: list taken over', { count: fresh.length }),
        fresh.map(({ thing, row }) => ({
          thing,
          kind: 'treatment',
          within: row.sculpture,
          body: { ...row, source: from },
        })),
      ),
    );
    return { taken: fresh.length, here: rows.length - fresh.length };
  });

const sameDone = (body: Pick<BroughtTreatment, 'sculpture' | 'zones' | 'type' | 'date'>): string =>
  JSON.stringify([body.sculpture, body.zones.toSorted(), body.type, body.date]);
