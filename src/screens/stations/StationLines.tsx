import { orderStations } from '../../actions';
import type { Thing } from '../../engine/record';
import { w, whole } from '../../words';
import { Button, DownIcon, Notice, UpIcon } from '../parts';
import { say, useDeed, useDesk } from '../shell';
import { factsOf } from './stationText';

const words = w.stations;

interface StationLinesProps {
  readonly sculpture: string;
  readonly stations: readonly Thing<'station'>[];
  readonly open: (station: Thing<'station'>) => void;
}

/** The stations in walking order, to be opened and moved. */
export function StationLines({ sculpture, stations, open }: StationLinesProps) {
  const desk = useDesk();
  const { run, refused, busy } = useDeed();
  const move = (from: number, to: number) => {
    const order = stations.map(({ thing }) => thing);
    const [moved] = order.splice(from, 1);
    if (moved === undefined) return;
    order.splice(to, 0, moved);
    return run(
      () => orderStations(desk, sculpture, order),
      () => say(words.moved(stations[from]?.body.letter ?? '', whole(to + 1))),
    );
  };
  return (
    <>
      {refused && <Notice kind="problem" title={refused} />}
      <ol className="lines bare">
        {stations.map((station, i) => {
          const { letter, aim, mark, note } = station.body;
          return (
            <li key={station.thing} className="station-row by-hand">
              <button type="button" className="line" onClick={() => open(station)}>
                <span className="letter">{letter}</span>
                <span className="grow">
                  <span className="strong">{aim}</span>
                  <span className="line-detail">{mark ?? words.notMarked}</span>
                  <span className="soft line-detail">
                    {[...factsOf(station.body), note].filter(Boolean).join(' · ')}
                  </span>
                </span>
              </button>
              {stations.length > 1 && (
                <span className="station-moves not-printed">
                  <Button
                    disabled={busy || i === 0}
                    aria-label={words.up(words.nameOf(letter, aim))}
                    icon={<UpIcon />}
                    onClick={() => move(i, i - 1)}
                  />
                  <Button
                    disabled={busy || i === stations.length - 1}
                    aria-label={words.down(words.nameOf(letter, aim))}
                    icon={<DownIcon />}
                    onClick={() => move(i, i + 1)}
                  />
                </span>
              )}
            </li>
          );
        })}
      </ol>
    </>
  );
}
