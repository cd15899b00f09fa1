import { type Criterion, criteriaOf } from '../../engine/campaign';
import type { BodyOf } from '../../engine/record';
import { date, list, number, w } from '../../words';
import { Notice } from '../parts';
import '../parts/plainTable.css';

const words = w.bidScores;

interface WeightsTableProps {
  readonly criteria: readonly Criterion[];
  /** Undefined: nobody set any yet. */
  readonly body: BodyOf<'bidCriteria'> | undefined;
}

/** What counts for how much, since when, and what it was where it changed with bids in. */
export function WeightsTable({ criteria, body }: WeightsTableProps) {
  return (
    <>
      <table className="plain-table bid-table">
        <caption>{words.weights}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.what}</th>
            <th scope="col" className="of-number">
              {words.columns.weight}
            </th>
          </tr>
        </thead>
        <tbody>
          {criteria.map(({ id, name, asks, weight }) => (
            <tr key={id}>
              <th scope="row">
                {name}
                {asks && <span className="soft line-detail">{asks}</span>}
              </th>
              <td className="of-number">{number(weight, 1)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">{body ? words.set(date(body.date)) : words.usual}</p>
      {body?.changed?.map((change) => (
        <Notice
          key={`${change.on} ${change.why}`}
          kind="caution"
          title={words.changedAfter(date(change.on), change.bids, change.sheets)}
        >
          <p>{words.before(weightsText(criteriaOf({ ...body, criteria: change.before })), change.why)}</p>
        </Notice>
      ))}
    </>
  );
}

const weightsText = (criteria: readonly Criterion[]): string =>
  list(criteria.map(({ name, weight }) => words.weighed(name, number(weight, 1))));
