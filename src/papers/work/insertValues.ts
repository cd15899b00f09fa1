import type { WorkOnPaper } from '../../engine/reckoning';
import type { Thing } from '../../engine/record';
import { money, w, whole } from '../../words';
import { type PaperPiece, say, section, table } from '../layout';
import { thingsIn } from '../reading';
import { zoneLabel } from './zoneLabel';

const words = w.paperInsurer;

/** Inserts with their values where they are recorded; of the others it is said that none is. */
export const insertValues = (work: WorkOnPaper): PaperPiece => {
  const { record, within } = work;
  if (record.inserts.length === 0) return undefined;
  const values = new Map(thingsIn(within, 'insertValue').map(({ body }) => [body.insert, body]));
  const valued = record.inserts.filter(({ thing }) => values.has(thing));
  const lacking = valuesLacking(work);
  const { insert, zone, count, value } = words.insertColumns;
  return section(
    words.inserts,
    valued.length > 0 && [
      table(
        '',
        [{ head: insert }, { head: zone }, { head: count, kind: 'number' }, { head: value }],
        valued.map(({ thing, body }) => {
          const of = values.get(thing);
          const at = record.zones.find((each) => each.thing === body.zone);
          return [
            body.material,
            at ? zoneLabel(at) : '–',
            whole(body.count),
            of && [money(of.value), of.note].filter(Boolean).join('. '),
          ];
        }),
      ),
      say(words.insertsHow, 'small'),
    ],
    lacking.length > 0 &&
      say(words.noValue(lacking.map(({ body }) => w.papers.insert(whole(body.count), body.material)).join('; '))),
  );
};

export const valuesLacking = ({ record, within }: WorkOnPaper): readonly Thing<'insert'>[] => {
  const valued = new Set(thingsIn(within, 'insertValue').map(({ body }) => body.insert));
  return record.inserts.filter(({ thing }) => !valued.has(thing));
};
