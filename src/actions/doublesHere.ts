import { type Double, doublesIn, type Entry } from '../engine/record';
import type { Desk } from './desk';
import { thingsOfKind } from './theThing';

/** What two rounds said to be one both recorded, with its versions: the one that leads for now first, all told of the one round. */
export interface DoubleHere {
  readonly double: Double;
  readonly versions: readonly Entry[];
}

export const doublesHere = async (desk: Desk): Promise<readonly DoubleHere[]> => {
  const joined = (await thingsOfKind(desk, 'round')).filter(({ body }) => body.partOf !== undefined);
  const works = new Set(joined.map(({ body }) => body.sculpture));
  const found: DoubleHere[] = [];
  for (const work of works) {
    for (const double of doublesIn(await desk.store.within(work))) {
      const entries = (await Promise.all(double.recordedAs.map(({ thing }) => desk.store.entriesOf(thing)))).flat();
      const { round } = double.current.lead.body;
      const versions = double.current.heads.flatMap((id) => {
        const entry = entries.find((e) => e.id === id);
        return entry ? [{ ...entry, body: { ...entry.body, round } }] : [];
      });
      found.push({ double, versions });
    }
  }
  return found;
};
