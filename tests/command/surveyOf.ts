import type { Survey } from '../../src/engine/exchange';
import type { Entry, KindOfThing, SculptureRecord, Thing } from '../../src/engine/record';
import { collection, uuid } from '../files/entries';

const thingsOf = (record: SculptureRecord): readonly Thing<KindOfThing>[] => [
  record.sculpture,
  ...record.zones,
  ...record.rounds,
  ...record.visits,
  ...record.findings,
  ...record.looks,
  ...record.treatments,
];

/** Invented records as the survey they would come from. Rounds, looks and treatments get names of their own, work by work. */
export const surveyOf = (records: readonly SculptureRecord[], more: readonly Entry[] = []): Survey => {
  let n = 0;
  const entries = records.flatMap((record, work) =>
    thingsOf(record).map(({ thing, body, lead }): Entry => {
      const kind = thing.slice(0, thing.indexOf('/'));
      const own = kind === 'zone' || kind === 'sculpture' ? thing : thing.replace('/', `/${work}-`);
      const ownBody = JSON.parse(JSON.stringify(body).replaceAll('"round/', `"round/${work}-`));
      const within = record.sculpture.thing;
      return { ...lead, id: uuid(++n), n, kind, thing: own, within, body: ownBody };
    }),
  );
  return {
    ok: true,
    collection,
    version: '1.0',
    entries: [...entries, ...more],
    unknown: [],
    keptAtHome: [],
    notes: [],
  };
};
