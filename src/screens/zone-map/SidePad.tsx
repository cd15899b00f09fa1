import { type MapDraft, type SideOnMap, setElevationScale, setElevationStation, type ZoneMap } from '../../actions';
import { measureNumber, w } from '../../words';
import { Button, LinkButton, Notice, Section } from '../parts';
import { Select } from '../parts/Select';
import { pathTo, say, useDeed, useDesk } from '../shell';

const words = w.zoneMap.outline;
const none = '';

interface SidePadProps {
  readonly side: SideOnMap;
  readonly map: ZoneMap;
  readonly onBegin: (draft: MapDraft) => void;
}

/** What belongs to the picture and to no single zone: its scale, where water runs, and from where it was taken. */
export function SidePad({ side, map, onBegin }: SidePadProps) {
  const desk = useDesk();
  const { run, refused } = useDeed();
  const { thing, body } = side.elevation;
  const scale = body.scale;
  return (
    <Section title={words.more}>
      {refused && <Notice kind="problem" title={refused} />}
      <ul className="bare side-facts">
        <li>
          <span className="grow">
            <span className="strong">{words.scale}</span>{' '}
            {scale ? words.scaleIs(measureNumber('length', scale.metres, 3)) : words.scaleNone}
          </span>
          {scale && (
            <Button
              kind="quiet"
              onClick={() =>
                run(
                  () => setElevationScale(desk, thing, undefined),
                  () => say(words.scaleRemoved),
                )
              }
            >
              {words.scaleRemove}
            </Button>
          )}
          <Button onClick={() => onBegin({ doing: 'scale', ends: [] })}>{words.scaleSet}</Button>
        </li>
        <li>
          <span className="grow">
            <span className="strong">{words.water}</span> {words.waterCount(map.runOffs.length)}
          </span>
          <Button disabled={side.outlines.length < 2} onClick={() => onBegin({ doing: 'water', from: null })}>
            {words.waterDraw}
          </Button>
        </li>
      </ul>
      {map.stations.length > 0 ? (
        <Select
          label={words.station}
          value={side.station?.thing ?? none}
          onChange={(station) =>
            run(
              () => setElevationStation(desk, thing, station === none ? undefined : station),
              () => say(words.stationKept),
            )
          }
          options={[
            { value: none, label: words.stationNone },
            ...map.stations.map((one) => ({
              value: one.thing,
              label: words.stationNamed(one.body.letter, one.body.aim),
            })),
          ]}
        />
      ) : (
        <div className="row">
          <LinkButton kind="quiet" to={pathTo.stations(body.sculpture)}>
            {words.toStations}
          </LinkButton>
        </div>
      )}
    </Section>
  );
}
