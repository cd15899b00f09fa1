import type { Agreement } from '../../engine/agreement';
import type { Figure, Reason } from '../../engine/record';
import { number, sayReason, w } from '../../words';
import { Section } from '../parts';

const words = w.agreement;

interface Row {
  readonly what: string;
  readonly figure: Figure | null;
  readonly n: number;
  readonly reasons: readonly Reason[];
}

/** Kappa, weighted kappa and ICC, each with its range, or why it cannot be told. */
export function AgreedFigures({ found }: { readonly found: Agreement }) {
  const rows: readonly Row[] = [
    { what: words.kappa, figure: found.kinds.kappa, n: found.kinds.n, reasons: found.kinds.reasons },
    { what: words.weighted, figure: found.severity.kappa, n: found.severity.n, reasons: found.severity.reasons },
    { what: words.icc, figure: found.coverage.icc, n: found.coverage.n, reasons: found.coverage.reasons },
  ];
  return (
    <Section title={words.figures} lead={words.figuresWhat}>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.figure}</th>
            <th scope="col">{words.n}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ what, figure, n, reasons }) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td data-head={words.figure}>
                {figure ? (
                  <>
                    <span className="strong">{number(figure.value)}</span>{' '}
                    <span className="soft">
                      ({number(figure.low)} {w.charts.lastTo} {number(figure.high)})
                    </span>
                  </>
                ) : (
                  words.notTold
                )}
                {reasons.map((reason) => (
                  <div key={reason.code} className="soft small">
                    {sayReason(reason)}
                  </div>
                ))}
              </td>
              <td data-head={words.n}>{n}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}
