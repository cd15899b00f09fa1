import type { Hold } from '../../engine/hold';
import type { WorkOnPaper } from '../../engine/reckoning';
import { treatmentOf } from '../../engine/trade';
import { date, number, w, whole } from '../../words';
import { type PaperPiece, say, section, table } from '../layout';
import { thingsIn } from '../reading';
import { zoneOf } from './namesIn';

const words = w.paperPacket;

/** What lies in a bag of this work, by what it is. */
export const bagIndex = (work: WorkOnPaper): PaperPiece => {
  const { record, within } = work;
  const days = record.rounds.map(({ body }) => body.date);
  const count = (n: number) => words.count(n, whole(n));
  const [first, last] = [days[0], days.at(-1)];
  const much: Readonly<Record<keyof typeof words.rows, string>> = {
    report: count(1),
    rounds: first && last ? words.span(whole(days.length), date(first), date(last)) : count(0),
    looks: count(record.looks.length),
    photos: count(thingsIn(within, 'photo').length),
    papers: words.papersListed,
    treatments: count(record.treatments.length),
    readings: count(thingsIn(within, 'reading').length),
    causes: count(thingsIn(within, 'cause').length),
    thoughts: count(thingsIn(within, 'interpretation').length),
  };
  const { what, where, much: head } = words.bagColumns;
  return section(
    words.bag,
    table(
      '',
      [{ head: what }, { head: where }, { head }],
      (Object.keys(much) as (keyof typeof much)[]).map((row) => [
        words.rows[row]?.[0],
        words.rows[row]?.[1],
        much[row],
      ]),
    ),
    say(words.bagHow, 'small'),
  );
};

/** Treatments by what they were and with what, the latest first. */
export const productsUsed = ({ record }: WorkOnPaper): PaperPiece => {
  const groups = new Map<string, { what: string; product: string; times: number; last: string; coats: Set<number> }>();
  for (const { body } of record.treatments) {
    const key = `${body.type} ${body.product ?? ''}`;
    const group = groups.get(key) ?? {
      what: treatmentOf(body.type)?.name ?? body.type,
      product: body.product || words.productNone,
      ...{ times: 0, last: '', coats: new Set<number>() },
    };
    group.times += 1;
    if (body.date > group.last) group.last = body.date;
    if (body.coats) group.coats.add(body.coats);
    groups.set(key, group);
  }
  const rows = [...groups.values()].sort((a, b) => b.last.localeCompare(a.last));
  const { what, product, times, last, coats } = words.productColumns;
  return section(
    words.products,
    rows.length === 0
      ? say(words.productsNone)
      : table(
          '',
          [
            { head: what },
            { head: product },
            { head: times, kind: 'number' },
            { head: last, kind: 'narrow' },
            { head: coats, kind: 'number' },
          ],
          rows.map((row) => [
            row.what,
            row.product,
            whole(row.times),
            date(row.last),
            [...row.coats]
              .sort((a, b) => a - b)
              .map((n) => whole(n))
              .join(', ') || '–',
          ]),
        ),
  );
};

/** The latest hold of each zone. */
export const holdTimes = (work: WorkOnPaper): PaperPiece => {
  const rows = (work.figures?.holds ?? []).flatMap(({ zone, holds }) => {
    const last: Hold | undefined = holds.at(-1);
    if (!last) return [];
    const low = number(last.lower, 1);
    const held = last.upper === null ? words.heldOpen(low) : words.held(low, number(last.upper, 1));
    return [[zoneOf(work, zone), date(last.start), held, words.ends[last.end]]];
  });
  const { zone, coated, held, end } = words.lastedColumns;
  return section(
    words.lasted,
    rows.length === 0
      ? say(words.lastedNone)
      : [
          table(
            '',
            [{ head: zone }, { head: coated, kind: 'narrow' }, { head: held, kind: 'number' }, { head: end }],
            rows,
          ),
          say(words.lastedHow, 'small'),
        ],
  );
};
