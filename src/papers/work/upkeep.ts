import { isInYear, seasonsOf } from '../../engine/care';
import { dayRange, type SculptureRecord, vagueDateOrder } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { date, w, whole } from '../../words';
import { type PaperPiece, say, section, table } from '../layout';

const words = w.paperInsurer;
/** Years shown; those before are counted. */
const most = 6;

/** Year by year, the last first: rounds, looks, washes, coatings and other work with their days. */
export const upkeep = (record: SculptureRecord): PaperPiece => {
  const latest = Math.max(
    0,
    ...[...record.treatments, ...record.looks, ...record.rounds].map(({ body }) =>
      Number(dayRange(body.date).to.slice(0, 4)) < 9999 ? Number(dayRange(body.date).to.slice(0, 4)) : 0,
    ),
  );
  const rows = seasonsOf(record, latest)
    .map((year) => rowOf(record, year))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  if (rows.length === 0) return section(words.upkeep, say(words.upkeepNone));
  const { year, rounds, looks, washed, coated, other } = words.upkeepColumns;
  const older = rows.length - most;
  return section(
    words.upkeep,
    table(
      '',
      [
        { head: year },
        { head: rounds, kind: 'narrow' },
        { head: looks, kind: 'number' },
        { head: washed, kind: 'narrow' },
        { head: coated },
        { head: other },
      ],
      rows.slice(0, most).map(({ year: of, cells }) => [String(of), ...cells.map((cell) => cell || '–')]),
    ),
    say([words.upkeepHow, older > 0 && words.upkeepOlder(older, whole(older))].filter(Boolean).join(' '), 'small'),
  );
};

const rowOf = (record: SculptureRecord, year: number): { readonly year: number; readonly cells: readonly string[] } => {
  const here = <T extends { readonly body: { readonly date: string } }>(things: readonly T[]): readonly T[] =>
    things
      .filter(({ body }) => isInYear(body.date, year))
      .sort((a, b) => (vagueDateOrder(a.body.date) < vagueDateOrder(b.body.date) ? -1 : 1));
  const days = (things: readonly { readonly body: { readonly date: string } }[]): string =>
    [...new Set(things.map(({ body }) => date(body.date)))].join('; ');
  const done = here(record.treatments);
  const coats = done.filter(({ body }) => treatmentOf(body.type)?.coats);
  const washes = done.filter(({ body }) => body.type === 'wash');
  const others = done.filter((each) => !coats.includes(each) && !washes.includes(each));
  const looks = here(record.looks).length;
  return {
    year,
    cells: [
      days(here(record.rounds)),
      looks > 0 ? whole(looks) : '',
      days(washes),
      days(coats),
      others.map(({ body }) => `${treatmentOf(body.type)?.name ?? body.type}, ${date(body.date)}`).join('; '),
    ],
  };
};
