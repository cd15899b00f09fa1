import type { Thing } from '../../engine/record';
import { date, w } from '../../words';
import { Button } from '../parts';
import { differenceInBrief } from './DifferenceText';
import { Swatch } from './Swatch';
import type { SpotRow } from './seriesOfSpot';
import { wayInWords } from './wayOfReading';

const words = w.colour;
const heads = words.columns;

interface SpotTableProps {
  readonly rows: readonly SpotRow[];
  readonly onEdit: ((reading: Thing<'reading'>) => void) | undefined;
}

/** All readings of a spot, the latest first. */
export function SpotTable({ rows, onEdit }: SpotTableProps) {
  return (
    <table className="plain-table cards colour-table">
      <caption className="unseen">{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{heads.day}</th>
          <th scope="col">{heads.figures}</th>
          <th scope="col">{heads.agreed}</th>
          <th scope="col">{heads.before}</th>
          <th scope="col">{heads.how}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ reading, mean, agreed, before }) => {
          const day = date(reading.body.date);
          return (
            <tr key={reading.thing}>
              <th scope="row">
                <span className="colour-day">
                  <Swatch value={mean.mean} illuminant={reading.body.illuminant} />
                  {day}
                </span>
              </th>
              <td data-head={heads.figures} className="figures">
                <span>
                  {words.figures(mean.mean)}
                  <span className="colour-note soft small">{words.placings(mean.n, mean.spread)}</span>
                </span>
              </td>
              <td data-head={heads.agreed}>{differenceInBrief(agreed?.compared)}</td>
              <td data-head={heads.before}>{differenceInBrief(before?.compared)}</td>
              <td data-head={heads.how} className="small">
                <span>
                  {wayInWords(reading.body)}
                  {reading.body.note && <span className="colour-note">{reading.body.note}</span>}
                  {onEdit && (
                    <span className="colour-note not-printed">
                      <Button kind="quiet" aria-label={words.editReading(day)} onClick={() => onEdit(reading)}>
                        {words.change}
                      </Button>
                    </span>
                  )}
                </span>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
