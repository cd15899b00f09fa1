import type { SculptureRecord, Thing } from '../../engine/record';
import { treatmentOf } from '../../engine/trade';
import { airText, w, whenDone, whereDone, whoDid, withWhat } from '../../words';
import '../parts/plainTable.css';

const words = w.careDay.season;

interface SeasonTableProps {
  readonly record: SculptureRecord;
  readonly treatments: readonly Thing<'treatment'>[];
  readonly readings: readonly Thing<'weather'>[];
}

/** What was done, a line each; a column nothing stands in is left out. */
export function SeasonTable({ record, treatments, readings }: SeasonTableProps) {
  const rows = treatments.map(({ thing, body }) => ({
    thing,
    when: whenDone(body),
    cells: {
      what: [
        treatmentOf(body.type)?.name ?? body.type,
        body.coats !== undefined && w.logbook.coatsOf(String(body.coats)),
      ]
        .filter(Boolean)
        .join(', '),
      where: whereDone(record, body.zones),
      with: withWhat(body),
      who: whoDid(body),
      air: airText(readings.find((reading) => reading.thing === body.weather)),
    },
    note: body.note,
  }));
  const columns = (['what', 'where', 'with', 'who', 'air'] as const).filter((column) =>
    rows.some(({ cells }) => cells[column] !== ''),
  );
  return (
    <table className="plain-table cards season">
      <caption className="unseen">{words.done}</caption>
      <thead>
        <tr>
          <th scope="col">{words.when}</th>
          {columns.map((column) => (
            <th key={column} scope="col">
              {words[column]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ thing, when, cells, note }) => (
          <tr key={thing}>
            <th scope="row">{when}</th>
            {columns.map((column) => (
              <td key={column} data-head={words[column]}>
                <span>
                  {cells[column] || '\u2013'}
                  {column === 'what' && note && <span className="soft line-detail">{note}</span>}
                </span>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
