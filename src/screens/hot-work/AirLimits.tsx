import { exposureLimits, patinationHeats } from '../../engine/trade';
import { list, measureNumber, sourceSaid, w } from '../../words';
import { Fold } from '../parts/Fold';
import '../parts/plainTable.css';

const words = w.hotWork.air;

/** What published limits say of the air around hot colouring and blasting. */
export function AirLimits() {
  const heats = patinationHeats.map(({ low, high }) =>
    words.heat(measureNumber('temperature', low, 0), measureNumber('temperature', high, 0)),
  );
  return (
    <Fold show={words.show} hide={words.hide} alsoOnPaper>
      <p className="soft">{words.what}</p>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{words.agent}</th>
            <th scope="col">{words.pel}</th>
            <th scope="col">{words.rel}</th>
            <th scope="col">{words.idlh}</th>
            <th scope="col">{w.hotWork.from}</th>
          </tr>
        </thead>
        <tbody>
          {exposureLimits.map((row) => (
            <tr key={row.id}>
              <th scope="row">
                {row.agent}
                <span className="soft small"> {row.why}</span>
              </th>
              <td data-head={words.pel}>{row.pel}</td>
              <td data-head={words.rel}>{row.rel}</td>
              <td data-head={words.idlh}>{row.idlh}</td>
              <td data-head={w.hotWork.from}>{sourceSaid(row.source)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{words.heats(list(heats))}</p>
    </Fold>
  );
}
