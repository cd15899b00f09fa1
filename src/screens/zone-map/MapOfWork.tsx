import { useLocation } from 'wouter';
import { roundsUnderWay, type SideOnMap, type ZoneMap } from '../../actions';
import type { SculptureRecord, Thing } from '../../engine/record';
import { w } from '../../words';
import { Choice, EmptyState, LinkButton } from '../parts';
import { Reasons } from '../parts/Reasons';
import { pathTo, useDesk, useQuestion } from '../shell';
import { MapKey } from './MapKey';
import { MapTable } from './MapTable';
import { OtherPhotos } from './OtherPhotos';
import { RoundOfMap } from './RoundOfMap';
import { SideMap } from './SideMap';
import { type ShadeName, shadeNames } from './shading/shading';
import { useShading } from './shading/useShading';
import { useMapChoice } from './useMapChoice';

const words = w.zoneMap;

interface MapOfWorkProps {
  readonly record: SculptureRecord;
  readonly zones: readonly Thing<'zone'>[];
  readonly map: ZoneMap;
  readonly title: string;
  readonly elevation: string | undefined;
  /** The round the work is known by. */
  readonly latest: string | undefined;
}

/** The side that is shown, what it is coloured by, its key, and the table that says the same in words. */
export function MapOfWork({ record, zones, map, title, elevation, latest }: MapOfWorkProps) {
  const desk = useDesk();
  const [, go] = useLocation();
  const { thing: sculpture } = record.sculpture;
  const [choice, choose] = useMapChoice(sculpture);
  const { shade, photo } = choice;
  const chosen = record.rounds.find(({ thing }) => thing === choice.round)?.thing;
  const round = chosen ?? latest;
  const shading = useShading(record, round, shade);
  const open = useQuestion(roundsUnderWay(desk))?.find((row) => row.round.body.sculpture === sculpture)?.round.thing;
  const visited = chosen ?? open ?? latest;
  const to = (zone: string) => (visited ? pathTo.zoneInRound(visited, zone) : pathTo.zone(sculpture, zone));
  const side = map.sides.find((one) => one.elevation.thing === elevation) ?? map.sides[0];
  const other = side?.others.find((one) => one.photo.thing === photo);
  /** Whoever asks for another year wants to see it, and to hear of the round it was taken in. */
  const choosePhoto = (next: string | undefined) => {
    const taken = side?.others.find((one) => one.photo.thing === next)?.photo.body.round;
    const { photo: _, round: __, ...rest } = choice;
    choose(next ? { shade: 'outlines', photo: next, ...(taken ? { round: taken } : {}) } : rest);
  };
  const onPhoto = other?.photo ?? side?.photo;
  const drawn = side && new Set(side.outlines.map(({ zone }) => zone));
  return (
    <>
      <div className="map-choices">
        {map.sides.length > 1 && (
          <Choice
            label={words.side}
            tiles="narrow"
            options={map.sides.map((one) => ({ value: one.elevation.thing, label: one.elevation.body.side }))}
            value={side?.elevation.thing}
            onChange={(next) => {
              choosePhoto(undefined);
              go(pathTo.map(sculpture, next), { replace: true });
            }}
          />
        )}
        <Choice
          label={words.shadeBy}
          tiles="narrow"
          options={shadeNames.map((value) => ({ value, label: words.shade[value] }))}
          value={shade}
          onChange={(next) => choose({ ...choice, shade: next })}
        />
      </div>
      <div className={side ? 'map-board' : 'map-board bare-board'}>
        {side ? (
          <div className="map-picture">
            <h2 className="map-side">{words.sideNamed(side.elevation.body.side)}</h2>
            <SideMap side={side} title={title} zones={zones} shading={shading} map={map} to={to} other={other} />
            <OtherPhotos side={side} chosen={other?.photo.thing} onChoose={choosePhoto} />
            <SideNotes side={side} zones={zones} sculpture={sculpture} />
          </div>
        ) : (
          <EmptyState
            title={words.noSides}
            actions={<LinkButton to={pathTo.sculpture(sculpture)}>{words.toSculpture}</LinkButton>}
          >
            <p>{words.noSidesWhat}</p>
          </EmptyState>
        )}
        <div className="map-words stack">
          {round && (
            <RoundOfMap record={record} round={round} onChoose={(next) => choose({ ...choice, round: next })} />
          )}
          {shading ? (
            <>
              <p className="soft">{shading.from}</p>
              {shading.caution && (
                <div>
                  <p>{words.shadeFrom.notAlike}</p>
                  <Reasons reasons={shading.caution} />
                </div>
              )}
              <MapKey shading={shading} zones={zones} water={side !== undefined && map.runOffs.length > 0} />
            </>
          ) : (
            <p role="status">{words.working}</p>
          )}
          <MapTable
            zones={zones}
            shading={shading}
            shade={shade}
            today={desk.today()}
            to={to}
            visits={visited !== undefined}
            {...(drawn ? { drawn } : {})}
            {...(onPhoto ? { photo: onPhoto.thing } : {})}
          />
          <ShadeMore shade={shade} sculpture={sculpture} />
        </div>
      </div>
    </>
  );
}

/** Where what is shown is told in full, with its reasons. */
function ShadeMore({ shade, sculpture }: { readonly shade: ShadeName; readonly sculpture: string }) {
  const [to, label] =
    shade === 'change'
      ? [pathTo.thenAndNow(sculpture), words.shadeMore.change]
      : shade === 'hold'
        ? [pathTo.holds(), words.shadeMore.hold]
        : [pathTo.nextSteps(), words.shadeMore.need];
  return (
    <div className="row not-printed">
      <LinkButton kind="quiet" to={to}>
        {label}
      </LinkButton>
    </div>
  );
}

interface SideNotesProps {
  readonly side: SideOnMap;
  readonly zones: readonly Thing<'zone'>[];
  readonly sculpture: string;
}

/** What is not on this side, and the way to draw it. */
function SideNotes({ side, zones, sculpture }: SideNotesProps) {
  const living = new Set(zones.map(({ thing }) => thing));
  const drawn = side.outlines.filter(({ zone }) => living.has(zone)).length;
  const ended = side.outlines.length - drawn;
  const missing = zones.length - drawn;
  return (
    <div className="stack tight">
      {drawn === 0 ? (
        <p>
          <span className="strong">{words.noneDrawn}.</span> {words.noneDrawnWhat}
        </p>
      ) : (
        missing > 0 && <p className="soft small">{words.noOutlineZones(missing)}</p>
      )}
      {ended > 0 && <p className="soft small">{words.ended(ended)}</p>}
      <div className="row not-printed">
        <LinkButton to={pathTo.outline(sculpture, side.elevation.thing)} kind={drawn === 0 ? 'main' : 'plain'}>
          {drawn === 0 ? words.draw : words.drawOn}
        </LinkButton>
      </div>
    </div>
  );
}
