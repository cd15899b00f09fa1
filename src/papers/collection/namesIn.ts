import type { PaperSource, WorkOnPaper } from '../../engine/reckoning';
import { date, list, type NameOfThing, w, zoneName } from '../../words';
import { nameOfWork, thingsIn } from '../reading';

/** What papers of the whole collection call works, zones, rounds and people in the sentences of reasons. */
export const namesIn = ({ works, around }: PaperSource): NameOfThing => {
  const names = new Map<string, string>([
    ...works.flatMap((work) => [
      [work.record.sculpture.thing, nameOfWork(work)] as const,
      ...work.record.zones.map((zone) => [zone.thing, zoneName(zone)] as const),
      ...work.record.rounds.map(({ thing, body }) => [thing, w.thenAndNow.roundNamed(date(body.date))] as const),
    ]),
    ...thingsIn(around, 'surveyor').map(({ thing, body }) => [thing, body.role] as const),
  ]);
  return (thing) => names.get(thing);
};

/** Letter and name of a zone of this work: "zone D, coat folds". */
export const zoneOf = ({ record }: WorkOnPaper, zone: string | undefined): string => {
  const thing = record.zones.find((one) => one.thing === zone);
  return thing ? zoneName(thing) : '';
};

/** "zones H and I"; '' for the whole work. */
export const lettersSaid = ({ record }: WorkOnPaper, zones: readonly string[]): string => {
  const letters = zones.flatMap((zone) => record.zones.find(({ thing }) => thing === zone)?.body.letter ?? []);
  return letters.length > 0 ? w.paperLetter.lettered(letters.length, list(letters)) : '';
};
