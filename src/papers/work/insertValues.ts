import type { WorkOnPaper } from '../../engine/reckoning';
import { money, w, whole } from '../../words';
import { type PaperPiece, say, section, table } from '../layout';
import { thingsIn } from '../reading';
import { zoneLabel } from './zoneLabel';

const words = w.paperInsurer;

/** Inserts with their values where they are recorded, and nowhere else. */
export const insertValues = ({ record, within }: WorkOnPaper): PaperPiece => {
  if (record.inserts.length === 0) return undefined;
  const values = new Map(thingsIn(within, 'insertValue').map(({ body }) => [body.insert, body]));
  const { insert, zone, count, value } = words.insertColumns;
  return section(
    words.inserts,
    table(
      words.insertsCaption,
      [{ head: insert }, { head: zone }, { head: count, kind: 'number' }, { head: value }],
      record.inserts.map(({ thing, body }) => {
        const of = values.get(thing);
        const at = record.zones.find((each) => each.thing === body.zone);
        return [
          body.material,
          at ? zoneLabel(at) : '–',
          whole(body.count),
          of ? [money(of.value), of.note].filter(Boolean).join('. ') : words.noValue,
        ];
      }),
    ),
    say(words.insertsHow, 'small'),
  );
};

export const withoutValue = ({ record, within }: WorkOnPaper): number => {
  const valued = new Set(thingsIn(within, 'insertValue').map(({ body }) => body.insert));
  return record.inserts.filter(({ thing }) => !valued.has(thing)).length;
};
