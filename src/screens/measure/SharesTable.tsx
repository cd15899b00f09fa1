import { removeMeasure } from '../../actions';
import { date, fromTo, share, w } from '../../words';
import { Button, Notice } from '../parts';
import '../parts/plainTable.css';
import { Reasons } from '../parts/Reasons';
import { say, useDeed, useDesk } from '../shell';
import type { ShareRow } from './sharesOf';
import { kindName } from './subject';

const words = w.measure;

interface SharesTableProps {
  readonly kind: string;
  readonly rows: readonly ShareRow[];
  readonly fixed: boolean;
}

/** What the eye said and what was measured, one under the other. None of them is put in the place of another. */
export function SharesTable({ kind, rows, fixed }: SharesTableProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  if (rows.length === 0) return <p className="soft">{words.tableNone}</p>;
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <table className="plain-table cards shares">
        <caption>{words.tableCaption(kindName(kind))}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.how}</th>
            <th scope="col" className="of-number">
              {words.columns.share}
            </th>
            <th scope="col">{words.columns.range}</th>
            <th scope="col">{words.columns.of}</th>
            <th scope="col">{words.columns.when}</th>
            {!fixed && <td className="not-printed" />}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">
                {words.wayShort[row.way]}
                {row.origin && row.origin !== 'metal' && (
                  <span className="soft small origin">{w.thenAndNow.origins[row.origin as 'dirt' | 'stain']}</span>
                )}
              </th>
              <td data-head={words.columns.share} className="of-number strong">
                {share(row.value)}
              </td>
              <td data-head={words.columns.range} className="figures">
                {fromTo(share(row.low), share(row.high))}
              </td>
              <td data-head={words.columns.of}>
                {words.of[row.of]}
                {row.otherPart && row.measure && <span className="soft small origin">{words.otherPart}</span>}
              </td>
              <td data-head={words.columns.when}>{date(row.day)}</td>
              {!fixed && (
                <td className="not-printed remove-cell">
                  {row.measure && (
                    <Button
                      kind="quiet"
                      disabled={busy}
                      aria-label={words.remove(words.wayShort[row.way])}
                      onClick={() =>
                        void run(
                          () => removeMeasure(desk, row.measure ?? ''),
                          () => say(words.removed),
                        )
                      }
                    >
                      {words.removeShort}
                    </Button>
                  )}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.some(({ reasons }) => reasons.length > 0) && (
        <div className="stack tight">
          <h3>{words.why}</h3>
          {rows
            .filter(({ reasons }) => reasons.length > 0)
            .map(({ key, way, reasons }) => (
              <div key={key}>
                <p className="strong">{words.wayShort[way]}</p>
                <Reasons reasons={reasons} />
              </div>
            ))}
        </div>
      )}
      <p className="soft small">{words.apart}</p>
    </>
  );
}
