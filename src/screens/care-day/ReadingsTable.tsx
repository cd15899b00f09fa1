import { removePlanned } from '../../actions';
import type { Thing } from '../../engine/record';
import { gateOf } from '../../engine/weather';
import { date, measureNumber, number, w } from '../../words';
import { Button, Notice } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import '../parts/plainTable.css';

const words = w.careDay;
const heads = words.table;

interface ReadingsTableProps {
  /** Where it is not the section's own. */
  readonly title?: string;
  readonly readings: readonly Thing<'weather'>[];
  /** Of several days: the day stands beside the time. */
  readonly withDay?: boolean;
  /** They can be taken away. */
  readonly open?: boolean;
}

/** Readings as kept, with what was said to each. */
export function ReadingsTable({ title, readings, withDay = false, open = false }: ReadingsTableProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <table className="plain-table cards figures">
        <caption className={title ? undefined : 'unseen'}>{title ?? words.readings}</caption>
        <thead>
          <tr>
            {[heads.time, heads.air, heads.humidity, heads.surface, heads.margin, heads.said].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            {open && <td className="not-printed" />}
          </tr>
        </thead>
        <tbody>
          {readings.map(({ thing, body }) => (
            <tr key={thing}>
              <th scope="row">{withDay ? `${date(body.date)}, ${body.time}` : body.time}</th>
              <td data-head={heads.air}>{words.celsius(measureNumber('temperature', body.air, 1))}</td>
              <td data-head={heads.humidity}>{words.percent(number(body.humidity, 1))}</td>
              <td data-head={heads.surface}>{words.celsius(measureNumber('temperature', body.surface, 1))}</td>
              <td data-head={heads.margin}>{marginOf(body)}</td>
              <td data-head={heads.said}>
                <span>
                  <span className="strong">{words.says[body.said]}</span>
                  {body.overridden && (
                    <span className="line-detail">{words.overridden(body.overridden.by, body.overridden.why)}</span>
                  )}
                </span>
              </td>
              {open && (
                <td className="not-printed">
                  <Button
                    kind="quiet"
                    disabled={busy}
                    aria-label={words.removeReadingOf(body.time)}
                    onClick={() =>
                      run(
                        () => removePlanned(desk, 'weather', thing),
                        () => say(words.readingRemoved),
                      )
                    }
                  >
                    {words.removeReading}
                  </Button>
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** A file made elsewhere may hold a humidity no dew point can be told of. */
const marginOf = (body: Thing<'weather'>['body']): string =>
  body.humidity > 0 ? words.kelvin(measureNumber('difference', gateOf(body).margin.value, 1)) : '\u2013';
