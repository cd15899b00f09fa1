import type { BidScoring, Points } from '../../engine/campaign';
import { number, w } from '../../words';
import { scorerText } from './scorerText';
import '../parts/plainTable.css';

const words = w.bidScores;

interface ScoreTableProps {
  readonly scoring: BidScoring;
  readonly currency: string;
  readonly taken: string | undefined;
}

/** Criteria down, bids across: the mean of the scorers with the lowest and highest, the total, the place. */
export function ScoreTable({ scoring, currency, taken }: ScoreTableProps) {
  const { criteria, bids, scorers } = scoring;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than the screen is scrolled by keys too
    <section className="wide-table" tabIndex={0} aria-label={words.caption(currency)}>
      <table className="plain-table cards bid-table">
        <caption>{words.caption(currency)}</caption>
        <thead>
          <tr>
            <th scope="col">{words.columns.what}</th>
            {bids.map(({ bid }) => (
              <th key={bid.thing} scope="col" className="of-number">
                {bid.body.who}
                {bid.thing === taken && <span className="chip">{w.campaign.bids.isTaken}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {criteria.map(({ id, name, weight }) => (
            <tr key={id}>
              <th scope="row">{words.weighed(name, number(weight, 1))}</th>
              {bids.map(({ bid, points }) => (
                <PointsCell key={bid.thing} head={bid.body.who} points={points.get(id)} />
              ))}
            </tr>
          ))}
        </tbody>
        <tbody className="sums">
          <tr>
            <th scope="row">{words.columns.total}</th>
            {bids.map(({ bid, total }) => (
              <PointsCell key={bid.thing} head={bid.body.who} points={total} />
            ))}
          </tr>
          {scorers.length > 1 &&
            scorers.map(({ scorer }, i) => (
              <tr key={scorer.id}>
                <th scope="row">{words.totalOf(scorerText(scorer))}</th>
                {bids.map(({ bid, totals }) => (
                  <td key={bid.thing} data-head={bid.body.who} className="of-number">
                    {totals[i] === undefined ? words.noPoints : number(totals[i], 1)}
                  </td>
                ))}
              </tr>
            ))}
          <tr>
            <th scope="row">{words.place}</th>
            {bids.map(({ bid, place }) => (
              <td key={bid.thing} data-head={bid.body.who} className="of-number strong">
                {place ? words.places(place.best, place.worst) : words.noPoints}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function PointsCell({ head, points }: { readonly head: string; readonly points: Points | undefined }) {
  return (
    <td data-head={head} className={points ? 'of-number' : 'of-number soft'}>
      {points ? (
        <div>
          <span className="strong">{number(points.value, 1)}</span>
          {points.low < points.high && (
            <span className="soft line-detail">
              ({number(points.low, 1)} {w.charts.lastTo} {number(points.high, 1)})
            </span>
          )}
        </div>
      ) : (
        words.noPoints
      )}
    </td>
  );
}
