import { removePlanned } from '../../actions';
import type { LoggedReading, TemperatureLog } from '../../engine/heat';
import type { Thing } from '../../engine/record';
import { measureNumber, w } from '../../words';
import { Button, CrossIcon } from '../parts';
import { Fold } from '../parts/Fold';
import { useDeed, useDesk } from '../shell';
import '../parts/plainTable.css';

const words = w.hotWork.readings;

interface ReadingTableProps {
  readonly log: TemperatureLog;
  readonly readings: readonly Thing<'insertReading'>[];
  readonly mayWrite: boolean;
}

/** The readings at one insert in order of time; on paper always, on the screen when asked for. */
export function ReadingTable({ log, readings, mayWrite }: ReadingTableProps) {
  if (log.rows.length === 0) return null;
  return (
    <Fold show={words.log(log.rows.length)} hide={words.logShut}>
      <table className="plain-table cards">
        <thead>
          <tr>
            <th scope="col">{words.time}</th>
            <th scope="col">{words.spot}</th>
            <th scope="col">{words.degrees}</th>
            <th scope="col">{words.rise}</th>
            <th scope="col">{words.apart}</th>
            <th scope="col">{words.level}</th>
            <th scope="col">{words.by}</th>
          </tr>
        </thead>
        <tbody>
          {log.rows.map((row, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two readings may be alike in everything
            <Row key={i} row={row} reading={readings.find(({ body }) => isOf(body, row))} mayWrite={mayWrite} />
          ))}
        </tbody>
      </table>
    </Fold>
  );
}

const isOf = (body: Thing<'insertReading'>['body'], row: LoggedReading): boolean =>
  body.time === row.time && body.spot === row.spot && body.celsius === row.celsius;

interface RowProps {
  readonly row: LoggedReading;
  readonly reading: Thing<'insertReading'> | undefined;
  readonly mayWrite: boolean;
}

function Row({ row, reading, mayWrite }: RowProps) {
  const desk = useDesk();
  const { run, busy } = useDeed();
  return (
    <tr>
      <th scope="row">{row.time}</th>
      <td data-head={words.spot}>{row.spot}</td>
      <td data-head={words.degrees}>{words.value(measureNumber('temperature', row.celsius, 1))}</td>
      <td data-head={words.rise}>
        {row.perMinute === undefined ? '' : words.perMinute(measureNumber('difference', row.perMinute, 1))}
      </td>
      <td data-head={words.apart}>
        {row.apart === undefined ? '' : words.kelvin(measureNumber('difference', row.apart, 1))}
      </td>
      <td data-head={words.level}>
        <span className={row.level === 'near' || row.level === 'over' ? 'strong' : undefined}>
          {words.levels[row.level]}
        </span>
      </td>
      <td data-head={words.by}>
        {reading?.body.by}
        {mayWrite && reading && (
          <span className="not-printed">
            <Button
              kind="quiet"
              icon={<CrossIcon />}
              disabled={busy}
              aria-label={words.takeOff(row.time, row.spot)}
              onClick={() => void run(() => removePlanned(desk, 'insertReading', reading.thing))}
            />
          </span>
        )}
      </td>
    </tr>
  );
}
