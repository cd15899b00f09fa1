import { type BiasCurve, saidAt } from '../../engine/eye';
import type { Thing } from '../../engine/record';
import { date, number, share, w } from '../../words';
import { Section } from '../parts';
import { Fold } from '../parts/Fold';
import { BiasDrawing } from './BiasDrawing';
import '../parts/plainTable.css';

const words = w.eyeCheck;
const shown = [0.01, 0.03, 0.05, 0.1, 0.2, 0.5, 0.8];
const percent = (p: number): string => `${number(p * 100, 1)} %`;

interface CurveShownProps {
  readonly curve: BiasCurve;
  readonly checks: readonly Thing<'eyeCheck'>[];
}

/** The bias curve as a drawing, and behind it the numbers, for those who do not see it and for paper. */
export function CurveShown({ curve, checks }: CurveShownProps) {
  const patches = checks.flatMap(({ body }) => body.patches);
  return (
    <Section title={words.curve} lead={words.curveWhat(curve.patches)}>
      <div className="eye-curve-and-key">
        <BiasDrawing curve={curve} patches={patches} />
        <ul className="bare eye-key" aria-hidden="true">
          <li>
            <Key mark="M2 12L26 2" look="eye-true" /> {words.legend.true}
          </li>
          <li>
            <Key mark="M2 8L26 5" look="eye-line" /> {words.legend.curve}
          </li>
          <li>
            <svg viewBox="0 0 28 14" className="eye-key-mark" aria-hidden="true">
              <circle className="eye-point" cx={14} cy={7} r={4} />
            </svg>{' '}
            {words.legend.patch}
          </li>
        </ul>
      </div>
      <Fold show={words.tableShow} hide={words.tableHide}>
        <table className="plain-table">
          <caption>{words.curveTable}</caption>
          <thead>
            <tr>
              <th scope="col">{words.curveColumns.true}</th>
              <th scope="col">{words.curveColumns.said}</th>
              <th scope="col">{words.curveColumns.low}</th>
              <th scope="col">{words.curveColumns.high}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((p) => {
              const { value, low, high } = saidAt(curve, p);
              return (
                <tr key={p}>
                  <th scope="row">{percent(p)}</th>
                  {[value, low, high].map((q, i) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: three columns, always in this order
                    <td key={i} className="figures">
                      {percent(q)}
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
        <table className="plain-table">
          <caption>{words.table}</caption>
          <thead>
            <tr>
              <th scope="col">{words.columns.day}</th>
              <th scope="col">{words.columns.true}</th>
              <th scope="col">{words.columns.said}</th>
            </tr>
          </thead>
          <tbody>
            {checks.flatMap(({ thing, body }) =>
              body.patches.map(({ truth, said }, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: patches have no name of their own, and their order does not change
                <tr key={`${thing} ${i}`}>
                  <th scope="row">{date(body.date)}</th>
                  <td className="figures">{percent(truth)}</td>
                  <td className="figures">{share(said.value)}</td>
                </tr>
              )),
            )}
          </tbody>
        </table>
      </Fold>
    </Section>
  );
}

function Key({ mark, look }: { readonly mark: string; readonly look: string }) {
  return (
    <svg viewBox="0 0 28 14" className="eye-key-mark" aria-hidden="true">
      <path className={look} d={mark} />
    </svg>
  );
}
