import { byHand, type Criterion } from '../../engine/campaign';
import type { Thing } from '../../engine/record';
import { w } from '../../words';

const words = w.bidScores;

interface BlankScoreSheetProps {
  readonly criteria: readonly Criterion[];
  readonly bids: readonly Thing<'bid'>[];
}

/** On paper only: the same sheet with empty cells, for whoever marks without a tablet. */
export function BlankScoreSheet({ criteria, bids }: BlankScoreSheetProps) {
  return (
    <div className="only-printed">
      <table className="plain-table blank-scores">
        <caption>{words.bySheet}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.what}</th>
            {bids.map(({ thing, body }) => (
              <th key={thing} scope="col">
                {body.who}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {byHand(criteria).map(({ id, name }) => (
            <tr key={id}>
              <th scope="row">{name}</th>
              {bids.map(({ thing }) => (
                <td key={thing} />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p className="sign-line">{words.sheetFoot}</p>
    </div>
  );
}
